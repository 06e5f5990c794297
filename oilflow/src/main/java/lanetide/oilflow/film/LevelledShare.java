package lanetide.oilflow.film;

/** The share of a wave that vanishes while a film rests, {@code 1 - exp(-t/tau)}, from a table. */
final class LevelledShare {
    /** Steps of the table in one time constant. */
    static final int STEPS_PER_TAU = 256;

    /** Steps from which a wave counts as gone: 20 time constants. */
    static final int MOST_STEPS = 20 * STEPS_PER_TAU;

    /** The share that is then gone. */
    static final double MOST = gone(MOST_STEPS);

    /** For each step its share, and how much more the next one has. */
    private static final double[] TABLE = table();

    private LevelledShare() {}

    /**
     * The share that vanishes in a time.
     *
     * @param steps the time, in steps of the table, at least 0
     */
    static double of(double steps) {
        // A plain comparison: Math.min guards against NaN, which costs more than all the rest here.
        double position = steps < MOST_STEPS ? steps : MOST_STEPS;
        int i = (int) position;
        return TABLE[2 * i] + (position - i) * TABLE[2 * i + 1];
    }

    private static double[] table() {
        double[] table = new double[2 * (MOST_STEPS + 1)];
        for (int i = 0; i <= MOST_STEPS; i++) {
            table[2 * i] = gone(i);
            table[2 * i + 1] = gone(i + 1) - gone(i);
        }
        return table;
    }

    private static double gone(int steps) {
        return -StrictMath.expm1(-(double) steps / STEPS_PER_TAU);
    }
}
