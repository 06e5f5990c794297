package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * Assigns the bowlers of a squad to groups by lot within rules. The lot deals them first; then two of different groups
 * change places as long as that makes the groups more alike in what the rules name. So it is the lot that chooses among
 * the many assignments that are about as even.
 */
public final class GroupDraw {
    /** Smallest gain for which two change places: less is the last digit of a sum. */
    private static final double LEAST_GAIN = 1e-9;

    private final Set<Rule> rules;
    private final double scalePins;

    /** What is spread evenly over the groups. */
    public enum Rule {
        /** Left-handers. */
        HANDS,
        /** Playing styles. */
        STYLES,
        /** The mean average, of those whose average is known. */
        AVERAGES
    }

    /**
     * Who is to be drawn.
     *
     * @param bowler the bowler
     * @param averagePins his average (pins); empty if it is not known
     */
    public record Entry(Bowler bowler, OptionalInt averagePins) {}

    private GroupDraw(Set<Rule> rules, double scalePins) {
        this.rules = rules;
        this.scalePins = scalePins;
    }

    /**
     * Draws.
     *
     * @param entries who is to be drawn, at least as many as groups
     * @param groups number of groups, at least 1
     * @param rules what is spread evenly; with none the lot alone decides
     * @param lot a stream of the draw's own
     * @return groups {@code 1}, {@code 2}, ..., whose sizes differ by at most one, larger ones first
     */
    public static List<List<Entry>> draw(List<Entry> entries, int groups, Set<Rule> rules, UniformRandomProvider lot) {
        List<Entry> dealt = new ArrayList<>(entries);
        ListSampler.shuffle(lot, dealt);
        int[] groupOf = IntStream.range(0, groups)
                .flatMap(group -> IntStream.generate(() -> group)
                        .limit(entries.size() / groups + (group < entries.size() % groups ? 1 : 0)))
                .toArray();
        if (!rules.isEmpty()) {
            new GroupDraw(EnumSet.copyOf(rules), deviation(entries)).even(dealt, groupOf);
        }
        List<List<Entry>> drawn = new ArrayList<>();
        for (int group = 0; group < groups; group++) {
            int of = group;
            drawn.add(IntStream.range(0, groupOf.length)
                    .filter(place -> groupOf[place] == of)
                    .mapToObj(dealt::get)
                    .toList());
        }
        return drawn;
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

    private void even(List<Entry> dealt, int[] groupOf) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int a = 0; a < groupOf.length; a++) {
                for (int b = a + 1; b < groupOf.length; b++) {
                    changed |= groupOf[a] != groupOf[b] && changesPlaces(dealt, groupOf, a, b);
                }
            }
        }
    }

    /** Only the two groups of the two differ before and after. */
    private boolean changesPlaces(List<Entry> dealt, int[] groupOf, int a, int b) {
        double before = uneven(dealt, groupOf, groupOf[a]) + uneven(dealt, groupOf, groupOf[b]);
        Collections.swap(dealt, a, b);
        double after = uneven(dealt, groupOf, groupOf[a]) + uneven(dealt, groupOf, groupOf[b]);
        if (after < before - LEAST_GAIN) {
            return true;
        }
        Collections.swap(dealt, a, b);
        return false;
    }

    /** Squared distance of a group from an even share in each rule, in bowlers or standard deviations. */
    private double uneven(List<Entry> dealt, int[] groupOf, int group) {
        List<Entry> members = IntStream.range(0, groupOf.length)
                .filter(place -> groupOf[place] == group)
                .mapToObj(dealt::get)
                .toList();
        double share = (double) members.size() / dealt.size();
        double sum = 0;
        if (rules.contains(Rule.HANDS)) {
            sum += square(left(members) - share * left(dealt));
        }
        if (rules.contains(Rule.STYLES)) {
            for (String style : styles(dealt)) {
                sum += square(ofStyle(members, style) - share * ofStyle(dealt, style));
            }
        }
        if (rules.contains(Rule.AVERAGES) && scalePins > 0) {
            sum += square(members.size() * (mean(members, mean(dealt, 0)) - mean(dealt, 0)) / scalePins);
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * Left-handers.
     *
     * @param entries some entries
     * @return their number
     */
    public static long left(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.bowler().hand() == Hand.LEFT)
                .count();
    }

    private static List<String> styles(List<Entry> entries) {
        return entries.stream()
                .map(entry -> entry.bowler().style().id())
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Players of a style.
     *
     * @param entries some entries
     * @param style the style's name
     * @return their number
     */
    public static long ofStyle(List<Entry> entries, String style) {
        return entries.stream()
                .filter(entry -> entry.bowler().style().id().equals(style))
                .count();
    }

    /**
     * Mean average of those whose average is known.
     *
     * @param entries some entries
     * @param otherwise what to answer if none is known (pins)
     * @return pins
     */
    public static double mean(List<Entry> entries, double otherwise) {
        return entries.stream()
                .flatMapToInt(entry -> entry.averagePins().stream())
                .average()
                .orElse(otherwise);
    }

    private static double deviation(List<Entry> entries) {
        double mean = mean(entries, 0);
        return StrictMath.sqrt(entries.stream()
                .flatMapToInt(entry -> entry.averagePins().stream())
                .mapToDouble(pins -> square(pins - mean))
                .average()
                .orElse(0));
    }
}
