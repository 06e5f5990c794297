package lanetide.squads.rotation.check;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Session;

/**
 * The structural checks that need all squads of an event, or the bowlers of a group: how each stands, and the numbers
 * that it rests on.
 *
 * @param sessions the squads' turns in order; the lanes are freshly oiled before the first
 * @param exposure how fresh the lanes are that groups find
 */
public record EventChecks(List<Session> sessions, WearExposure exposure) {
    /** What is looked at, in the order in which a director would ask; never changes between versions. */
    public enum Code {
        /** How fresh the lanes are that groups find. */
        WEAR,
        /** The same by delivery side. */
        HANDS,
        /** Who is met on a pair. */
        OPPONENTS,
        /** Left and right lane of a pair. */
        LANE_SIDES,
        /** The order of squads on one oiling. */
        SQUAD_ORDER
    }

    /** How far two means may differ and count as equal: rounding only. */
    private static final double EQUAL = 1e-9;

    /** Copies the list. */
    public EventChecks {
        sessions = List.copyOf(sessions);
    }

    /**
     * Looks an event over.
     *
     * @param sessions the squads' turns in order; the lanes are freshly oiled before the first
     * @return its checks
     */
    public static EventChecks of(List<Session> sessions) {
        return new EventChecks(sessions, WearExposure.of(sessions));
    }

    /**
     * How a check stands.
     *
     * @param code what is looked at
     * @return its outcome
     */
    public Outcome outcome(Code code) {
        boolean isGood = switch (code) {
            case WEAR -> isEven(range(exposure.groups(), GroupExposure::gamesSinceOiling));
            case HANDS, OPPONENTS, LANE_SIDES -> false;
            case SQUAD_ORDER -> sharing().size() == 1;
        };
        return isGood ? Outcome.HOLDS : Outcome.NOTE;
    }

    /**
     * The squads.
     *
     * @return each name once, in order of the first turn
     */
    public List<String> squads() {
        return sessions.stream().map(Session::squad).distinct().toList();
    }

    /**
     * Games bowled on a pair since it was oiled, as the groups of a squad find it on average.
     *
     * @param squad its name
     * @return least and most of its groups
     */
    public DoubleSummaryStatistics gamesSinceOiling(String squad) {
        return range(exposure.groupsOf(squad), GroupExposure::gamesSinceOiling);
    }

    /**
     * Something that groups find, over all of them.
     *
     * @param of what they find
     * @return least and most
     */
    public DoubleSummaryStatistics range(ToDoubleFunction<GroupExposure> of) {
        return range(exposure.groups(), of);
    }

    /**
     * Whether both hands are among the bowlers.
     *
     * @return false if all deliver from one side
     */
    public boolean hasBothHands() {
        return bowlers(Hands::left) > 0 && bowlers(Hands::right) > 0;
    }

    /**
     * How many start on the left lane of their pair, and so bowl the tenth frame, with its extra balls, on the right:
     * the first half of a group, the larger one.
     *
     * @return bowlers, over all turns
     */
    public int startOnTheLeft() {
        return bowlers(group -> (group.bowlers() + 1) / 2);
    }

    /**
     * How many start on the right lane.
     *
     * @return bowlers, over all turns
     */
    public int startOnTheRight() {
        return bowlers(group -> group.bowlers() / 2);
    }

    /**
     * The squads that bowl on one oiling of a pair, the longest such run.
     *
     * @return their names in order, at least one
     */
    public List<String> sharing() {
        List<String> longest = List.of();
        Map<Integer, List<String>> onPair = new HashMap<>();
        for (Session session : sessions) {
            for (int pair : session.pairs()) {
                List<String> now = session.oiled() ? new ArrayList<>() : onPair.getOrDefault(pair, new ArrayList<>());
                now.add(session.squad());
                onPair.put(pair, now);
                longest = now.size() > longest.size() ? List.copyOf(now) : longest;
            }
        }
        return longest;
    }

    /**
     * Whether a range is one number.
     *
     * @param range least and most
     * @return whether they differ by rounding only
     */
    public static boolean isEven(DoubleSummaryStatistics range) {
        return range.getMax() - range.getMin() <= EQUAL;
    }

    private int bowlers(ToIntFunction<Hands> of) {
        return sessions.stream()
                .flatMap(session -> session.groups().stream())
                .mapToInt(of)
                .sum();
    }

    private static DoubleSummaryStatistics range(List<GroupExposure> groups, ToDoubleFunction<GroupExposure> of) {
        return groups.stream().mapToDouble(of).summaryStatistics();
    }
}
