package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import lanetide.des.stats.ConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {
    @ParameterizedTest(name = "{0} pins, {1} if nobody moves, {2} if all know, each give or take 1")
    @CsvSource({
        "2, 3, 4, false",
        "2, -1.1, 4, true",
        "2, 3, -1.1, true",
        "2, -0.9, 4, false",
        "-2, 1.1, -4, true",
        "-2, 0.9, -4, false",
        "-2, -3, -4, false"
    })
    void somebodyChangesSidesWhereAWholeIntervalLiesOnTheOther(
            double pins, double ifNobodyMoves, double ifAllKnow, boolean turns) {
        Bounds bounds = new Bounds(4, List.of(squad("A", ifNobodyMoves)), List.of(squad("A", ifAllKnow)), List.of());

        assertThat(bounds.mayTurnRound(squad("A", pins))).isEqualTo(turns);
        assertThat(bounds.ifNobodyMoves(squad("A", pins)).advantagePins()).isEqualTo(ifNobodyMoves);
        assertThat(bounds.ifAllKnow(squad("A", pins)).advantagePins()).isEqualTo(ifAllKnow);
    }

    @Test
    void anAdvantageThatWasNotPlayedIsRefused() {
        Bounds bounds = new Bounds(4, List.of(squad("A", 1)), List.of(squad("A", 1)), List.of(squad("A", 2)));
        assertThat(bounds.asUsual(squad("A", 1)).orElseThrow().advantagePins()).isEqualTo(2);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> bounds.ifAllKnow(squad("B", 1)))
                .withMessage("no bounds for SQUAD B");
    }

    private static Effect squad(String id, double pins) {
        ConfidenceInterval ci90 = new ConfidenceInterval(pins - 1, pins + 1, 0.9);
        return new Effect(EffectKind.SQUAD, id, 4, pins, 0.5, ci90, ci90, 1, 1, Verdict.UNDECIDED);
    }
}
