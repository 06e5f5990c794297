package lanetide.oilflow.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LaneGeometryTest {
    /** USBC, Equipment Specifications and Certifications Manual, as quoted: 60 ft (18.288 m), 41.5 in. */
    @Test
    void theLaneHasTheMeasuresOfTheRules() {
        assertThat(LaneGeometry.HEAD_PIN_M).isCloseTo(18.288, within(1e-12));
        assertThat(LaneGeometry.WIDTH_M).isCloseTo(1.0541, within(1e-12));
        assertThat(LaneGeometry.BOARD_M).isCloseTo(0.0270282, within(1e-6));
        assertThat(LaneGeometry.CENTRE_BOARD).isEqualTo(20);
    }

    @Test
    void boardsAndMetresConvertBothWays() {
        for (double board = 0.5; board <= 39.5; board += 0.25) {
            assertThat(LaneGeometry.metresToBoard(LaneGeometry.boardToMetres(board)))
                    .isCloseTo(board, within(1e-12));
        }
        assertThat(LaneGeometry.boardToMetres(0.5)).isZero();
        assertThat(LaneGeometry.boardToMetres(39.5)).isCloseTo(LaneGeometry.WIDTH_M, within(1e-12));
    }

    /**
     * Hooper, Physics Today 78(10), 2025: the head pin is best hit about 6.5 cm off its centre, which is board 17.60.
     */
    @Test
    void sixAndAHalfCentimetresOffTheHeadPinIsBoard17Point60() {
        double metres = LaneGeometry.boardToMetres(LaneGeometry.CENTRE_BOARD) - 0.065;
        assertThat(LaneGeometry.metresToBoard(metres)).isCloseTo(17.60, within(0.01));
    }

    @ParameterizedTest(name = "{0} columns a board, {1} rows a foot")
    @CsvSource({"1, 1", "8, 1", "8, 2", "64, 8"})
    void theGridCoversTheLane(int columnsPerBoard, int rowsPerFoot) {
        LaneGrid grid = new LaneGrid(columnsPerBoard, rowsPerFoot);
        assertThat(grid.columns() * grid.columnWidthM()).isCloseTo(LaneGeometry.WIDTH_M, within(1e-12));
        assertThat(grid.rows() * grid.rowLengthM()).isCloseTo(LaneGeometry.HEAD_PIN_M, within(1e-12));
        assertThat(grid.cells() * grid.mlPerUm())
                .isCloseTo(LaneGeometry.WIDTH_M * LaneGeometry.HEAD_PIN_M, within(1e-9));
        double ends = grid.boardOfColumn(0) + grid.boardOfColumn(grid.columns() - 1);
        assertThat(ends).isCloseTo(40, within(1e-12));
    }

    @ParameterizedTest(name = "{0} columns a board, {1} rows a foot")
    @CsvSource({"0, 1", "65, 1", "8, 0", "8, 9"})
    void aGridOutsideTheRangesIsRefused(int columnsPerBoard, int rowsPerFoot) {
        assertThatThrownBy(() -> new LaneGrid(columnsPerBoard, rowsPerFoot))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("columns must be 1 to 64, rows 1 to 8");
    }
}
