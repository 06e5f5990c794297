package lanetide.oilflow.film;

/**
 * The cosines of which a row of N columns is the sum, {@code c_q cos(q pi (i + 1/2) / N)} for q from 1 to N - 1. Those
 * of even q are alike from both gutters, those of odd q unlike.
 */
final class RowWaves {
    private final int columns;
    private final double[] sine;
    private final Half alike;
    private final Half unlike;

    RowWaves(int columns) {
        this.columns = columns;
        this.sine = quarterAlikeSines(columns);
        this.alike = new Half(2);
        this.unlike = new Half(1);
    }

    /** Sines of whole multiples of pi/2N round the circle, 4N of them. */
    double[] sines() {
        return sine;
    }

    /**
     * Takes a row apart.
     *
     * @param filmUm film by column (um)
     * @param heights receives in place q the height of wave q, divided by twice the sine of half its phase from column
     *     to column
     */
    void takeApart(double[] filmUm, double[] heights) {
        for (int i = 0; i < columns / 2; i++) {
            double other = filmUm[columns - 1 - i];
            alike.part[i] = filmUm[i] + other;
            unlike.part[i] = filmUm[i] - other;
        }
        alike.sum(columns % 2 == 1 ? filmUm[columns / 2] : 0);
        unlike.sum(0);
        for (int q = 1; q < columns; q++) {
            heights[q] = (q % 2 == 0 ? alike : unlike).sums[(q - 1) / 2] / (columns * sine[q]);
        }
    }

    private double cosine(int halfSteps) {
        return sine[(halfSteps + columns) % sine.length];
    }

    /** Sines of whole multiples of pi/2N round the circle; each quarter has the digits of the first. */
    private static double[] quarterAlikeSines(int columns) {
        double[] sines = new double[4 * columns];
        for (int m = 0; m <= columns; m++) {
            double value = StrictMath.sin(StrictMath.PI * m / (2 * columns));
            sines[m] = value;
            sines[(2 * columns - m)] = value;
            sines[(2 * columns + m)] = -value;
            sines[(4 * columns - m) % sines.length] = -value;
        }
        return sines;
    }

    /**
     * Every other wave, from some q on. Each is summed column by column from the gutter; all of them go on together,
     * which keeps a processor busy where a single sum would wait for itself.
     */
    private final class Half {
        /** Columns added in one go, so that the sums are fetched and stored less often. */
        private static final int AT_A_TIME = 4;

        private final int firstWave;
        /** What the columns of the lower half, filled up to whole goes, give to the sums. */
        private final double[] part;
        /** By column, then by wave. */
        private final double[][] cosines;

        private final double[] sums;

        Half(int firstWave) {
            int goes = (columns / 2 + AT_A_TIME - 1) / AT_A_TIME;
            this.firstWave = firstWave;
            this.part = new double[goes * AT_A_TIME];
            this.sums = new double[(columns - firstWave + 1) / 2];
            this.cosines = new double[part.length][sums.length];
            for (int i = 0; i < columns / 2; i++) {
                for (int k = 0; k < sums.length; k++) {
                    cosines[i][k] = cosine((firstWave + 2 * k) * (2 * i + 1));
                }
            }
        }

        /** Sums the parts, after that of a column in the middle. */
        void sum(double middle) {
            for (int k = 0; k < sums.length; k++) {
                sums[k] = middle * cosine((firstWave + 2 * k) * columns);
            }
            for (int i = 0; i < part.length; i += AT_A_TIME) {
                add(i);
            }
        }

        private void add(int i) {
            double part0 = part[i];
            double part1 = part[i + 1];
            double part2 = part[i + 2];
            double part3 = part[i + 3];
            double[] cosines0 = cosines[i];
            double[] cosines1 = cosines[i + 1];
            double[] cosines2 = cosines[i + 2];
            double[] cosines3 = cosines[i + 3];
            for (int k = 0; k < sums.length; k++) {
                double sum = sums[k] + part0 * cosines0[k];
                sum += part1 * cosines1[k];
                sum += part2 * cosines2[k];
                sums[k] = sum + part3 * cosines3[k];
            }
        }
    }
}
