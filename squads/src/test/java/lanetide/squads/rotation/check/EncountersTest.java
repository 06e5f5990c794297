package lanetide.squads.rotation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EncountersTest {

    /** Left-lane players k left, right-lane players k right: they meet P / gcd(2k, P) groups. */
    @ParameterizedTest
    @CsvSource({"10, 1, 5, 2", "11, 1, 11, 1", "12, 1, 6, 2", "12, 2, 3, 4", "24, 1, 12, 2"})
    void anEvenNumberOfPairsHalvesWhomOneMeets(int pairs, int step, int opponents, int times) {
        Encounters met = Encounters.of(
                new Ring(-step, 1).plan(pairs, pairs, pairs), new Ring(step, 1).plan(pairs, pairs, pairs));

        assertThat(met.opponents().getMin()).isEqualTo(opponents);
        assertThat(met.opponents().getMax()).isEqualTo(opponents);
        for (int left = 0; left < pairs; left++) {
            for (int right = 0; right < pairs; right++) {
                assertThat(met.times(left, right)).isIn(0, times);
            }
        }
    }

    @Test
    void rotationsOfDifferentSizeAreRefused() {
        assertThatThrownBy(() -> Encounters.of(new Stay().plan(3, 3, 2), new Stay().plan(3, 3, 3)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
