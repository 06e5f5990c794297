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
}
