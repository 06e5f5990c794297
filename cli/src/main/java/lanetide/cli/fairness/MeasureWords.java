package lanetide.cli.fairness;

import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.words.UnknownNames;
import lanetide.cli.words.UnknownWords;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.measure.Measurement;
import lanetide.squads.measure.WhatToMeasure;

/** In words what an advantage hangs on, and what measuring would tell. */
public final class MeasureWords {
    /** Measurements that a text tells. */
    private static final int MOST_TOLD = 6;

    /** Over what it hangs on. */
    public static final String HANGS_ON = "What it hangs on";

    /** Over what would narrow it. */
    public static final String SETTLES =
            "What would settle it: one measurement, by how much it would narrow what is not known";

    private MeasureWords() {}

    /** What is looked at, and by how much it is not known. */
    public static String least(WhatToMeasure found) {
        String who = found.kind() == EffectKind.SQUAD
                ? "what squad " + found.id() + " is worth"
                : "what the change of the lanes gives to " + found.id() + " players";
        return "Least sure is " + who + ": what is not known moves it by " + Figures.fixed(found.notKnownPins(), 1)
                + " pins a game to either side (standard deviation, luck taken out).";
    }

    /** What it hangs on, a line each. */
    public static List<String> hangsOn(WhatToMeasure found) {
        return found.hangsOn().isEmpty()
                ? List.of("No single unknown is shown to move it; it hangs on many together, or on little.")
                : found.hangsOn().stream()
                        .map(one -> UnknownWords.share(one.share()) + " of it goes with "
                                + UnknownNames.of(one.unknown()) + " ("
                                + (one.rises() ? "the more, the larger" : "the more, the smaller") + ").")
                        .toList();
    }

    /** What would narrow it, a line each. */
    public static List<String> worth(WhatToMeasure found) {
        List<String> told = found.worth().stream()
                .filter(one -> Math.round(100 * one.narrows()) > 0)
                .limit(MOST_TOLD)
                .map(one -> of(one.measurement()) + ": narrows it by " + UnknownWords.share(one.narrows()) + ".")
                .toList();
        return told.isEmpty()
                ? List.of("None of the " + found.worth().size()
                        + " measurements looked at, taken once, is shown to narrow it: luck"
                        + " of the day drowns it. Take several.")
                : told;
    }

    /** A measurement. */
    static String of(Measurement measurement) {
        if (measurement instanceof Measurement.Tape tape) {
            return "A tape on lane " + tape.lane() + " after squad " + tape.squad() + ", "
                    + Figures.fixed(tape.distanceM() / LaneGeometry.FOOT_M, 0) + " ft, board " + tape.board();
        }
        if (measurement instanceof Measurement.SquadScore score) {
            return "The mean score of squad " + score.squad();
        }
        if (measurement instanceof Measurement.SquadTrend trend) {
            return "How much more squad " + trend.squad() + " scores in its last game than in its first";
        }
        Measurement.Laydown laydown = (Measurement.Laydown) measurement;
        return "Where " + laydown.style() + " players lay the ball down in the last game of squad " + laydown.squad()
                + ", ten balls";
    }
}
