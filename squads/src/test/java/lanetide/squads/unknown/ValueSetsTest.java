package lanetide.squads.unknown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.play.Events;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ValueSetsTest {
    @Test
    void everySetHasAValueWithinTheRangeForEveryUnknown() {
        assertThat(ValueSets.count()).isEqualTo(DrawnSets.COUNT);
        for (int number = 1; number <= ValueSets.count(); number++) {
            ValueSet set = ValueSets.shipped(number);
            assertThat(set.number()).isEqualTo(number);
            assertThat(set.values()).hasSize(PlaySearch.ALL.size());
            for (Unknown unknown : PlaySearch.ALL) {
                assertThat(unknown.shareOf(set.of(unknown)))
                        .as("%s of %s", unknown.id(), number)
                        .isBetween(-1e-4, 1.0001);
            }
        }
    }

    /** The facts of sets found on another day are still what the program says; else they must be found again. */
    @ParameterizedTest
    @ValueSource(ints = {1, 77, 200})
    void noSetIsRuledOutByTheFactsAsTheProgramNowHasThem(int number) {
        double[] said = OilFacts.of(ValueSets.shipped(number));
        assertThat(Fact.secondLargest(OilFacts.FACTS, said)).isLessThanOrEqualTo(ValueSearch.RULED_OUT);
    }

    /** What three sets said when they were found; a tenth of a tolerance is all that may have changed since. */
    @Test
    void theFactsOfThreeSetsAreWhatTheyWereWhenTheSetsWereFound() {
        List<double[]> then = SaidThen.OF_SETS;
        for (int i = 0; i < then.size(); i++) {
            double[] now = OilFacts.of(ValueSets.shipped(SaidThen.NUMBERS[i]));
            for (int f = 0; f < now.length; f++) {
                Fact fact = OilFacts.FACTS.get(f);
                assertThat(now[f])
                        .as("%s under set %s", fact.id(), SaidThen.NUMBERS[i])
                        .isCloseTo(then.get(i)[f], within(0.1 * fact.tolerance()));
            }
        }
    }

    /** Means of the first few over all unknowns lie nearer to those of all than means of as many at random would. */
    @ParameterizedTest
    @ValueSource(ints = {4, 10, 25, 60})
    void theFirstFewAreSpreadLikeAll(int few) {
        double offOfMeans = 0;
        double offOfSpreads = 0;
        for (Unknown unknown : PlaySearch.ALL) {
            double[] all = shares(unknown, ValueSets.count());
            double[] first = shares(unknown, few);
            offOfMeans += square(mean(first) - mean(all)) / (variance(all) / few);
            offOfSpreads += variance(first) / variance(all);
        }
        assertThat(offOfMeans / PlaySearch.ALL.size()).isLessThan(0.6);
        assertThat(offOfSpreads / PlaySearch.ALL.size()).isBetween(0.75, 1.25);
    }

    private static double[] shares(Unknown unknown, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToDouble(number -> unknown.shareOf(ValueSets.shipped(number).of(unknown)))
                .toArray();
    }

    private static double mean(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .average()
                .orElseThrow();
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return IntStream.range(0, values.length)
                        .mapToDouble(i -> square(values[i] - mean))
                        .sum()
                / (values.length - 1);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void aStudyMeetsEverySetTwiceAndTakesTheUsualValuesWhereItIsTooShort() {
        assertThat(ValueSets.inStudy(1)).isEqualTo(1);
        assertThat(ValueSets.inStudy(3)).isEqualTo(1);
        assertThat(ValueSets.inStudy(40)).isEqualTo(20);
        assertThat(ValueSets.inStudy(1000)).isEqualTo(ValueSets.MOST_IN_A_STUDY);
        assertThat(ValueSets.ofRound(7, 1)).isZero();
        assertThat(IntStream.range(0, 5).map(round -> ValueSets.ofRound(round, 2)))
                .containsExactly(1, 2, 1, 2, 1);
    }

    @Test
    void theUsualSetLeavesAnEventAsItIs() {
        assertThat(ValueSets.shipped(0)).isSameAs(ValueSet.USUAL);
        var event = Events.onePair(3, Events.bowler("a"), Events.bowler("b"));
        assertThat(PlayModel.under(event, ValueSet.USUAL)).isSameAs(event);
    }

    @Test
    void anUnknownSetIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValueSets.shipped(201))
                .withMessage("there is no set of values 201; there are 200");
        assertThatIllegalArgumentException().isThrownBy(() -> ValueSets.shipped(-1));
    }
}
