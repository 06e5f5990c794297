package lanetide.cli.doubt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fit.FitDay;

/** Which commands have no answer for a scenario that can be played, and why; each sentence stands here alone. */
public final class Unanswered {
    private Unanswered() {}

    /**
     * Why fairness cannot be told.
     *
     * @param scenario a scenario
     * @return a sentence; empty if it can
     */
    public static Optional<String> byFairness(Scenario scenario) {
        return FairnessStudy.hasSeatsToChange(scenario.event())
                ? Optional.empty()
                : Optional.of("The scenario has a single bowler, and fairness needs two to change seats.");
    }

    /**
     * Why it cannot be told when to oil again.
     *
     * @param scenario a scenario
     * @return a sentence or two; empty if it can
     */
    public static Optional<String> byReoil(Scenario scenario) {
        String why = "";
        if (scenario.event().patterns().size() > 1) {
            why = "Squads or lanes have different patterns, and each has an age of its own at which it is to be laid"
                    + " again.";
        } else if (!scenario.event().sharesAllLanes()) {
            why = "Squads have lanes of their own, so that no lane grows older with all of them.";
        }
        return why.isEmpty()
                ? Optional.empty()
                : Optional.of(why + " Ask for a scenario that has the squads of one pattern and the same lanes alone.");
    }

    /**
     * Why a day tells a fit nothing, though something was measured.
     *
     * @param day a scenario
     * @return a sentence or two; empty if nothing was measured, or something that tells
     */
    public static Optional<String> byFit(Scenario day) {
        return day.measurements().isEmpty()
                        || !new FitDay(day.event(), day.measurements())
                                .readings()
                                .isEmpty()
                ? Optional.empty()
                : Optional.of("What was measured at " + day.file()
                        + " tells nothing yet: of scores, those of bowlers count of whom all games of the squad are"
                        + " known. Add the missing games, or tapes.");
    }

    /**
     * The reading of a scenario with a remark for each command that has no answer for it.
     *
     * @param reading a scenario as it was read
     * @return the same with the remarks; itself if it cannot be played
     */
    public static Reading told(Reading reading) {
        return reading.scenario()
                .map(scenario -> {
                    List<Notice> remarks = new ArrayList<>();
                    byFairness(scenario).ifPresent(why -> remarks.add(remark(scenario, "fairness", why)));
                    byReoil(scenario).ifPresent(why -> remarks.add(remark(scenario, "reoil", why)));
                    byFit(scenario).ifPresent(why -> remarks.add(remark(scenario, "fit", why)));
                    return reading.with(remarks);
                })
                .orElse(reading);
    }

    private static Notice remark(Scenario scenario, String command, String why) {
        return Notice.atStart(
                NoticeCode.COMMAND_WITHOUT_ANSWER,
                scenario.file(),
                "",
                command,
                "`lanetide " + command + "` has no answer. " + why);
    }
}
