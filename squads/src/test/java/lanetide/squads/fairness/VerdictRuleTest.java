package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.stats.MeanEstimate;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.study.PossibleEvents;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class VerdictRuleTest {
    private static final VerdictRule RULE = new VerdictRule(2);
    private static final Event EVENT = SmallEvents.twoSquads(SmallEvents.mixed(4, 3), 3, Conditioning.NONE);
    private static final int SETS = 5;
    private static final int PLAYINGS = 60;

    /** So many degrees of freedom that Student's distribution is the normal one. */
    private static double beyond(double value) {
        return RULE.beyond(new MeanEstimate(value, 1, 1e9));
    }

    @Test
    void theChanceOfAnAdvantageWithinTheMarginIsThatOfBothItsEnds() {
        NormalDistribution normal = new NormalDistribution();
        for (double value : new double[] {0.3, 1, 2, 2.5, 6}) {
            double tails = normal.cumulativeProbability(2 - value) + normal.cumulativeProbability(-2 - value);
            assertThat(beyond(value)).as("%s", value).isCloseTo(tails, within(1e-6));
            assertThat(beyond(-value)).isEqualTo(beyond(value));
        }
        assertThat(beyond(0)).isEqualTo(1);
        assertThat(beyond(6)).isLessThan(1e-4);
    }

    /** Of an event whose squad B is so much worse off under each set. */
    private static EffectEstimates estimates(IntToDoubleFunction pinsUnderSet) {
        FairnessPlan plan = new FairnessPlan(7, PLAYINGS, 2, true);
        SeatingRounds rounds = new SeatingRounds(new PossibleEvents(EVENT, SETS), plan);
        Seats seats = rounds.seats();
        int[] squads = seats.classes(Seat::squad);
        List<double[]> scores = IntStream.range(0, rounds.playings())
                .mapToObj(rounds::playing)
                .map(one -> {
                    double[] worth = IntStream.range(0, seats.count())
                            .mapToDouble(i -> squads[i] == 1 ? -2 * pinsUnderSet.applyAsDouble(one.set()) : 0)
                            .toArray();
                    return new MadeUpScores(worth, new double[seats.count()], 200, 0.01)
                            .play(rounds.bowlerAtSeat(one), !rounds.isStill(one), rounds.luck(one));
                })
                .toList();
        return FairnessStudy.estimates(EVENT, rounds, scores);
    }

    /** Under some sets one squad is better off, under others the other: no luck is left that playing could narrow. */
    @Test
    void whatHangsOnTheSetsStaysUndecidedHoweverOftenItIsPlayed() {
        assertThat(RULE.isBeyondPlaying(estimates(set -> set % 2 == 0 ? 3 : -3)))
                .isTrue();
    }

    @Test
    void whatIsTheSameUnderAllSetsIsDecidedByPlayingOn() {
        assertThat(RULE.isBeyondPlaying(estimates(set -> 5))).isFalse();
        assertThat(RULE.isBeyondPlaying(estimates(set -> 0.5))).isFalse();
    }
}
