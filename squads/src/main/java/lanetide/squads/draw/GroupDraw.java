package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * Assigns the bowlers of a squad to groups by lot within rules. The lot deals them first, partners together; then two
 * of different groups, or two sets of as many partners, change places as long as that makes the groups more alike in
 * what the rules name. So it is the lot that chooses among the many assignments that are about as even.
 */
public final class GroupDraw {
    /**
     * Who is to be drawn.
     *
     * @param bowler the bowler
     * @param averagePins his average (pins); empty if it is not known
     */
    public record Entry(Bowler bowler, OptionalInt averagePins) {
        /**
         * What a draw looks at in him.
         *
         * @return his traits
         */
        public Traits traits() {
            return new Traits(
                    Optional.of(bowler.hand()), Optional.of(bowler.style().id()), averagePins);
        }
    }

    private GroupDraw() {}

    /**
     * Draws.
     *
     * @param entries who is to be drawn, at least as many as groups
     * @param groups number of groups, at least 1
     * @param rules what is spread evenly; with none the lot alone decides
     * @param lot a stream of the draw's own
     * @return groups {@code 1}, {@code 2}, ..., whose sizes differ by at most one, larger ones first; with partners, as
     *     alike in size as these allow, and no more groups than there are partners and single bowlers
     */
    public static List<List<Entry>> draw(List<Entry> entries, int groups, Set<Rule> rules, UniformRandomProvider lot) {
        List<Unit> dealt = new ArrayList<>(Partners.units(entries, Entry::bowler));
        ListSampler.shuffle(lot, dealt);
        int count = Math.min(groups, dealt.size());
        int[] room = IntStream.generate(() -> Integer.MAX_VALUE).limit(count).toArray();
        int[] groupOf = new Dealing(dealt, room, (one, other) -> true).boxOf();
        List<Traits> traits = entries.stream().map(Entry::traits).toList();
        return new Evening(traits, dealt, groupOf, count, rules, (one, other) -> true)
                .members().stream()
                        .map(members -> members.stream().map(entries::get).toList())
                        .toList();
    }

    /**
     * The groups of a draw.
     *
     * @param drawn as {@link #draw} gives it
     * @return groups {@code 1}, {@code 2}, ...
     */
    public static List<Group> groups(List<List<Entry>> drawn) {
        return IntStream.range(0, drawn.size())
                .mapToObj(group -> new Group(
                        String.valueOf(group + 1),
                        drawn.get(group).stream().map(Entry::bowler).toList()))
                .toList();
    }
}
