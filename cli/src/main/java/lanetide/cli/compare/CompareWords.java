package lanetide.cli.compare;

import lanetide.squads.fairness.Difference;

/** What two events are compared by, in words. */
final class CompareWords {
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
            case HEAD_OIL -> "oil left where heads are most worn";
            case CARRYDOWN -> "oil past the pattern's end";
        };
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
