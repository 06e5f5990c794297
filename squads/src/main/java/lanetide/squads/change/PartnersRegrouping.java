package lanetide.squads.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lanetide.squads.draw.Partners;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;

/**
 * Evens groups out where some bowl with partners. Partners go together, the largest number of them first, to the
 * emptiest group that has room, and among several to the one that starts nearest. Then partners or single bowlers go
 * from a large group to a small one, the last of a group first, as long as that makes the two more alike. Only partners
 * for whom no group has room are parted.
 */
final class PartnersRegrouping {
    private final String squad;
    private final List<List<Bowler>> groups;
    private final List<String> names;
    private final List<Integer> keep;
    private final Map<Integer, List<List<Bowler>>> now = new LinkedHashMap<>();
    private final List<Change.Parted> parted = new ArrayList<>();

    /** Groups of a squad; see {@link Regrouping#even}. */
    PartnersRegrouping(String squad, List<List<Bowler>> groups, List<String> names, List<Integer> keep) {
        this.squad = squad;
        this.groups = groups;
        this.names = names;
        this.keep = keep;
    }

    /** Those of a group who go together. */
    static List<List<Bowler>> together(List<Bowler> group) {
        return Partners.together(group, Function.identity());
    }

    Regrouping.Result even() {
        keep.forEach(group -> now.put(group, new ArrayList<>(together(groups.get(group)))));
        List<Leaver> leavers = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            if (!keep.contains(group)) {
                for (List<Bowler> unit : together(groups.get(group))) {
                    leavers.add(new Leaver(unit, group));
                }
            }
        }
        leavers.stream()
                .sorted(Comparator.comparingInt(leaver -> -leaver.unit().size()))
                .forEach(this::place);
        while (isLevelledOnce()) {}
        return new Regrouping.Result(
                keep.stream()
                        .map(group -> new Group(names.get(group), bowlers(group)))
                        .toList(),
                moved(),
                parted);
    }

    private record Leaver(List<Bowler> unit, int group) {}

    private void place(Leaver leaver) {
        Optional<Integer> place = emptiest(leaver.group(), leaver.unit().size());
        if (place.isPresent()) {
            now.get(place.get()).add(leaver.unit());
            return;
        }
        leaver.unit().get(0).partners().ifPresent(name -> parted.add(new Change.Parted(squad, name)));
        for (Bowler bowler : leaver.unit()) {
            now.get(emptiest(leaver.group(), 1).orElseThrow()).add(List.of(bowler));
        }
    }

    private Optional<Integer> emptiest(int near, int number) {
        return keep.stream()
                .filter(group -> size(group) + number <= PairLoss.MAX_ON_A_PAIR)
                .min(Comparator.comparingInt(this::size).thenComparingInt(group -> Math.abs(group - near)));
    }

    private int size(int group) {
        return now.get(group).stream().mapToInt(List::size).sum();
    }

    private List<Bowler> bowlers(int group) {
        return now.get(group).stream().flatMap(List::stream).toList();
    }

    private boolean isLevelledOnce() {
        List<Integer> bySize =
                keep.stream().sorted(Comparator.comparingInt(this::size)).toList();
        for (int large = bySize.size() - 1; large > 0; large--) {
            for (int small = 0; small < large; small++) {
                if (moves(bySize.get(large), bySize.get(small))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Sends the last of a group whose going makes the two more alike; false if there is none. */
    private boolean moves(int from, int to) {
        List<List<Bowler>> units = now.get(from);
        for (int i = units.size() - 1; i >= 0; i--) {
            if (size(from) - size(to) > units.get(i).size()) {
                now.get(to).add(units.remove(i));
                return true;
            }
        }
        return false;
    }

    private List<Change.Mover> moved() {
        List<Change.Mover> moved = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            for (Bowler bowler : groups.get(group)) {
                int to = groupOf(bowler);
                if (to != group) {
                    moved.add(new Change.Mover(squad, bowler.id(), names.get(group), names.get(to)));
                }
            }
        }
        return moved;
    }

    private int groupOf(Bowler bowler) {
        return keep.stream()
                .filter(group -> bowlers(group).contains(bowler))
                .findFirst()
                .orElseThrow();
    }

    /** Whether anybody bowls with partners. */
    static boolean isNeeded(List<List<Bowler>> groups) {
        return groups.stream()
                .flatMap(List::stream)
                .map(Bowler::partners)
                .flatMap(Optional::stream)
                .findAny()
                .isPresent();
    }
}
