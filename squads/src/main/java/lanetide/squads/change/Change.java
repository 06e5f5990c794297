package lanetide.squads.change;

import java.util.List;
import java.util.stream.Stream;
import lanetide.squads.model.Event;

/**
 * A changed event, and what has changed in it for whom.
 *
 * @param event the event as it is to be played now
 * @param visits groups that bowl elsewhere than planned, by squad, group and game
 * @param moved bowlers who bowl with another group, by squad
 * @param dissolved groups that no longer exist
 * @param absent bowlers who stay away
 * @param starts squads that start at another time
 * @param parted partners who bowl in different groups now, as no group had room for all of them
 * @param filled places of absent bowlers that others take who waited
 */
public record Change(
        Event event,
        List<Visit> visits,
        List<Mover> moved,
        List<Dissolved> dissolved,
        List<Absent> absent,
        List<Start> starts,
        List<Parted> parted,
        List<Filled> filled) {
    /** Copies the lists. */
    public Change {
        visits = List.copyOf(visits);
        moved = List.copyOf(moved);
        dissolved = List.copyOf(dissolved);
        absent = List.copyOf(absent);
        starts = List.copyOf(starts);
        parted = List.copyOf(parted);
        filled = List.copyOf(filled);
    }

    /**
     * A change in which no partners are parted.
     *
     * @param event the event as it is to be played now
     * @param visits groups that bowl elsewhere than planned
     * @param moved bowlers who bowl with another group
     * @param dissolved groups that no longer exist
     * @param absent bowlers who stay away
     * @param starts squads that start at another time
     */
    public Change(
            Event event,
            List<Visit> visits,
            List<Mover> moved,
            List<Dissolved> dissolved,
            List<Absent> absent,
            List<Start> starts) {
        this(event, visits, moved, dissolved, absent, starts, List.of(), List.of());
    }

    /**
     * The same change in which partners are parted.
     *
     * @param partners who they are
     * @return the change
     */
    Change parting(List<Parted> partners) {
        return new Change(event, visits, moved, dissolved, absent, starts, partners, filled);
    }

    /**
     * No change.
     *
     * @param event the event
     * @return the same event
     */
    public static Change none(Event event) {
        return new Change(event, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /**
     * A group that bowls elsewhere in a game.
     *
     * @param squad the squad's name
     * @param group the group's name
     * @param game game, counted from zero
     * @param planned the pair it was to bowl on, counted from zero
     * @param now the pair it bowls on
     */
    public record Visit(String squad, String group, int game, int planned, int now) {}

    /**
     * A bowler who changes groups.
     *
     * @param squad the squad's name
     * @param bowler the bowler's name
     * @param from the group's name as planned
     * @param to the group he bowls with
     */
    public record Mover(String squad, String bowler, String from, String to) {}

    /**
     * A group that no longer exists.
     *
     * @param squad the squad's name
     * @param group the group's name
     */
    public record Dissolved(String squad, String group) {}

    /**
     * A bowler who stays away.
     *
     * @param squad the squad's name
     * @param bowler the bowler's name
     */
    public record Absent(String squad, String bowler) {}

    /**
     * Partners who do not bowl together any more.
     *
     * @param squad the squad's name
     * @param partners what they are called together
     */
    public record Parted(String squad, String partners) {}

    /**
     * A bowler who takes the place of one who stays away.
     *
     * @param squad the squad's name
     * @param group the group's name
     * @param bowler who waited
     * @param absent in whose place he bowls
     */
    public record Filled(String squad, String group, String bowler, String absent) {}

    /**
     * A squad that starts at another time.
     *
     * @param squad the squad's name
     * @param plannedMs planned start (ms from midnight before the first day)
     * @param nowMs new start
     */
    public record Start(String squad, long plannedMs, long nowMs) {}

    /**
     * This change and then another one made to its event.
     *
     * @param next the later change
     * @return both
     */
    public Change then(Change next) {
        return new Change(
                next.event(),
                joined(visits, next.visits()),
                joined(moved, next.moved()),
                joined(dissolved, next.dissolved()),
                joined(absent, next.absent()),
                joined(starts, next.starts()),
                joined(parted, next.parted()),
                joined(filled, next.filled()));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
