package lanetide.squads.rotation.design;

/**
 * Whether so many groups can bowl once on each of as many pairs so that each follows each other exactly once, that is
 * whether a row-complete Latin square of that order exists.
 */
public enum RowCompleteExistence {
    /** It exists, and this program has it: every even order (Williams 1949). */
    AVAILABLE,
    /** There is none: orders 3, 5 and 7, by trying everything. */
    NONE,
    /**
     * There is one, but this program has no rule for it: odd composite orders from 9 (J. Higham, "Row-complete Latin
     * squares of every composite order exist", Journal of Combinatorial Designs 6 (1998), 63-77; from memory).
     */
    KNOWN_ELSEWHERE,
    /** No such square is known to this program: odd primes from 11. */
    UNKNOWN;

    /**
     * Looks an order up.
     *
     * @param groups number of groups and of pairs, at least 1
     * @return what is known
     * @throws IllegalArgumentException if {@code groups < 1}
     */
    public static RowCompleteExistence of(int groups) {
        if (groups < 1) {
            throw new IllegalArgumentException("groups is " + groups + ", but must be at least 1");
        }
        if (groups == 1 || groups % 2 == 0) {
            return AVAILABLE;
        }
        if (groups <= 7) {
            return NONE;
        }
        return isPrime(groups) ? UNKNOWN : KNOWN_ELSEWHERE;
    }

    private static boolean isPrime(int odd) {
        for (int divisor = 3; divisor * divisor <= odd; divisor += 2) {
            if (odd % divisor == 0) {
                return false;
            }
        }
        return true;
    }
}
