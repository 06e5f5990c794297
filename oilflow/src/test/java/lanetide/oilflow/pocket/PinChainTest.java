package lanetide.oilflow.pocket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PinChainTest {
    /**
     * USBC: the 10 pin stands three half spacings of 12 in from the middle: board 3.1. A straight ball there takes it
     * alone.
     */
    @Test
    void aBallAtThePinItAimsAtTakesItWhateverTheLuck() {
        int ten = Rack.bit(10);
        double board = PinChain.bestTarget(ten).board();

        assertThat(board).isCloseTo(20 - 18 / (41.5 / 39), within(PinChain.REACH_BOARDS));
        for (double u = 0; u < 1; u += 0.1) {
            assertThat(PinChain.left(ten, board, 0, u)).isZero();
        }
    }

    /** ESPN study: the 7-10 was never made in 53 tries; a ball on the 10 leaves the 7 in all but the rarest luck. */
    @Test
    void ofTheSevenTenOnePinIsLeft() {
        int split = Rack.parse("7-10");
        double board = Rack.board(10);

        assertThat(PinChain.left(split, board, 0, 0.5)).isEqualTo(Rack.bit(7));
        assertThat(PinChain.left(split, board, 0, 0.99)).isEqualTo(Rack.bit(7));
        assertThat(PinChain.left(split, 20, 0, 0.5)).isEqualTo(split);
    }
}
