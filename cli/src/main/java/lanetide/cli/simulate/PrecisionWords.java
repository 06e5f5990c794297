package lanetide.cli.simulate;

import lanetide.cli.report.Figures;
import lanetide.squads.study.Precision;

/** How well scores are known, in words. */
public final class PrecisionWords {
    private static final int DECIMALS = 3;

    private PrecisionWords() {}

    /**
     * What to tell where the half-width asked for was not reached.
     *
     * @param precision what was reached
     * @return two sentences
     */
    public static String notReached(Precision precision) {
        return "The half-width of " + pins(precision.wantedPins()) + " asked for is not reached: it is "
                + pins(precision.reachedPins()) + ", and about " + precision.projected()
                + " playings would be needed. The answer holds what was played; ask for a wider one, or allow more with"
                + " --replications.";
    }

    /** What to tell where it was reached. */
    static String reached(Precision precision) {
        return "Played until every squad's interval was at most " + pins(precision.wantedPins())
                + " to either side; the widest is " + pins(precision.reachedPins()) + ".";
    }

    private static String pins(double value) {
        return Figures.plain(value, DECIMALS) + " pins";
    }
}
