package lanetide.squads.study;

import java.util.Optional;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;

/** What one number of each playing comes to over playings that went through sets of values in turn. */
final class OverPlayings {
    private static final double LEVEL = 0.95;

    private OverPlayings() {}

    /** The mean. */
    static double mean(double[] values, int sets) {
        return values.length < 2 ? values[0] : NestedMean.of(values, sets).mean();
    }

    /** Its interval, with luck and what is not known; empty for one playing. */
    static Optional<ConfidenceInterval> interval(double[] values, int sets) {
        return values.length < 2
                ? Optional.empty()
                : Optional.of(NestedMean.of(values, sets).truth().interval(LEVEL));
    }
}
