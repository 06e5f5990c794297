package lanetide.des.stats;

/** Argument checks that return what they checked, written so that NaN fails. */
final class Checks {

    private Checks() {}

    static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + ", but must be a finite number");
        }
        return value;
    }

    static double level(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException(
                    "level is " + level + ", but must lie between 0 and 1, such as 0.95 for 95 %");
        }
        return level;
    }

    static double notNegative(double value, String name) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " is " + value + ", but must be finite and at least 0");
        }
        return value;
    }

    static double probability(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " is " + value + ", but must be at least 0 and at most 1");
        }
        return value;
    }

    /** The error that one of two one-sided tests may make. */
    static double alpha(double alpha) {
        if (!(alpha > 0 && alpha < 0.5)) {
            throw new IllegalArgumentException(
                    "alpha is " + alpha + ", but must lie between 0 and 0.5, such as 0.05 for 5 %");
        }
        return alpha;
    }
}
