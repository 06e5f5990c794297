package lanetide.cli.options;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.scenario.notice.Nearest;

/** Options whose value is a name that a scenario could use. */
public final class NamedOption {
    private NamedOption() {}

    /**
     * What a name stands for.
     *
     * @throws CommandFailure if it stands for nothing; the nearest name is offered
     */
    public static <T> T of(String option, String typed, Map<String, T> known) {
        T value = known.get(typed);
        if (value == null) {
            throw CommandFailure.wrongUse(option + " is `" + typed + "`, which this scenario does not know."
                    + Nearest.question(typed, known.keySet()) + " It knows " + String.join(", ", known.keySet()) + ".");
        }
        return value;
    }

    /** The same for a list of names. */
    public static <T> List<T> all(String option, List<String> typed, Map<String, T> known) {
        return typed.stream().map(name -> of(option, name, known)).toList();
    }

    /** The names of some things, each with its place among them from 0. */
    static <T> Map<String, Integer> places(List<T> things, Function<T, String> name) {
        Map<String, Integer> places = new LinkedHashMap<>();
        things.forEach(thing -> places.put(name.apply(thing), places.size()));
        return places;
    }
}
