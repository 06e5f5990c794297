package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapePatternTest {
    private static final double FOOT_M = LaneGeometry.FOOT_M;

    /** Worked by hand: straight lines both ways, the nearest reading beyond the outermost ones. */
    @ParameterizedTest(name = "{0} ft, board {1}: {2} units")
    @CsvSource({
        "8,  3,   8",
        "22, 20,  22",
        "15, 3,   7",
        "15, 6.5, 13",
        "29, 15,  12.5",
        "0,  20,  30",
        "38, 1,   2",
        "8,  30,  22",
        "15, 33.5, 13"
    })
    void betweenReadingsTheFilmRunsStraight(double feet, double board, double units) {
        TapeTable lane = Tapes.half().acrossTheLane();
        assertThat(lane.across(lane.rowAt(feet * FOOT_M), board)).isCloseTo(units, within(1e-12));
    }

    /** Closed form: 10 units everywhere over 40 ft of 41.5 in are 10 * 0.0167 mL/sq ft * 138.33 sq ft = 23.10 mL. */
    @Test
    void anEvenFilmHoldsItsThicknessTimesItsArea() {
        TapeTable even = Tapes.step(10, 10);
        double areaSquareFeet = 40 * 41.5 / 12;
        assertThat(even.volumeMl(40 * FOOT_M, 0)).isCloseTo(10 * 0.0167 * areaSquareFeet, within(1e-9));
        assertThat(even.volumeMl(40 * FOOT_M, -2)).isCloseTo(8 * 0.0167 * areaSquareFeet, within(1e-9));
        assertThat(even.volumeMl(40 * FOOT_M, -11)).isZero();
    }

    @Test
    void theFilmReadsAsTheTapesDidAndEndsAtTheLength() {
        TapePattern pattern = TapePattern.of("taped", 38 * FOOT_M, Tapes.half());
        OilFilm film = OilFilm.fresh(pattern, LaneGrid.DEFAULT);

        assertThat(film.volumeMl()).isCloseTo(pattern.volumeMl(), withinPercentage(1e-9));
        assertThat(film.onBoardUm(15, 15 * FOOT_M) / OilFilm.UNIT_UM).isCloseTo(22.5, within(0.1));
        assertThat(film.onBoardUm(5, 29 * FOOT_M) / OilFilm.UNIT_UM).isCloseTo(4 + 6.5 * 2 / 7, within(0.1));
        assertThat(film.volumePastMl(38 * FOOT_M)).isZero();
        assertThat(pattern.at(38 * FOOT_M + 1e-9).share(Hand.RIGHT, 20)).isZero();
    }

    @Test
    void readingsOfOneHalfGiveAMirrorImageToTheLastBit() {
        for (TapeTable half : List.of(Tapes.half(), Tapes.half().mirrored())) {
            TapePattern pattern = TapePattern.of("taped", 38 * FOOT_M, half);
            OilFilm film = OilFilm.fresh(pattern, LaneGrid.DEFAULT);
            assertThat(pattern.isSymmetric()).isTrue();
            for (int column = 0; column < 156; column++) {
                assertThat(film.thicknessUm(column, 20)).isEqualTo(film.thicknessUm(311 - column, 20));
            }
        }
    }

    @Test
    void halvesThatDifferStayApart() {
        TapePattern pattern = skew();
        assertThat(pattern.isSymmetric()).isFalse();
        assertThat(pattern.at(5).share(Hand.RIGHT, 3)).isEqualTo(10);
        assertThat(pattern.at(5).share(Hand.LEFT, 3)).isEqualTo(5);
    }

    /** 90 % of the middle's 20 is 18, which the right half reaches at board 16.6, the left at 17.7. */
    @Test
    void theInsideIsWhatHoldsNearlyTheMiddlesFilm() {
        TapePattern pattern = skew();
        assertThat(pattern.flatFromBoard(Hand.RIGHT)).isEqualTo(17);
        assertThat(pattern.flatFromBoard(Hand.LEFT)).isEqualTo(18);
        assertThat(pattern.isInside(17)).isTrue();
        assertThat(pattern.isInside(16)).isFalse();
        assertThat(pattern.isInside(23)).isFalse();
        assertThat(TapePattern.of("step", 38 * FOOT_M, Tapes.step(30, 10)).flatFromBoard(Hand.RIGHT))
                .isEqualTo(10);
    }

    @Test
    void aStatedVolumeMustLieWithinTheErrorBar() {
        TapeTable even = Tapes.step(10, 10);
        double volumeMl = even.volumeMl(40 * FOOT_M, 0);
        assertThat(new TapePattern("taped", 40 * FOOT_M, volumeMl * 1.19, even).volumeMl())
                .isEqualTo(volumeMl * 1.19);
        assertThatThrownBy(() -> new TapePattern("taped", 40 * FOOT_M, volumeMl * 1.21, even))
                .hasMessageContaining("but its tapes hold 18.48 to 27.72 mL");
        assertThatThrownBy(() -> new TapePattern("taped", 40 * FOOT_M, volumeMl * 0.79, even))
                .hasMessageContaining("but its tapes hold 18.48 to 27.72 mL");
        assertThatThrownBy(() -> TapePattern.of("dry", 12, Tapes.step(0, 0))).hasMessageContaining("mL");
    }

    @Test
    void tablesThatMakeNoSenseAreRefused() {
        List<Integer> boards = List.of(3, 10, 20);
        List<Double> distances = List.of(2.0, 8.0);
        List<Double> row = List.of(5.0, 9.0, 12.0);
        List<List<Double>> rows = List.of(row, row);
        refused(() -> new TapeTable(List.of(3, 20), distances, rows, 1), "at least 3");
        refused(() -> new TapeTable(boards, List.of(2.0), rows, 1), "at least 2");
        refused(() -> new TapeTable(List.of(3, 3, 20), distances, rows, 1), "boards must ascend");
        refused(() -> new TapeTable(List.of(0, 3, 20), distances, rows, 1), "lowest board is 0");
        refused(() -> new TapeTable(List.of(3, 20, 45), distances, rows, 1), "highest board is 45");
        refused(() -> new TapeTable(boards, List.of(2.0, 18.3), rows, 1), "last distance (m) is 18.3");
        refused(() -> new TapeTable(boards, List.of(-1.0, 8.0), rows, 1), "first distance (m) is -1.0");
        refused(() -> new TapeTable(boards, distances, List.of(row), 1), "1 rows of readings for 2 distances");
        refused(() -> new TapeTable(boards, distances, List.of(row, List.of(5.0)), 1), "1 readings in a row of 3");
        List<Double> negative = new ArrayList<>(row);
        negative.set(1, -0.1);
        refused(() -> new TapeTable(boards, distances, List.of(row, negative), 1), "reading (units) is -0.1");
        refused(() -> new TapeTable(boards, distances, rows, Double.NaN), "error bar (units) is NaN");
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable made, String words) {
        assertThatThrownBy(made).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(words);
    }

    /** Twice as much oil on the right as on the left. */
    private static TapePattern skew() {
        TapeTable lane = new TapeTable(
                List.of(3, 20, 37),
                List.of(8 * FOOT_M, 30 * FOOT_M),
                List.of(List.of(10.0, 20.0, 5.0), List.of(10.0, 20.0, 5.0)),
                1);
        return TapePattern.of("skew", 38 * FOOT_M, lane);
    }
}
