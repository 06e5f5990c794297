package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurningTest {

    @Test
    void aGroupGoesUpInTwosAndComesBackOverThePairsLeftOut() {
        Rotation rotation = new Turning(2).plan(6, 6, 7);

        assertThat(Tables.rows(rotation).get(0)).startsWith("1");
        assertThat(java.util.stream.IntStream.range(0, 7).map(game -> rotation.pairOf(game, 0)))
                .containsExactly(0, 2, 4, 5, 3, 1, 0);
    }

    @ParameterizedTest
    @CsvSource({"2, 5", "2, 12", "2, 3", "4, 12", "4, 9", "6, 24", "6, 7"})
    void everybodySeesEveryPairOnceAndNobodyWalksFartherThanAMove(int step, int pairs) {
        Rotation rotation = new Turning(step).plan(pairs, pairs, pairs);
        RotationReport report = RotationReport.of(rotation);

        assertThat(report.isPermutation()).isTrue();
        assertThat(report.repeatedVisits()).isEmpty();
        assertThat(rotation.graph().edgeSet().stream()
                        .mapToInt(Move::distancePairs)
                        .max())
                .hasValue(Math.min(step, pairs - 1));
        assertThat(RotationReport.of(new Turning(step).plan(pairs, pairs, pairs + 1))
                        .repeatedVisits())
                .hasSize(pairs);
        assertThat(report.carryOverIndex())
                .as("a closed round is a ring in another order")
                .isEqualTo(CarryOver.of(rotation).maximum());
    }

    @Test
    void anOddStepAndOneTooLongAreRefused() {
        assertThatThrownBy(() -> new Turning(3))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("The step (3) must be even");
        assertThatThrownBy(() -> new Turning(0)).isInstanceOf(ImpossibleRotationException.class);
        assertThatThrownBy(() -> new Turning(4).plan(4, 4, 2))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("below the number of pairs (4)");
    }
}
