package lanetide.des.stats;

import java.util.Arrays;

/**
 * How unequally a good is shared. All indices want amounts that are not negative and not all 0, and do not change if all are
 * multiplied by the same number. Apply them to advantages, not to scores of about 200: a common level hides what differs.
 *
 * <p>Sources: R. Jain, D. Chiu and W. Hawe, "A quantitative measure of fairness and discrimination for resource allocation
 * in shared computer systems", DEC Research Report TR-301, 1984; F. A. Cowell, "Measuring Inequality", 3rd ed. 2011; for
 * the asymmetry C. Damgaard and J. Weiner, "Describing inequality in plant size or fecundity", Ecology 81, 2000.
 */
public final class Inequality {

    private Inequality() {}

    /** Jain's index, from 1/n (one has all) to 1 (all have the same): as if that share of the users had equal parts. */
    public static double jain(double[] amounts) {
        double sum = sum(amounts);
        double squares = 0;
        for (double amount : amounts) {
            squares += amount * amount;
        }
        return sum * sum / (amounts.length * squares);
    }

    /** Gini's coefficient, from 0 (all have the same) to (n - 1)/n (one has all). */
    public static double gini(double[] amounts) {
        double sum = sum(amounts);
        double[] sorted = amounts.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        double weighted = 0;
        for (int i = 0; i < n; i++) {
            weighted += (i + 1) * sorted[i];
        }
        return 2 * weighted / (n * sum) - (n + 1.0) / n;
    }

    /**
     * Gini's coefficient with the correction for small samples, from 0 to 1.
     *
     * @throws IllegalArgumentException also if there are fewer than two amounts
     */
    public static double giniCorrected(double[] amounts) {
        if (amounts.length < 2) {
            throw new IllegalArgumentException("there are " + amounts.length + " amounts, but must be at least 2");
        }
        return gini(amounts) * amounts.length / (amounts.length - 1);
    }

    /** Theil's T, from 0 (all have the same) to ln n (one has all). */
    public static double theilT(double[] amounts) {
        double mean = sum(amounts) / amounts.length;
        double total = 0;
        for (double amount : amounts) {
            double share = amount / mean;
            total += share == 0 ? 0 : share * StrictMath.log(share);
        }
        return total / amounts.length;
    }

    /** Theil's L, the mean logarithmic deviation, from 0; infinite if somebody has nothing. */
    public static double theilL(double[] amounts) {
        double mean = sum(amounts) / amounts.length;
        double total = 0;
        for (double amount : amounts) {
            total -= StrictMath.log(amount / mean);
        }
        return total / amounts.length;
    }

    /**
     * Atkinson's index, from 0 (all have the same) to less than 1.
     *
     * @param aversion how much inequality is minded
     * @throws IllegalArgumentException also unless {@code 0 < aversion < 1}
     */
    public static double atkinson(double[] amounts, double aversion) {
        if (!(aversion > 0 && aversion < 1)) {
            throw new IllegalArgumentException("aversion is " + aversion + ", but must lie between 0 and 1");
        }
        double mean = sum(amounts) / amounts.length;
        double total = 0;
        for (double amount : amounts) {
            total += StrictMath.pow(amount / mean, 1 - aversion);
        }
        return 1 - StrictMath.pow(total / amounts.length, 1 / (1 - aversion));
    }

    /** Population standard deviation over mean; Jain's index is 1 / (1 + its square). */
    public static double coefficientOfVariation(double[] amounts) {
        double mean = sum(amounts) / amounts.length;
        double squares = 0;
        for (double amount : amounts) {
            squares += (amount - mean) * (amount - mean);
        }
        return Math.sqrt(squares / amounts.length) / mean;
    }

    /**
     * Where the Lorenz curve bends most: above 1 if few have very much, below 1 if many have very little.
     *
     * @throws IllegalArgumentException also if an amount equals the mean, where the place is not unique
     */
    public static double lorenzAsymmetry(double[] amounts) {
        double sum = sum(amounts);
        double mean = sum / amounts.length;
        double[] sorted = amounts.clone();
        Arrays.sort(sorted);
        int below = 0;
        double sumBelow = 0;
        while (sorted[below] < mean) {
            sumBelow += sorted[below++];
        }
        if (sorted[below] == mean) {
            throw new IllegalArgumentException("an amount equals the mean, " + mean + ", but none may");
        }
        double part = (mean - sorted[below - 1]) / (sorted[below] - sorted[below - 1]);
        return (below + part) / amounts.length + (sumBelow + part * sorted[below]) / sum;
    }

    private static double sum(double[] amounts) {
        double sum = 0;
        for (double amount : amounts) {
            sum += Checks.notNegative(amount, "amount");
        }
        if (sum == 0) {
            throw new IllegalArgumentException("the sum of the amounts is 0, but must be greater than 0");
        }
        return sum;
    }
}
