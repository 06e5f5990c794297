package lanetide.oilflow.pocket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.lane.LaneGeometry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source of the measures: USBC, Equipment Specifications and Certifications Manual: 12 in between pins, 36 in triangle.
 */
class RackTest {
    private static final double INCH_M = 0.0254;

    @ParameterizedTest(name = "{0} to {1}: {2} in")
    @CsvSource({
        "1, 2, 12",
        "1, 3, 12",
        "2, 3, 12",
        "4, 5, 12",
        "5, 6, 12",
        "3, 5, 12",
        "6, 10, 12",
        "7, 8, 12",
        "9, 10, 12",
        "1, 7, 36",
        "1, 10, 36",
        "7, 10, 36"
    })
    void pinsStandAFootApartInATriangleOfThreeFeet(int a, int b, double inches) {
        assertThat(Rack.distanceM(a, b) / INCH_M).isCloseTo(inches, within(1e-9));
    }

    @Test
    void theHeadPinStandsInTheMiddleAndTheTenTowardTheBowlersOwnGutter() {
        assertThat(Rack.board(1)).isEqualTo(LaneGeometry.CENTRE_BOARD);
        assertThat(Rack.board(10)).isLessThan(Rack.board(6)).isLessThan(5);
        assertThat(Rack.board(7)).isCloseTo(40 - Rack.board(10), within(1e-12));
        assertThat(Rack.depthM(10) / INCH_M).isCloseTo(36 * Math.sqrt(3) / 2, within(1e-9));
    }

    @Test
    void theMirrorImageOfTheMirrorImageIsTheSetItself() {
        for (int pins = 0; pins <= Rack.FULL; pins++) {
            assertThat(Rack.mirrored(Rack.mirrored(pins))).isEqualTo(pins);
            assertThat(Integer.bitCount(Rack.mirrored(pins))).isEqualTo(Integer.bitCount(pins));
        }
        assertThat(Rack.mirrored(Rack.parse("3-6-10"))).isEqualTo(Rack.parse("2-4-7"));
    }

    @Test
    void whatIsWrittenReadsBack() {
        for (int pins = 1; pins <= Rack.FULL; pins++) {
            assertThat(Rack.parse(Rack.format(pins))).isEqualTo(pins);
        }
        assertThat(Rack.format(0)).isEqualTo("none");
    }

    @Test
    void anEleventhPinIsRefused() {
        assertThatThrownBy(() -> Rack.parse("3-11")).hasMessageContaining("pin 11 in 3-11 must be 1 to 10");
    }
}
