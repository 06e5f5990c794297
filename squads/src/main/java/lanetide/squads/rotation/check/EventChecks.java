package lanetide.squads.rotation.check;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.design.RowCompleteExistence;
import lanetide.squads.rotation.design.SquadOrder;

/** The structural checks that need all squads of an event, or the bowlers of a group. */
public final class EventChecks {
    /** How fresh the lanes are that groups find. */
    public static final String WEAR = "wear";

    /** The same by delivery side. */
    public static final String HANDS = "hands";

    /** Who is met on a pair. */
    public static final String OPPONENTS = "opponents";

    /** Left and right lane of a pair. */
    public static final String LANE_SIDES = "lane-sides";

    /** The order of squads on one oiling. */
    public static final String SQUAD_ORDER = "squad-order";

    /** How far two means may differ and count as equal: rounding only. */
    private static final double EQUAL = 1e-9;

    private EventChecks() {}

    /**
     * Checks an event.
     *
     * @param sessions the squads' turns in order; the lanes are freshly oiled before the first
     * @return the checks in the order in which a director would ask
     */
    public static List<StructuralCheck> of(List<Session> sessions) {
        WearExposure exposure = WearExposure.of(sessions);
        List<StructuralCheck> checks = new ArrayList<>();
        checks.add(wear(exposure, sessions));
        checks.add(hands(exposure, sessions));
        checks.add(opponents());
        checks.add(laneSides(sessions));
        checks.add(squadOrder(sessions));
        return checks;
    }

    private static StructuralCheck wear(WearExposure exposure, List<Session> sessions) {
        DoubleSummaryStatistics all = range(exposure.groups(), GroupExposure::gamesSinceOiling);
        String told = squads(sessions).stream()
                .map(squad -> found(squad, exposure.groupsOf(squad)))
                .collect(Collectors.joining("; "));
        String sentence = "Games bowled on a pair since it was oiled, as a group finds it on average: " + told + ".";
        if (isEven(all)) {
            return StructuralCheck.holds(WEAR, sentence + " Everybody finds lanes equally fresh.");
        }
        boolean withinSquads = squads(sessions).stream()
                .allMatch(squad -> isEven(range(exposure.groupsOf(squad), GroupExposure::gamesSinceOiling)));
        return StructuralCheck.note(
                WEAR,
                sentence
                        + (withinSquads
                                ? " Within a squad everybody finds lanes equally fresh; the squads do not."
                                : " Groups of one squad find lanes of different age, because some pairs are left out in"
                                        + " some games."));
    }

    private static String found(String squad, List<GroupExposure> groups) {
        DoubleSummaryStatistics mean = range(groups, GroupExposure::gamesSinceOiling);
        return "squad " + squad + " " + span(mean);
    }

    private static StructuralCheck hands(WearExposure exposure, List<Session> sessions) {
        boolean both =
                sessions.stream().flatMap(session -> session.groups().stream()).anyMatch(hands -> hands.left() > 0)
                        && sessions.stream()
                                .flatMap(session -> session.groups().stream())
                                .anyMatch(hands -> hands.right() > 0);
        if (!both) {
            return StructuralCheck.note(HANDS, "All bowlers deliver from one side.");
        }
        DoubleSummaryStatistics right = range(exposure.groups(), GroupExposure::rightHandedBefore);
        DoubleSummaryStatistics left = range(exposure.groups(), GroupExposure::leftHandedBefore);
        return StructuralCheck.note(
                HANDS,
                "Bowlers' games on a pair since it was oiled, as a group finds it on average: " + span(right)
                        + " by right-handers, " + span(left)
                        + " by left-handers. The side of the lane that few use stays fresher; a rotation cannot change that,"
                        + " only spread it.");
    }

    private static String span(DoubleSummaryStatistics range) {
        return isEven(range)
                ? String.format(Locale.ROOT, "%.1f", range.getMin())
                : String.format(Locale.ROOT, "%.1f to %.1f", range.getMin(), range.getMax());
    }

    private static StructuralCheck opponents() {
        return StructuralCheck.note(
                OPPONENTS,
                "A group stays together in all its games, so that its bowlers meet each other and nobody else on their"
                        + " pair.");
    }

    /** Who starts on the left ends on the right: ten frames in turn, the tenth with up to two balls more. */
    private static StructuralCheck laneSides(List<Session> sessions) {
        int left = 0;
        int right = 0;
        for (Session session : sessions) {
            for (Hands group : session.groups()) {
                left += (group.bowlers() + 1) / 2;
                right += group.bowlers() / 2;
            }
        }
        return StructuralCheck.note(
                LANE_SIDES,
                "Everybody bowls five frames of a game on each lane of the pair. "
                        + (left == 1
                                ? "1 bowler starts on the left lane and bowls"
                                : left + " bowlers start on the left lane and bowl")
                        + " the tenth frame, with its extra balls, on the right; "
                        + (right == 1 ? "1 does" : right + " do")
                        + " the opposite.");
    }

    private static StructuralCheck squadOrder(List<Session> sessions) {
        List<String> sharing = longestSharing(sessions);
        int squads = sharing.size();
        if (squads == 1) {
            return StructuralCheck.holds(SQUAD_ORDER, "Every squad has an oiling of its own.");
        }
        String told = squads + " squads bowl on one oiling, so that the last follows all others. ";
        String days = order(SquadOrder.balanced(squads), sharing);
        return RowCompleteExistence.of(squads) == RowCompleteExistence.NONE
                ? StructuralCheck.note(
                        SQUAD_ORDER,
                        told + "Over " + squads
                                + " days each can be first, second and so on once, but it is impossible that each also"
                                + " follows each other once; that takes " + SquadOrder.days(squads) + " days: " + days
                                + ".")
                : StructuralCheck.note(
                        SQUAD_ORDER,
                        told + "Over " + SquadOrder.days(squads)
                                + " days each can be first, second and so on equally often and follow each other"
                                + " equally often: "
                                + days + ".");
    }

    private static String order(List<List<Integer>> days, List<String> names) {
        return days.stream()
                .map(day -> day.stream().map(names::get).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    /** The squads that bowl on one oiling, the longest such run. */
    private static List<String> longestSharing(List<Session> sessions) {
        List<String> longest = List.of();
        List<String> now = new ArrayList<>();
        for (Session session : sessions) {
            if (session.oiled()) {
                now = new ArrayList<>();
            }
            now.add(session.squad());
            longest = now.size() > longest.size() ? now : longest;
        }
        return longest;
    }

    private static List<String> squads(List<Session> sessions) {
        return sessions.stream().map(Session::squad).distinct().toList();
    }

    private static DoubleSummaryStatistics range(List<GroupExposure> groups, ToDoubleFunction<GroupExposure> of) {
        return groups.stream().mapToDouble(of).summaryStatistics();
    }

    private static boolean isEven(DoubleSummaryStatistics range) {
        return range.getMax() - range.getMin() <= EQUAL;
    }
}
