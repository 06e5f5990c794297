package lanetide.squads.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Puts those who go together into boxes, such as groups or squads, so that these are filled as evenly as their room
 * allows. Large units go first, each to the emptiest box; then units change places or boxes as long as that makes boxes
 * more alike in size; then single bowlers fill up what is left, box by box. Among boxes that are equally full the first
 * is filled first.
 */
final class Dealing {
    private final List<Unit> units;
    private final int[] room;
    private final BiPredicate<Unit, Unit> mayMeet;
    /** Box of each unit; -1 for one that has none yet. */
    private final int[] boxOf;

    private final int[] sizes;

    /**
     * Deals.
     *
     * @param units who goes together, in the order in which they are dealt
     * @param room how many each box holds
     * @param mayMeet whether two units may be in one box
     */
    Dealing(List<Unit> units, int[] room, BiPredicate<Unit, Unit> mayMeet) {
        this.units = List.copyOf(units);
        this.room = room.clone();
        this.mayMeet = mayMeet;
        this.boxOf = new int[units.size()];
        this.sizes = new int[room.length];
        Arrays.fill(boxOf, -1);
        deal();
    }

    /** The box of each unit; -1 for one that found no room. */
    int[] boxOf() {
        return boxOf.clone();
    }

    private void deal() {
        for (int i = 0; i < boxOf.length; i++) {
            int unit = i;
            units.get(i).box().ifPresent(box -> put(unit, box));
        }
        List<Integer> free = IntStream.range(0, boxOf.length)
                .filter(unit -> boxOf[unit] < 0)
                .boxed()
                .toList();
        List<Integer> bound = free.stream()
                .filter(unit -> !isLoose(unit))
                .sorted(Comparator.comparingInt(unit -> -units.get(unit).size()))
                .toList();
        bound.forEach(this::putIntoEmptiest);
        while (isLevelledOnce(bound)) {}
        fillUp(free.stream().filter(this::isLoose).toList());
    }

    /** A single bowler who may be in any box with anybody. */
    private boolean isLoose(int unit) {
        Unit one = units.get(unit);
        return one.size() == 1
                && IntStream.range(0, units.size())
                        .allMatch(other -> other == unit || mayMeet.test(one, units.get(other)));
    }

    private void put(int unit, int box) {
        boxOf[unit] = box;
        sizes[box] += units.get(unit).size();
    }

    private void putIntoEmptiest(int unit) {
        IntStream.range(0, sizes.length)
                .filter(box -> sizes[box] + units.get(unit).size() <= room[box])
                .filter(box -> fits(unit, box, -1))
                .boxed()
                .min(Comparator.comparingInt(box -> sizes[box]))
                .ifPresent(box -> put(unit, box));
    }

    /** Whether a unit may meet all who are in a box, but for one who leaves it. */
    private boolean fits(int unit, int box, int leaver) {
        return IntStream.range(0, boxOf.length)
                .filter(other -> boxOf[other] == box && other != leaver && other != unit)
                .allMatch(other -> mayMeet.test(units.get(unit), units.get(other)));
    }

    /** Moves one unit, or has two change boxes, if that makes boxes more alike in size. */
    private boolean isLevelledOnce(List<Integer> bound) {
        for (int unit : bound) {
            for (int box = 0; boxOf[unit] >= 0 && box < sizes.length; box++) {
                if (gains(unit, box, units.get(unit).size()) && fits(unit, box, -1)) {
                    move(unit, box);
                    return true;
                }
            }
            for (int other : bound) {
                int more = units.get(unit).size() - units.get(other).size();
                if (more > 0
                        && boxOf[unit] >= 0
                        && boxOf[other] >= 0
                        && gains(unit, boxOf[other], more)
                        && fits(unit, boxOf[other], other)
                        && fits(other, boxOf[unit], unit)) {
                    int from = boxOf[unit];
                    move(unit, boxOf[other]);
                    move(other, from);
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the sum of squared sizes falls when so many leave the box of a unit for another one. */
    private boolean gains(int unit, int box, int number) {
        return box != boxOf[unit] && sizes[box] + number <= room[box] && sizes[boxOf[unit]] - sizes[box] > number;
    }

    private void move(int unit, int box) {
        sizes[boxOf[unit]] -= units.get(unit).size();
        put(unit, box);
    }

    private void fillUp(List<Integer> loose) {
        int[] targets = sizes.clone();
        for (int i = 0; i < loose.size(); i++) {
            IntStream.range(0, targets.length)
                    .filter(box -> targets[box] < room[box])
                    .boxed()
                    .min(Comparator.comparingInt(box -> targets[box]))
                    .ifPresent(box -> targets[box]++);
        }
        List<Integer> inTurn = new ArrayList<>(loose);
        for (int box = 0; box < targets.length; box++) {
            while (sizes[box] < targets[box]) {
                put(inTurn.remove(0), box);
            }
        }
    }
}
