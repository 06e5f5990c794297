package lanetide.squads.fit;

/**
 * An explanation under which the readings are likelier than as they stand.
 *
 * @param day place of the day among those that were fitted, from 0
 * @param what what may have happened
 * @param logRatio logarithm of the ratio of the readings' density under it to that as they stand, above log 20
 * @param verdict what can be said of it
 */
public record Suspicion(int day, Explanation what, double logRatio, Verdict verdict) {
    /** What can be said of an explanation. */
    public enum Verdict {
        /** The readings do not belong as they stand, and no other explanation comes near this one. */
        NAMED,
        /** They do not belong, and this is one of several explanations that cannot be told apart. */
        ONE_OF_SEVERAL,
        /** Clean readings look so now and then. */
        NOT_SHOWN
    }
}
