package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * Makes boxes more alike in what the rules name: two units of one size in different boxes change places as long as that
 * gains.
 */
final class Evening {
    /** Smallest gain for which two change places: less is the last digit of a sum. */
    private static final double LEAST_GAIN = 1e-9;

    private final Set<Rule> rules;
    private final List<String> styles;
    private final Count all;
    private final double scalePins;
    private final BiPredicate<Unit, Unit> mayMeet;
    private final List<Unit> units;
    private final List<Count> counts;
    private final int[] boxOf;
    private final Count[] boxes;

    /**
     * Evens out.
     *
     * @param entries what is known of everybody
     * @param units who goes together
     * @param boxOf the box of each unit
     * @param boxCount how many boxes there are
     * @param rules what is spread evenly
     * @param mayMeet whether two units may be in one box
     */
    Evening(
            List<Traits> entries,
            List<Unit> units,
            int[] boxOf,
            int boxCount,
            Set<Rule> rules,
            BiPredicate<Unit, Unit> mayMeet) {
        this.rules = Set.copyOf(rules);
        this.styles = entries.stream()
                .flatMap(entry -> entry.style().stream())
                .distinct()
                .sorted()
                .toList();
        this.all = count(entries);
        this.scalePins = deviation(entries, all);
        this.mayMeet = mayMeet;
        this.units = new ArrayList<>(units);
        this.boxOf = boxOf.clone();
        this.counts = new ArrayList<>();
        this.boxes = new Count[boxCount];
        Arrays.fill(boxes, count(List.of()));
        for (int i = 0; i < units.size(); i++) {
            counts.add(count(units.get(i).members().stream().map(entries::get).toList()));
            boxes[boxOf[i]] = boxes[boxOf[i]].plus(counts.get(i), 1);
        }
        if (!rules.isEmpty()) {
            even();
        }
    }

    /** What is counted of some bowlers. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Count(int size, int left, int[] ofStyle, long pins, int known) {
        Count plus(Count other, int sign) {
            int[] sum = ofStyle.clone();
            for (int i = 0; i < sum.length; i++) {
                sum[i] += sign * other.ofStyle[i];
            }
            return new Count(
                    size + sign * other.size,
                    left + sign * other.left,
                    sum,
                    pins + sign * other.pins,
                    known + sign * other.known);
        }

        double mean(double otherwise) {
            return known == 0 ? otherwise : (double) pins / known;
        }
    }

    private Count count(List<Traits> of) {
        return new Count(
                of.size(),
                (int) Traits.left(of),
                styles.stream()
                        .mapToInt(style -> (int) Traits.ofStyle(of, style))
                        .toArray(),
                of.stream()
                        .flatMapToInt(entry -> entry.averagePins().stream())
                        .asLongStream()
                        .sum(),
                (int) of.stream()
                        .filter(entry -> entry.averagePins().isPresent())
                        .count());
    }

    private static double deviation(List<Traits> entries, Count all) {
        double mean = all.mean(0);
        return StrictMath.sqrt(entries.stream()
                .flatMapToInt(entry -> entry.averagePins().stream())
                .mapToDouble(pins -> square(pins - mean))
                .average()
                .orElse(0));
    }

    /** The members of each box, in order. */
    List<List<Integer>> members() {
        List<List<Integer>> members = new ArrayList<>();
        for (int box = 0; box < boxes.length; box++) {
            List<Integer> inBox = new ArrayList<>();
            for (int i = 0; i < boxOf.length; i++) {
                if (boxOf[i] == box) {
                    inBox.addAll(units.get(i).members());
                }
            }
            members.add(inBox);
        }
        return members;
    }

    private void even() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int a = 0; a < boxOf.length; a++) {
                for (int b = a + 1; b < boxOf.length; b++) {
                    changed |= mayChange(a, b) && changesPlaces(a, b);
                }
            }
        }
    }

    private boolean mayChange(int a, int b) {
        return boxOf[a] != boxOf[b]
                && units.get(a).size() == units.get(b).size()
                && units.get(a).box().isEmpty()
                && units.get(b).box().isEmpty();
    }

    /** Only the boxes of the two differ before and after. */
    private boolean changesPlaces(int a, int b) {
        double before = uneven(boxes[boxOf[a]]) + uneven(boxes[boxOf[b]]);
        Count atA = boxes[boxOf[a]].plus(counts.get(a), -1).plus(counts.get(b), 1);
        Count atB = boxes[boxOf[b]].plus(counts.get(b), -1).plus(counts.get(a), 1);
        if (!(uneven(atA) + uneven(atB) < before - LEAST_GAIN) || !fits(a, b) || !fits(b, a)) {
            return false;
        }
        boxes[boxOf[a]] = atA;
        boxes[boxOf[b]] = atB;
        Collections.swap(units, a, b);
        Collections.swap(counts, a, b);
        return true;
    }

    /** Whether a unit may meet all who stay where another one leaves. */
    private boolean fits(int unit, int leaver) {
        for (int i = 0; i < boxOf.length; i++) {
            if (boxOf[i] == boxOf[leaver] && i != leaver && !mayMeet.test(units.get(unit), units.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Squared distance of a box from an even share in each rule, in bowlers or standard deviations. */
    private double uneven(Count box) {
        double share = (double) box.size() / all.size();
        double sum = 0;
        if (rules.contains(Rule.HANDS)) {
            sum += square(box.left() - share * all.left());
        }
        if (rules.contains(Rule.STYLES)) {
            for (int style = 0; style < styles.size(); style++) {
                sum += square(box.ofStyle()[style] - share * all.ofStyle()[style]);
            }
        }
        if (rules.contains(Rule.AVERAGES) && scalePins > 0) {
            sum += square(box.size() * (box.mean(all.mean(0)) - all.mean(0)) / scalePins);
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }
}
