package lanetide.squads.unknown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.measure.Narrowing;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fifty sets in turn are taken for the truth, the measurement is taken there, and the others are weighed by it. */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PromisedNarrowingTest {
    private static final int TRUTHS = 50;
    private static final int PLAYINGS = 12;

    /** What every playing under every set says of each quantity. */
    private List<List<double[]>> played;

    @BeforeAll
    void plays() {
        // Luck of its own for every set: luck in common would make readings look better than they are.
        played = IntStream.rangeClosed(1, ValueSets.count())
                .mapToObj(number -> SmallEvent.play(
                        PlayModel.under(SmallEvent.EVENT, ValueSets.shipped(number)), number * PLAYINGS, PLAYINGS))
                .toList();
    }

    /** The head film by a tape with an error of a unit and a half; the mean of the field by one day's mean. */
    @ParameterizedTest
    @CsvSource({"2, 1.5", "3, 0"})
    void whatIsPromisedIsWhatIsFoundOnTheMeanWithinAFifth(int quantity, double error) {
        int sets = ValueSets.count();
        double[] answers = new double[sets];
        double[] readings = new double[sets];
        SummaryStatistics luckOfReading = new SummaryStatistics();
        SummaryStatistics luckOfAnswer = new SummaryStatistics();
        List<double[]> all = said(quantity);
        for (int s = 0; s < sets; s++) {
            answers[s] = all.get(s)[0];
            luckOfAnswer.addValue(all.get(s)[1]);
            readings[s] = all.get(s)[2];
            luckOfReading.addValue(all.get(s)[3]);
        }
        double promised = new Narrowing(answers, luckOfAnswer.getMean()).by(readings, error * error);
        double errorVariance = error * error + luckOfReading.getMean();
        RandomGenerator random = new Well19937c(20_291);
        SummaryStatistics kept = new SummaryStatistics();
        for (int truth = 0; truth < TRUTHS; truth++) {
            double taken = readings[truth] + error * random.nextGaussian();
            kept.addValue(Math.pow(deviation(answers, truth, taken, errorVariance), 2));
        }
        double before = deviation(answers, -1, 0, Double.POSITIVE_INFINITY);
        double found = 1 - Math.sqrt(kept.getMean()) / before;
        assertThat(promised).isGreaterThan(0.05);
        assertThat(found).as("promised %s", promised).isBetween(0.8 * promised, 1.2 * promised);
    }

    /** For each set: mean over playings and its variance by luck, what one other playing says, and its luck. */
    private List<double[]> said(int quantity) {
        List<double[]> all = new ArrayList<>();
        for (List<double[]> playings : played) {
            SummaryStatistics answer = new SummaryStatistics();
            SummaryStatistics reading = new SummaryStatistics();
            playings.subList(1, PLAYINGS).forEach(one -> answer.addValue(one[quantity]));
            playings.forEach(one -> reading.addValue(one[quantity]));
            all.add(new double[] {
                answer.getMean(), answer.getVariance() / answer.getN(), playings.get(0)[quantity], reading.getVariance()
            });
        }
        return all;
    }

    /**
     * Deviation of the answer over all sets but the truth, weighed by how near what they expect of the reading, here
     * the answer itself, is to the one taken.
     */
    private static double deviation(double[] answers, int truth, double taken, double errorVariance) {
        double[] weights = IntStream.range(0, answers.length)
                .mapToDouble(s -> s == truth ? 0 : Math.exp(-Math.pow(answers[s] - taken, 2) / 2 / errorVariance))
                .toArray();
        double sum = 0;
        double mean = 0;
        for (int s = 0; s < answers.length; s++) {
            sum += weights[s];
            mean += weights[s] * answers[s];
        }
        mean /= sum;
        double squares = 0;
        for (int s = 0; s < answers.length; s++) {
            squares += weights[s] * Math.pow(answers[s] - mean, 2);
        }
        return Math.sqrt(squares / sum);
    }
}
