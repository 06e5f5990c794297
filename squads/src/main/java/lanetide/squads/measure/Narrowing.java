package lanetide.squads.measure;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/**
 * By how much a reading would narrow an answer, from both under many sets of values: least squares of answer on
 * reading, judged leaving one set out (the predicted residual sum of squares: D. M. Allen, Technometrics 16, 1974), so
 * that a reading which tells nothing promises nothing.
 *
 * @param answers the answer under each set (luck and all)
 * @param luckVariance variance of an answer by luck
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record Narrowing(double[] answers, double luckVariance) {
    /**
     * Variance of the answer over what may be true.
     *
     * @return the variance without luck; never below 0
     */
    public double notKnown() {
        return Math.max(0, variance(answers) - luckVariance);
    }

    /**
     * Variance of the answer that a reading explains.
     *
     * @param readings the reading under each set
     * @param errorVariance variance of its own error, at least 0
     * @return the variance; never below 0
     */
    public double explained(double[] readings, double errorVariance) {
        int n = answers.length;
        double meanAnswer = mean(answers);
        double meanReading = mean(readings);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < n; i++) {
            squares += square(readings[i] - meanReading);
            products += (readings[i] - meanReading) * (answers[i] - meanAnswer);
        }
        double without = 0;
        double with = 0;
        double more = (double) n / (n - 1);
        for (int i = 0; i < n; i++) {
            double answerOff = more * (answers[i] - meanAnswer);
            double readingOff = more * (readings[i] - meanReading);
            double slope = (products - (readings[i] - meanReading) * answerOff)
                    / (squares - (readings[i] - meanReading) * readingOff + (n - 2) * errorVariance);
            without += square(answerOff);
            with += square(answerOff - slope * readingOff) + slope * slope * errorVariance;
        }
        return Double.isFinite(with) ? Math.max(0, (without - with) / n) : 0;
    }

    /**
     * By what share a reading would narrow the deviation of what is not known.
     *
     * @param readings as above
     * @param errorVariance as above
     * @return the share, 0 to 1
     */
    public double by(double[] readings, double errorVariance) {
        double before = notKnown();
        return before == 0 ? 0 : 1 - Math.sqrt(Math.max(0, before - explained(readings, errorVariance)) / before);
    }

    /** Correlation of answer and reading, luck and all; 0 if either is the same everywhere. */
    double correlation(double[] readings) {
        double correlation = new PearsonsCorrelation().correlation(answers, readings);
        return Double.isNaN(correlation) ? 0 : correlation;
    }

    /** Probability of a correlation so large, either way, were there none. */
    double chance(double[] readings) {
        double free = answers.length - 2.0;
        double r = correlation(readings);
        double t = r * Math.sqrt(free / Math.max(Double.MIN_NORMAL, 1 - r * r));
        return 2 * new TDistribution(null, free).cumulativeProbability(-Math.abs(t));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double value : values) {
            sum += square(value - mean);
        }
        return sum / (values.length - 1);
    }

    private static double square(double value) {
        return value * value;
    }
}
