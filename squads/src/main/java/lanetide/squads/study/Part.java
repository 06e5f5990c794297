package lanetide.squads.study;

/**
 * Some playings of a study, one after another.
 *
 * @param from number of the first, at least 0
 * @param to number after the last, above {@code from}
 */
public record Part(int from, int to) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if not {@code 0 <= from < to}
     */
    public Part {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException(
                    "a part of a study needs a playing at least, but is from " + from + " to " + to);
        }
    }

    /**
     * The first playings of a study.
     *
     * @param size how many, at least 1
     * @return those numbered from 0
     */
    public static Part first(int size) {
        return new Part(0, size);
    }

    /**
     * Its size.
     *
     * @return the number of its playings
     */
    public int size() {
        return to - from;
    }
}
