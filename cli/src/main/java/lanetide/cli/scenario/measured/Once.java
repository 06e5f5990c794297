package lanetide.cli.scenario.measured;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What was measured of a kind, in the order in which it was read, each thing once. */
final class Once<T> {
    private final Function<T, ?> thing;
    private final Function<T, String> place;
    private final List<T> all = new ArrayList<>();
    private final Map<Object, String> placeOf = new HashMap<>();

    /** Of measurements of some thing that stand at some place, beginning with those that were made before. */
    Once(Function<T, ?> thing, Function<T, String> place, List<T> before) {
        this.thing = thing;
        this.place = place;
        before.forEach(this::add);
    }

    /** Adds a measurement; returns where the same thing was measured before, if it was, and then adds nothing. */
    Optional<String> add(T measurement) {
        String earlier = placeOf.putIfAbsent(thing.apply(measurement), place.apply(measurement));
        if (earlier == null) {
            all.add(measurement);
        }
        return Optional.ofNullable(earlier);
    }

    List<T> all() {
        return all;
    }
}
