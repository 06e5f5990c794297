package lanetide.squads.fairness;

/**
 * By how much a reading would narrow an answer, from both under many sets of values: least squares of answer on
 * reading, judged leaving one set out (the predicted residual sum of squares: D. M. Allen, Technometrics 16, 1974), so
 * that a reading which tells nothing promises nothing.
 *
 * @param answers the answer under each set (luck and all)
 * @param luckVariance variance of an answer by luck
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Narrowing(double[] answers, double luckVariance) {
    /** Variance of the answer over what may be true; never below 0. */
    double notKnown() {
        return Math.max(0, variance(answers) - luckVariance);
    }

    /** Variance of the answer that a reading explains, given the variance of its own error; never below 0. */
    double explained(double[] readings, double errorVariance) {
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

    /** By what share a reading would narrow the deviation of what is not known, 0 to 1. */
    double by(double[] readings, double errorVariance) {
        double before = notKnown();
        return before == 0 ? 0 : 1 - Math.sqrt(Math.max(0, before - explained(readings, errorVariance)) / before);
    }

    /** Whether the answer is larger where the reading is. */
    boolean rises(double[] readings) {
        double meanAnswer = mean(answers);
        double meanReading = mean(readings);
        double products = 0;
        for (int i = 0; i < answers.length; i++) {
            products += (readings[i] - meanReading) * (answers[i] - meanAnswer);
        }
        return products > 0;
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
