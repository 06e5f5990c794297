package lanetide.cli.compare;

import lanetide.cli.report.Figures;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.fairness.Compared;
import lanetide.squads.fairness.Difference;

/** What two events are compared by, in words. */
final class CompareWords {
    private static final long MS_PER_MINUTE = 60_000;

    private CompareWords() {}

    static String quantity(Difference difference) {
        String squad = difference.squad().orElse("");
        return switch (difference.compared()) {
            case MEAN_SCORE -> "mean score";
            case SQUAD_SCORE -> "mean score of squad " + squad;
            case SQUAD_GAP -> "best less worst squad";
            case SPREAD -> "spread of the bowlers' means";
            case SQUAD_END -> "end of squad " + squad;
            case OIL_LAID -> "oil laid";
            case OIL_LEFT -> "oil left on a lane";
            case HEAD_OIL -> "oil left on worn heads";
            case CARRYDOWN -> "oil past the pattern's end";
        };
    }

    /** Whether it is real, in a word or two. */
    static String known(Difference.Known known) {
        return switch (known) {
            case REAL -> "yes";
            case HIDDEN -> "luck";
            case HANGS -> "not known";
            case NONE -> "alike";
        };
    }

    /** A mean of either event: a time of day for an end. */
    static String mean(Difference difference, double mean) {
        return difference.compared() == Compared.SQUAD_END
                ? TimeOfDay.write(Math.round(mean * MS_PER_MINUTE))
                : Figures.fixed(mean, 1);
    }

    /** Decimals that show a difference that is not nothing, at least one and at most four. */
    static int decimals(double difference) {
        double size = Math.abs(difference);
        return size == 0 || size >= 0.1 ? 1 : Math.min(4, (int) Math.ceil(-Math.log10(size)) + 1);
    }

    static String unit(Difference difference) {
        return switch (difference.compared()) {
            case MEAN_SCORE, SQUAD_SCORE, SQUAD_GAP, SPREAD -> "pins";
            case SQUAD_END -> "min";
            case OIL_LAID, OIL_LEFT, CARRYDOWN -> "mL";
            case HEAD_OIL -> "units";
        };
    }
}
