package lanetide.squads.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import lanetide.squads.score.ScoringSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BowlingTest {
    @ParameterizedTest(name = "after {0} balls {1}")
    @CsvSource({"0, 1", "36, 0.98", "72, 0.96", "500, 0.96"})
    void speedIsLostEvenlyOverSixBoutsOfTwelveBalls(int balls, double factor) {
        Bowling tiring = new Bowling(Knowledge.SEEN_AND_TOLD, 0.04, Scoring.USUAL);

        assertThat(tiring.speedFactor(balls)).isCloseTo(factor, within(1e-12));
        assertThat(Bowling.USUAL.speedFactor(balls)).isEqualTo(1);
    }

    @Test
    void valuesOutsideTheirRangesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bowling(Knowledge.SEEN_AND_TOLD, 0.11, Scoring.USUAL))
                .withMessageContaining("share of speed lost");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Scoring(ScoringSystem.TRADITIONAL, 0, 0))
                .withMessageContaining("pins that count as a strike");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Scoring(ScoringSystem.TRADITIONAL, 10, 0.21))
                .withMessageContaining("share of fouls");
    }
}
