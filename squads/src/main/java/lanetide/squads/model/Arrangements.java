package lanetide.squads.model;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What is arranged for a squad beside its games.
 *
 * @param breaks breaks in order
 * @param changes how who bowls differs from the list, at most one change a bowler
 * @param machines lane machines used before it; empty for all of the centre's. At least 1
 * @param oiling when its lanes are oiled
 */
public record Arrangements(List<Break> breaks, List<LineUpChange> changes, OptionalInt machines, OilTime oiling) {
    /** Nothing but games. */
    public static final Arrangements NONE = new Arrangements(List.of(), List.of(), OptionalInt.empty());

    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if a bowler has two changes or {@code machines < 1}
     */
    public Arrangements {
        breaks = List.copyOf(breaks);
        changes = List.copyOf(changes);
        if (changes.stream().map(LineUpChange::bowler).distinct().count() < changes.size()) {
            throw new IllegalArgumentException("a bowler has two changes of the line-up; give him one");
        }
        if (machines.orElse(1) < 1) {
            throw new IllegalArgumentException("machines is " + machines.getAsInt() + ", but must be at least 1");
        }
    }

    /**
     * For lanes that are oiled in time for its practice, just so.
     *
     * @param breaks breaks in order
     * @param changes how who bowls differs from the list, at most one change a bowler
     * @param machines lane machines used before it; empty for all of the centre's
     * @throws IllegalArgumentException as above
     */
    public Arrangements(List<Break> breaks, List<LineUpChange> changes, OptionalInt machines) {
        this(breaks, changes, machines, OilTime.LAST_MINUTE);
    }

    /**
     * What concerns some bowlers only.
     *
     * @param bowlers names of bowlers
     * @return the same without changes of the line-up for anybody else
     */
    Arrangements among(Set<String> bowlers) {
        return withChanges(changes.stream()
                .filter(change -> bowlers.contains(change.bowler()))
                .toList());
    }

    /**
     * The same breaks and machines with other changes of the line-up.
     *
     * @param others at most one change a bowler
     * @return the arrangements
     */
    public Arrangements withChanges(List<LineUpChange> others) {
        return new Arrangements(breaks, others, machines, oiling);
    }

    /**
     * What is left for the first games of a squad whose other games are played as a squad of their own.
     *
     * @param games how many games it plays, at least 1
     * @return breaks that come after an earlier game than the last of them, and changes of the line-up that begin by
     *     then
     */
    public Arrangements before(int games) {
        return new Arrangements(
                breaks.stream().filter(pause -> isOver(pause, games)).toList(),
                changes.stream().filter(change -> change.beginsBy(games)).toList(),
                machines,
                oiling);
    }

    /**
     * What is left for the other games, counted anew. Who was away stays away, and who stands in for another goes on. A
     * break that was due after the last of the first games comes one game later, since nobody takes one at the end of a
     * squad. A break at a time of day is taken here, so that it is taken once: when that time comes cannot be told
     * before the games are played.
     *
     * @param games how many games were played before, at least 1
     * @return the arrangements
     */
    public Arrangements after(int games) {
        return new Arrangements(
                breaks.stream()
                        .filter(pause -> !isOver(pause, games))
                        .map(pause -> new Break(
                                Math.max(1, pause.afterGame() - games), pause.notBeforeMs(), pause.lengthMs()))
                        .toList(),
                changes.stream().map(change -> change.after(games)).toList(),
                machines,
                oiling);
    }

    private static boolean isOver(Break pause, int games) {
        return pause.notBeforeMs() == 0 && pause.afterGame() < games;
    }
}
