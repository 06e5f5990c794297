package lanetide.squads.model;

import java.util.OptionalLong;

/**
 * When lanes are oiled for a squad.
 *
 * @param fromMs when the machines begin (ms from midnight before the first day), at least 0; empty if they end as the
 *     oil has to lie
 * @param restMs how long the oil lies before practice at least (ms), at least 0
 */
public record OilTime(OptionalLong fromMs, long restMs) {
    /** Done just as practice begins. */
    public static final OilTime LAST_MINUTE = new OilTime(OptionalLong.empty(), 0);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a time is below 0
     */
    public OilTime {
        if (fromMs.orElse(0) < 0 || restMs < 0) {
            throw new IllegalArgumentException(
                    "time of oiling: from " + fromMs + " and a rest of " + restMs + " ms must be at least 0");
        }
    }

    /**
     * When machines that take so long are to begin.
     *
     * @param startMs when practice is planned to begin (ms)
     * @param workMs how long they take (ms)
     * @return the time (ms); below 0 the evening before the first day
     */
    public long beginMs(long startMs, long workMs) {
        return fromMs.orElse(startMs - restMs - workMs);
    }
}
