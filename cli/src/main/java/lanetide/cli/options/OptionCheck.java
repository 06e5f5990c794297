package lanetide.cli.options;

import lanetide.cli.output.CommandFailure;

/** What is said of an option whose value cannot be used. */
public final class OptionCheck {
    /** How often an event may be asked to be played. */
    public static final int MAX_REPLICATIONS = 100_000;

    private OptionCheck() {}

    /**
     * Looks whether a whole number is within its limits.
     *
     * @throws CommandFailure if {@code value < low} or {@code value > high}
     */
    public static void requireRange(String option, long value, long low, long high) {
        if (value < low || value > high) {
            throw CommandFailure.wrongUse(
                    option + " is " + value + "; it must be a whole number from " + low + " to " + high + ".");
        }
    }

    /**
     * Looks whether an event can be played so often.
     *
     * @throws CommandFailure if {@code value < low} or {@code value > MAX_REPLICATIONS}
     */
    public static void requireReplications(int value, int low) {
        requireRange("--replications", value, low, MAX_REPLICATIONS);
    }

    /**
     * Looks whether a number is above nothing and within its limit.
     *
     * @param limit the limit as people write it, and what to try
     * @throws CommandFailure unless {@code 0 < value <= most}
     */
    public static void requirePositive(String option, double value, double most, String limit) {
        if (!(value > 0 && value <= most)) {
            throw CommandFailure.wrongUse(option + " is " + value + "; it must be above 0 and at most " + limit);
        }
    }

    /**
     * Refuses an option that means something only beside another one, which is missing.
     *
     * @param value its value, null if it is not given either
     * @param advice what to do
     * @throws CommandFailure if it is given
     */
    public static void refuseWithout(String other, String option, Object value, String advice) {
        if (value != null) {
            throw CommandFailure.wrongUse(option + " is " + value + ", but goes with " + other + ". " + advice);
        }
    }
}
