package lanetide.squads.study;

/**
 * Which playings of a study one of several runs plays: every so-manieth, so that all runs take equally long.
 *
 * @param number which of the runs, from 1
 * @param of how many runs there are, at least 1
 */
public record Share(int number, int of) {
    /** All of them. */
    public static final Share ALL = new Share(1, 1);

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if not {@code 1 <= number <= of}
     */
    public Share {
        if (number < 1 || number > of) {
            throw new IllegalArgumentException("a share is " + number + " of " + of + ", but must be from 1 of it on");
        }
    }

    boolean holds(int playing) {
        return playing % of == number - 1;
    }
}
