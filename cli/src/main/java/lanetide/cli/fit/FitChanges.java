package lanetide.cli.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.WindowStudy;

/**
 * What a fit changes in what is said of an event.
 *
 * @param before the event as published facts leave it
 * @param after the same as it was fitted
 */
public record FitChanges(StudyResult before, StudyResult after) {
    /** Something that is said, before and after. */
    record Change(String what, String unit, Said before, Said after) {
        List<String> row() {
            return List.of(what, before.words(), after.words());
        }
    }

    /** What is said, with its interval if there is one. */
    record Said(double mean, Optional<ConfidenceInterval> interval) {
        private String words() {
            return Figures.fixed(mean, 1)
                    + interval.map(ends ->
                                    " (" + Figures.fixed(ends.low(), 1) + " to " + Figures.fixed(ends.high(), 1) + ")")
                            .orElse("");
        }
    }

    /** Scores of squads, then how far lines have gone in when squads leave. */
    List<Change> all() {
        List<Change> all = new ArrayList<>();
        for (int s = 0; s < before.squads().size(); s++) {
            SquadStatistics one = before.squads().get(s);
            SquadStatistics other = after.squads().get(s);
            all.add(new Change(
                    "squad " + one.squad() + " scores (pins)",
                    "pins",
                    new Said(one.meanScore(), one.meanScoreCi95()),
                    new Said(other.meanScore(), other.meanScoreCi95())));
        }
        for (WindowStudy.Move move : before.moves()) {
            after.moves().stream()
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
        return all;
    }

    private static boolean isSame(WindowStudy.Move one, WindowStudy.Move other) {
        return one.moment().equals(other.moment()) && one.style().equals(other.style()) && one.hand() == other.hand();
    }
}
