package lanetide.cli.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.WindowStudy;

/**
 * What a fit changes in what is said of an event.
 *
 * @param before of the event as published facts leave it
 * @param after of the same as it was fitted
 */
public record FitChanges(Told before, Told after) {
    /**
     * What is said of an event.
     *
     * @param study of scores and lines
     * @param oiling of when to oil again
     */
    public record Told(StudyResult study, ReoilResult oiling) {}

    /** Something that is said, before and after. */
    record Change(String what, String unit, Said before, Said after) {
        List<String> row() {
            int digits = unit.equals("games") ? 0 : 1;
            return List.of(what, before.words(digits), after.words(digits));
        }
    }

    /** What is said, with its interval if there is one. */
    record Said(double mean, Optional<ConfidenceInterval> interval) {
        private String words(int digits) {
            return Figures.fixed(mean, digits)
                    + interval.map(ends -> " (" + Figures.fixed(ends.low(), digits) + " to "
                                    + Figures.fixed(ends.high(), digits) + ")")
                            .orElse("");
        }
    }

    /** Scores of squads, how far lines have gone in when squads leave, then when to oil again. */
    List<Change> all() {
        List<Change> all = new ArrayList<>();
        for (int s = 0; s < before.study().squads().size(); s++) {
            SquadStatistics one = before.study().squads().get(s);
            SquadStatistics other = after.study().squads().get(s);
            all.add(new Change(
                    "squad " + one.squad() + " scores (pins)",
                    "pins",
                    new Said(one.meanScore(), one.meanScoreCi95()),
                    new Said(other.meanScore(), other.meanScoreCi95())));
        }
        for (WindowStudy.Move move : before.study().moves()) {
            after.study().moves().stream()
                    .filter(other -> isSame(move, other) && move.moment().afterGame() > 0)
                    .filter(other -> move.boards().isPresent() && other.boards().isPresent())
                    .findFirst()
                    .ifPresent(other -> all.add(new Change(
                            "line of " + move.style() + " ("
                                    + move.hand().name().toLowerCase(Locale.ROOT) + ") after squad "
                                    + move.moment().squad() + " (boards)",
                            "boards",
                            new Said(move.boards().getAsDouble(), move.ci90()),
                            new Said(other.boards().getAsDouble(), other.ci90()))));
        }
        all.add(new Change("oil again after (games on a pair)", "games", oiling(before), oiling(after)));
        return all;
    }

    private static Said oiling(Told told) {
        Interval best = told.oiling().interval(Basis.COST);
        return new Said(best.games(), Optional.of(new ConfidenceInterval(best.low(), best.high(), 0.9)));
    }

    private static boolean isSame(WindowStudy.Move one, WindowStudy.Move other) {
        return one.moment().equals(other.moment()) && one.style().equals(other.style()) && one.hand() == other.hand();
    }
}
