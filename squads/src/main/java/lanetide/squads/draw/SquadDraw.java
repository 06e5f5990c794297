package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * Assigns entries to squads by lot within rules. Who names a squad bowls there. The lot deals the others, partners
 * together, so that squads are as alike in size as their places allow; then entries, or partners of one number, of
 * different squads change places as long as that makes the squads more alike in what the rules name. No person has two
 * entries in one squad.
 */
public final class SquadDraw {
    private static final int NOWHERE = -1;

    private final List<Entry> entries;

    /**
     * Who is to be drawn.
     *
     * @param person his name; several entries of one name are one person. Empty for one who is nobody else
     * @param partners the name of his doubles, trio or team
     * @param squad the squad he names, from 0
     * @param traits what is known of him
     */
    public record Entry(String person, Optional<String> partners, OptionalInt squad, Traits traits) {}

    private SquadDraw(List<Entry> entries) {
        this.entries = entries;
    }

    /**
     * Draws.
     *
     * @param entries all entries, those who name a squad too
     * @param places how many bowlers each squad takes, at least 0; who names a squad has his place even beyond that
     * @param rules what is spread evenly; with none the lot alone decides
     * @param lot a stream of the draw's own
     * @return the squad of each entry, in their order; empty for those for whom no squad has room, and then the rules
     *     are not looked at
     */
    public static List<OptionalInt> draw(
            List<Entry> entries, List<Integer> places, Set<Rule> rules, UniformRandomProvider lot) {
        return new SquadDraw(entries).drawn(places, rules, lot);
    }

    private List<OptionalInt> drawn(List<Integer> places, Set<Rule> rules, UniformRandomProvider lot) {
        List<Unit> units = units();
        ListSampler.shuffle(lot, units);
        int[] room = places.stream().mapToInt(Integer::intValue).toArray();
        BiPredicate<Unit, Unit> mayMeet = apart();
        int[] squadOf = new Dealing(units, room, mayMeet).boxOf();
        boolean isWhole = Arrays.stream(squadOf).allMatch(squad -> squad >= 0);
        int[] drawn = new int[entries.size()];
        if (isWhole) {
            List<Traits> traits = entries.stream().map(Entry::traits).toList();
            put(drawn, new Evening(traits, units, squadOf, room.length, rules, mayMeet).members());
        } else {
            Arrays.fill(drawn, NOWHERE);
            put(
                    drawn,
                    IntStream.range(0, room.length)
                            .mapToObj(squad -> IntStream.range(0, squadOf.length)
                                    .filter(unit -> squadOf[unit] == squad)
                                    .boxed()
                                    .flatMap(unit -> units.get(unit).members().stream())
                                    .toList())
                            .toList());
        }
        return Arrays.stream(drawn)
                .mapToObj(squad -> squad == NOWHERE ? OptionalInt.empty() : OptionalInt.of(squad))
                .toList();
    }

    private static void put(int[] drawn, List<List<Integer>> members) {
        for (int squad = 0; squad < members.size(); squad++) {
            for (int entry : members.get(squad)) {
                drawn[entry] = squad;
            }
        }
    }

    /** Whether two units have nobody in common who is entered several times. */
    private BiPredicate<Unit, Unit> apart() {
        Map<String, Integer> times = new HashMap<>();
        entries.forEach(entry -> times.merge(entry.person(), 1, Integer::sum));
        boolean[] again = new boolean[entries.size()];
        for (int i = 0; i < again.length; i++) {
            String person = entries.get(i).person();
            again[i] = !person.isEmpty() && times.get(person) > 1;
        }
        return (one, other) -> one.members().stream()
                .filter(entry -> again[entry])
                .noneMatch(entry -> other.members().stream()
                        .filter(mate -> again[mate])
                        .anyMatch(mate -> entries.get(mate)
                                .person()
                                .equals(entries.get(entry).person())));
    }

    /**
     * Partners and single entries. Partners who are all entered twice are two units; who names no squad follows
     * partners who do.
     */
    private List<Unit> units() {
        List<List<Integer>> members = new ArrayList<>();
        List<OptionalInt> squads = new ArrayList<>();
        Map<String, List<Integer>> ofPartners = new HashMap<>();
        List<Integer> namedFirst = IntStream.concat(
                        indices().filter(i -> entries.get(i).squad().isPresent()),
                        indices().filter(i -> entries.get(i).squad().isEmpty()))
                .boxed()
                .toList();
        for (int i : namedFirst) {
            Entry entry = entries.get(i);
            List<Integer> his = entry.partners()
                    .map(name -> ofPartners.computeIfAbsent(name, key -> new ArrayList<>()))
                    .orElseGet(ArrayList::new);
            Optional<Integer> joined = his.stream()
                    .filter(unit -> joins(entry, members.get(unit), squads.get(unit)))
                    .findFirst();
            if (joined.isPresent()) {
                members.get(joined.get()).add(i);
            } else {
                his.add(members.size());
                members.add(new ArrayList<>(List.of(i)));
                squads.add(entry.squad());
            }
        }
        List<Unit> units = new ArrayList<>();
        for (int unit = 0; unit < members.size(); unit++) {
            units.add(new Unit(members.get(unit).stream().sorted().toList(), squads.get(unit)));
        }
        return units;
    }

    private IntStream indices() {
        return IntStream.range(0, entries.size());
    }

    private boolean joins(Entry entry, List<Integer> members, OptionalInt squad) {
        return (entry.squad().isEmpty() || entry.squad().equals(squad))
                && members.stream()
                        .noneMatch(member -> entries.get(member).person().equals(entry.person()));
    }
}
