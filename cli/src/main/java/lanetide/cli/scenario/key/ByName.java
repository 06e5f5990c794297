package lanetide.cli.scenario.key;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Things that a scenario can choose from, by the name it knows them by and in the order they are told in. */
public final class ByName {
    private ByName() {}

    /** Things by their names, in the order they are in. */
    public static <T> Map<String, T> of(T[] things, Function<T, String> name) {
        return of(List.of(things), name);
    }

    /** Names that stand for themselves. */
    public static Map<String, String> of(Collection<String> names) {
        return of(names, Function.identity());
    }

    private static <T> Map<String, T> of(Collection<T> things, Function<T, String> name) {
        Map<String, T> byName = new LinkedHashMap<>();
        things.forEach(thing -> byName.put(name.apply(thing), thing));
        return byName;
    }
}
