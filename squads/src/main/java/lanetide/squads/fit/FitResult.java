package lanetide.squads.fit;

import java.util.List;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;

/**
 * What measurements leave of what is not known.
 *
 * @param sets sets of values, equally likely, the first few spread like all
 * @param checks each reading beside what was foretold and what the fitted sets say; none if the plan leaves that out
 * @param learnt each unknown before and after
 * @param fresh what lies on freshly oiled lanes, of what the sheet says
 * @param suspicions what may have happened to readings that do not belong, the likeliest of each day first
 * @param otherLawBefore share of the sets with the other law of friction before
 * @param otherLawAfter and after
 */
public record FitResult(
        List<ValueSet> sets,
        List<Check> checks,
        List<Learnt> learnt,
        List<FreshLane> fresh,
        List<Suspicion> suspicions,
        double otherLawBefore,
        double otherLawAfter) {
    /** Copies the lists. */
    public FitResult {
        sets = List.copyOf(sets);
        checks = List.copyOf(checks);
        learnt = List.copyOf(learnt);
        fresh = List.copyOf(fresh);
        suspicions = List.copyOf(suspicions);
    }

    /**
     * What is said of a reading.
     *
     * @param mean in the middle
     * @param deviation standard deviation of what a reading may be: what is not known, the day's luck, its own error
     */
    public record Said(double mean, double deviation) {}

    /**
     * A reading beside what is said of it.
     *
     * @param reading the reading
     * @param before by the sets before the fit
     * @param after by the fitted sets
     */
    public record Check(Reading reading, Said before, Said after) {
        /**
         * How far the reading lies from what was foretold.
         *
         * @return in deviations; above 0 if it is more
         */
        public double missBefore() {
            return (reading.observed() - before.mean()) / before.deviation();
        }

        /**
         * How far it lies from what the fitted sets say.
         *
         * @return in deviations; above 0 if it is more
         */
        public double missAfter() {
            return (reading.observed() - after.mean()) / after.deviation();
        }
    }

    /**
     * What was learnt of an unknown.
     *
     * @param unknown the unknown
     * @param before its 5 %, 50 % and 95 % points over the sets before
     * @param after and after
     * @param narrowed by what share its spread has shrunk, on the scale on which its range is even; below 0 if it grew
     */
    public record Learnt(Unknown unknown, Points before, Points after, double narrowed) {}

    /**
     * Points of a distribution.
     *
     * @param low the 5 % point
     * @param middle the median
     * @param high the 95 % point
     */
    public record Points(double low, double middle, double high) {}
}
