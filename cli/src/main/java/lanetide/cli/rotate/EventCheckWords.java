package lanetide.cli.rotate;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.squads.rotation.check.EventChecks;
import lanetide.squads.rotation.check.GroupExposure;
import lanetide.squads.rotation.check.Outcome;
import lanetide.squads.rotation.design.RowCompleteExistence;
import lanetide.squads.rotation.design.SquadOrder;

/** The structural checks of an event, each a sentence with its reason. */
record EventCheckWords(EventChecks checks) {
    static List<CheckLine> of(EventChecks checks) {
        EventCheckWords words = new EventCheckWords(checks);
        return Stream.of(EventChecks.Code.values())
                .map(code -> CheckLine.of(code, checks.outcome(code), words.sentence(code)))
                .toList();
    }

    private String sentence(EventChecks.Code code) {
        return switch (code) {
            case WEAR -> wear();
            case HANDS -> hands();
            case OPPONENTS ->
                "A group stays together in all its games, so that its bowlers meet each other and nobody else on their pair.";
            case LANE_SIDES -> laneSides();
            case SQUAD_ORDER -> squadOrder();
        };
    }

    private String wear() {
        String told = checks.squads().stream()
                .map(squad -> "squad " + squad + " " + span(checks.gamesSinceOiling(squad)))
                .collect(Collectors.joining("; "));
        boolean isEvenWithinSquads =
                checks.squads().stream().allMatch(squad -> EventChecks.isEven(checks.gamesSinceOiling(squad)));
        return "Games bowled on a pair since it was oiled, as a group finds it on average: " + told + "."
                + (checks.outcome(EventChecks.Code.WEAR) == Outcome.HOLDS
                        ? " Everybody finds lanes equally fresh."
                        : isEvenWithinSquads
                                ? " Within a squad everybody finds lanes equally fresh; the squads do not."
                                : " Groups of one squad find lanes of different age, because some pairs are left out in some"
                                        + " games.");
    }

    private String hands() {
        return !checks.hasBothHands()
                ? "All bowlers deliver from one side."
                : "Bowlers' games on a pair since it was oiled, as a group finds it on average: "
                        + span(checks.range(GroupExposure::rightHandedBefore)) + " by right-handers, "
                        + span(checks.range(GroupExposure::leftHandedBefore))
                        + " by left-handers. The side of the lane that few use stays fresher; a rotation cannot change that,"
                        + " only spread it.";
    }

    private static String span(DoubleSummaryStatistics range) {
        String least = String.format(Locale.ROOT, "%.1f", range.getMin());
        return EventChecks.isEven(range) ? least : least + " to " + String.format(Locale.ROOT, "%.1f", range.getMax());
    }

    /** Who starts on the left ends on the right: ten frames in turn, the tenth with up to two balls more. */
    private String laneSides() {
        int left = checks.startOnTheLeft();
        int right = checks.startOnTheRight();
        return "Everybody bowls five frames of a game on each lane of the pair. "
                + (left == 1
                        ? "1 bowler starts on the left lane and bowls"
                        : left + " bowlers start on the left lane and bowl")
                + " the tenth frame, with its extra balls, on the right; " + right + (right == 1 ? " does" : " do")
                + " the opposite.";
    }

    private String squadOrder() {
        List<String> sharing = checks.sharing();
        int squads = sharing.size();
        if (squads == 1) {
            return "Every squad has an oiling of its own.";
        }
        String told = squads + " squads bowl on one oiling, so that the last follows all others. Over ";
        String days = SquadOrder.days(squads) + " days";
        String order = SquadOrder.balanced(squads).stream()
                .map(day -> day.stream().map(sharing::get).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; ", ": ", "."));
        return RowCompleteExistence.of(squads) == RowCompleteExistence.NONE
                ? told + squads
                        + " days each can be first, second and so on once, but it is impossible that each also follows"
                        + " each other once; that takes " + days + order
                : told + days + " each can be first, second and so on equally often and follow each other equally often"
                        + order;
    }
}
