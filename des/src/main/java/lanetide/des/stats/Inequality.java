package lanetide.des.stats;

import java.util.Arrays;

/**
 * How unequally a good is shared. Both indices want amounts that are not negative and not all 0, and do not change if
 * all are multiplied by the same number. Apply them to advantages, not to scores of about 200: a common level hides
 * what differs.
 *
 * <p>Sources: R. Jain, D. Chiu and W. Hawe, "A quantitative measure of fairness and discrimination for resource
 * allocation in shared computer systems", DEC Research Report TR-301, 1984; F. A. Cowell, "Measuring Inequality", 3rd
 * ed. 2011.
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
