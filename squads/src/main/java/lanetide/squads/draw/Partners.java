package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;

/** Bowlers of a squad in groups, partners together. */
public final class Partners {
    private Partners() {}

    /**
     * Fills groups with bowlers in their order; partners stand where the first of them stands. Groups are as alike in
     * size as partners allow.
     *
     * @param bowlers the bowlers of a squad, at least one
     * @param most the most groups there can be, at least 1
     * @return groups {@code 1}, {@code 2}, ..., as many as there are single bowlers and partners, or {@code most}
     */
    public static List<Group> filled(List<Bowler> bowlers, int most) {
        List<List<Bowler>> together = together(bowlers, Function.identity());
        int groups = Math.min(most, together.size());
        if (together.size() == bowlers.size()) {
            return FieldMix.spread(bowlers, groups);
        }
        int size = together.get(0).size();
        return together.stream().allMatch(one -> one.size() == size)
                ? named(inTurn(together, groups))
                : named(dealt(together, groups));
    }

    /** Partners of one number go to the groups in their order, as single bowlers do. */
    private static List<List<Bowler>> inTurn(List<List<Bowler>> together, int groups) {
        List<List<Bowler>> filled = new ArrayList<>();
        int from = 0;
        for (int group = 0; group < groups; group++) {
            int to = from + together.size() / groups + (group < together.size() % groups ? 1 : 0);
            filled.add(together.subList(from, to).stream().flatMap(List::stream).toList());
            from = to;
        }
        return filled;
    }

    private static List<List<Bowler>> dealt(List<List<Bowler>> together, int groups) {
        List<Bowler> inOrder = together.stream().flatMap(List::stream).toList();
        List<Unit> units = units(inOrder, Function.identity());
        int[] room = IntStream.generate(() -> Integer.MAX_VALUE).limit(groups).toArray();
        int[] boxOf = new Dealing(units, room, (one, other) -> true).boxOf();
        return IntStream.range(0, groups)
                .mapToObj(group -> IntStream.range(0, boxOf.length)
                        .filter(unit -> boxOf[unit] == group)
                        .boxed()
                        .flatMap(unit -> units.get(unit).members().stream())
                        .map(inOrder::get)
                        .toList())
                .toList();
    }

    private static List<Group> named(List<List<Bowler>> groups) {
        return IntStream.range(0, groups.size())
                .mapToObj(group -> new Group(String.valueOf(group + 1), groups.get(group)))
                .toList();
    }

    /**
     * Some of a squad's bowlers by partners.
     *
     * @param some bowlers, or what has one
     * @param bowler the bowler of one of them
     * @param <T> what is put together
     * @return partners, and single bowlers alone, in the order of the first of each
     */
    public static <T> List<List<T>> together(List<T> some, Function<T, Bowler> bowler) {
        return units(some, bowler).stream()
                .map(unit -> unit.members().stream().map(some::get).toList())
                .toList();
    }

    static <T> List<Unit> units(List<T> some, Function<T, Bowler> bowler) {
        Map<Object, List<Integer>> members = new LinkedHashMap<>();
        for (int i = 0; i < some.size(); i++) {
            Optional<String> name = bowler.apply(some.get(i)).partners();
            members.computeIfAbsent(name.isPresent() ? name : (Object) i, key -> new ArrayList<>())
                    .add(i);
        }
        return members.values().stream()
                .map(list -> new Unit(list, OptionalInt.empty()))
                .toList();
    }
}
