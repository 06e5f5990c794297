package lanetide.oilflow.pocket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.lane.LaneGeometry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeflectionTest {
    private static final double POUND_KG = 0.45359237;
    private final Deflection usual = new Deflection(15 * POUND_KG);

    /**
     * USBC study: the best hit, board 17.5 at 6 degrees, touches pins 1, 3, 5 and 9 (bowling checklists, July 2014).
     */
    @Test
    void theBestHitTouchesOneThreeFiveAndNine() {
        usual.exitBoard(17.5, Math.toRadians(6));
        assertThat(Rack.format(usual.touched())).isEqualTo("1-3-5-9");
    }

    /** Ridenour (USBC): a light hit at board 16.5 at a high angle leaves at about board 14. */
    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {5, 6, 7})
    void aLightHitLeavesNearBoardFourteen(double deg) {
        assertThat(usual.exitBoard(16.5, Math.toRadians(deg))).isCloseTo(14, within(0.75));
    }

    /**
     * Collision of two smooth bodies (textbook), one blow: a ball that touches the 10 pin alone, its line half of their
     * reach from the pin's centre, is turned by atan(b sin a cos a/(1 - b cos^2 a)), with sin a = 1/2 and b = 1.5 m/(M
     * + m).
     */
    @Test
    void oneBlowTurnsABallAsTheTextbookSays() {
        double reachM = 0.1085 + Rack.PIN_RADIUS_M;
        double board = Rack.board(10) - reachM / 2 / LaneGeometry.BOARD_M;
        double b = 1.5 * 3.5 / (15 + 3.5);
        double cos = Math.sqrt(0.75);
        double turn = Math.atan(b * 0.5 * cos / (1 - b * cos * cos));
        double leftM = reachM * cos;

        // It touches the pin that far before the last row, and leaves the row's line turned toward its own gutter.
        assertThat(usual.exitBoard(board, 0))
                .isCloseTo(board - leftM * Math.tan(turn) / LaneGeometry.BOARD_M, within(1e-9));
        assertThat(Rack.format(usual.touched())).isEqualTo("10");
    }

    @Test
    void aBallThatTouchesNothingKeepsItsLine() {
        double lastRowM = Rack.depthM(10);
        double across = lastRowM * Math.tan(Math.toRadians(-1)) / LaneGeometry.BOARD_M;
        assertThat(usual.exitBoard(-4, Math.toRadians(-1))).isCloseTo(-4 + across, within(1e-9));
        assertThat(usual.touched()).isZero();
    }
}
