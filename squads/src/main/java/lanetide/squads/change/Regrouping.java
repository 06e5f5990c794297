package lanetide.squads.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;

/**
 * Evens groups out with the fewest bowlers moved: afterwards sizes differ by at most one, the largest groups stay the
 * larger ones, the last bowlers of a group leave it, and each goes to a group that starts near.
 */
final class Regrouping {
    private Regrouping() {}

    /** The groups after the change, in their order, who has moved, and partners who were parted. */
    record Result(List<Group> groups, List<Change.Mover> moved, List<Change.Parted> parted) {}

    /**
     * Evens out.
     *
     * @param squad the squad's name
     * @param groups who is there, by group; a group may be empty
     * @param names names of the groups
     * @param keep which groups go on; the bowlers of the others are spread over them
     * @return the groups that go on
     */
    static Result even(String squad, List<List<Bowler>> groups, List<String> names, List<Integer> keep) {
        if (PartnersRegrouping.isNeeded(groups)) {
            return new PartnersRegrouping(squad, groups, names, keep).even();
        }
        int[] targets = targets(groups, keep);
        List<List<Bowler>> now = new ArrayList<>();
        List<Leaver> leavers = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            List<Bowler> bowlers = groups.get(group);
            int stay = Math.min(bowlers.size(), targets[group]);
            now.add(new ArrayList<>(bowlers.subList(0, stay)));
            for (Bowler leaver : bowlers.subList(stay, bowlers.size())) {
                leavers.add(new Leaver(leaver, group));
            }
        }
        List<Integer> seats = seats(now, targets);
        List<Change.Mover> moved = new ArrayList<>();
        if (!leavers.isEmpty()) {
            int[] seat = Assignment.ofLeastCost(
                    leavers.size(),
                    seats.size(),
                    (leaver, at) -> Math.abs(leavers.get(leaver).group() - seats.get(at)));
            for (int i = 0; i < seat.length; i++) {
                int to = seats.get(seat[i]);
                now.get(to).add(leavers.get(i).bowler());
                moved.add(new Change.Mover(
                        squad,
                        leavers.get(i).bowler().id(),
                        names.get(leavers.get(i).group()),
                        names.get(to)));
            }
        }
        return new Result(
                keep.stream()
                        .map(group -> new Group(names.get(group), now.get(group)))
                        .toList(),
                moved,
                List.of());
    }

    private record Leaver(Bowler bowler, int group) {}

    /** The size of every group: even, with the bowlers left over in the groups that are largest now. */
    private static int[] targets(List<List<Bowler>> groups, List<Integer> keep) {
        int bowlers = groups.stream().mapToInt(List::size).sum();
        int[] targets = new int[groups.size()];
        keep.forEach(group -> targets[group] = bowlers / keep.size());
        keep.stream()
                .sorted(Comparator.comparingInt(
                        (Integer group) -> -groups.get(group).size()))
                .limit(bowlers % keep.size())
                .forEach(group -> targets[group]++);
        return targets;
    }

    /** One entry for each free seat: the group that has it. */
    private static List<Integer> seats(List<List<Bowler>> now, int[] targets) {
        return IntStream.range(0, targets.length)
                .flatMap(group ->
                        IntStream.range(now.get(group).size(), targets[group]).map(seat -> group))
                .boxed()
                .toList();
    }
}
