package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Orchard's law (Applied Scientific Research A 11, 1962) with the term of gravity. The tables are computed from it by
 * hand for 30 mN/m, 850 kg/m^3 and 40 mPa s; no measured levelling of lane oil was found.
 */
class LevellingTest {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double DAY_S = 24 * HOUR_S;
    private static final double YEAR_S = 365.25 * DAY_S;
    private static final double BOARD_M = LaneGeometry.BOARD_M;

    private static final Levelling TABLE = new Levelling(0.030, 850, 0.040, 0);

    /**
     * Printed to two digits or so, which the limits follow: half a unit of the last digit, or one per cent if that is
     * more.
     */
    @ParameterizedTest(name = "{0} um, {1} mm: {2} {4}")
    @CsvSource({
        "1, 1, 42, 0.5, min",
        "1, 4, 6.8, 0.05, d",
        "1, 10, 174, 0.5, d",
        "1, 27, 7, 0.5, y",
        "1, 54, 32, 0.5, y",
        "2, 1, 5.3, 0.05, min",
        "2, 4, 20.6, 0.05, h",
        "2, 10, 22, 0.5, d",
        "2, 27, 320, 0.5, d",
        "2, 54, 4.0, 0.05, y",
        "5, 1, 20, 0.5, s",
        "5, 4, 1.3, 0.05, h",
        "5, 10, 1.4, 0.05, d",
        "5, 27, 21, 0.5, d",
        "5, 54, 94, 0.5, d",
        "10, 1, 2.5, 0.05, s",
        "10, 4, 9.8, 0.05, min",
        "10, 10, 4.2, 0.05, h",
        "10, 27, 2.5, 0.1, d",
        "10, 54, 12, 0.5, d",
        "20, 1, 0.3, 0.05, s",
        "20, 4, 1.2, 0.05, min",
        "20, 10, 31, 0.5, min",
        "20, 27, 7.8, 0.05, h",
        "20, 54, 1.5, 0.05, d"
    })
    void ripplesDieInTheTimesOfTheTable(double filmUm, double wavelengthMm, double time, double half, String unit) {
        double ours = TABLE.timeConstantS(filmUm, wavelengthMm / 1000) / seconds(unit);
        assertThat(ours).isCloseTo(time, within(Math.max(half, 0.01 * time)));
    }

    /** A track 4 mm wide is half a wave of 8 mm. */
    @ParameterizedTest(name = "{0} um: {1} {3}")
    @CsvSource({"20, 15, 0.5, min", "10, 2.0, 0.05, h", "5, 16, 0.5, h", "2, 10, 0.5, d"})
    void aTrackClosesInAQuarterOfAnHourInThickHeadsAndInDaysInAThinFilm(
            double filmUm, double time, double half, String unit) {
        assertThat(TABLE.timeConstantS(filmUm, 0.008) / seconds(unit)).isCloseTo(time, within(half));
    }

    @ParameterizedTest(name = "{0} cP: {1} h")
    @CsvSource({"20, 3.9", "40, 7.8", "60, 11.7"})
    void aThickerOilLevelsInProportionMoreSlowly(double centipoise, double hours) {
        Levelling oil = new Levelling(0.030, 850, centipoise / 1000, 0);
        assertThat(oil.timeConstantS(20, 0.027) / HOUR_S).isCloseTo(hours, withinPercentage(1));
    }

    /**
     * Waves that go evenly into a board, whose mean about any place is therefore the even film: no approximation is
     * left.
     */
    @ParameterizedTest(name = "{0} waves a board, {1} um, {2} columns a board")
    @CsvSource({"1, 20, 8", "2, 20, 8", "3, 20, 8", "3, 10, 8", "3, 7, 8", "5, 20, 16", "1, 20, 3", "2, 15, 7"})
    void aRippleOnAnEvenFilmDiesAsTheLawSays(int wavesPerBoard, double filmUm, int columnsPerBoard) {
        LaneGrid grid = new LaneGrid(columnsPerBoard, 1);
        double rippleUm = 0.4;
        double tauS = TABLE.timeConstantS(filmUm, BOARD_M / wavesPerBoard);
        for (double times : new double[] {0.1, 1, 3}) {
            OilFilm film = rippled(grid, filmUm, rippleUm, wavesPerBoard);
            TABLE.relax(film, times * tauS);
            OilFilm expected = rippled(grid, filmUm, rippleUm * Math.exp(-times), wavesPerBoard);
            for (int column = 0; column < grid.columns(); column++) {
                assertThat(film.thicknessUm(column, 7))
                        .as("column %d after %s time constants", column, times)
                        .isCloseTo(expected.thicknessUm(column, 7), within(1e-5 * rippleUm));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void noOilIsLostAndNoColumnOverdrawn(long seed) {
        RandomGenerator random = new Well19937c(seed);
        OilFilm film = ragged(random);
        double beforeMl = film.volumeMl();
        double[] rowsBefore = rowSums(film);
        TABLE.relax(film, DAY_S * random.nextDouble());
        assertThat(film.volumeMl()).as("seed %d", seed).isCloseTo(beforeMl, withinPercentage(1e-10));
        double[] rowsAfter = rowSums(film);
        for (int row = 0; row < rowsBefore.length; row++) {
            assertThat(rowsAfter[row]).as("row %d, seed %d", row, seed).isCloseTo(rowsBefore[row], within(1e-9));
        }
        double least = Double.POSITIVE_INFINITY;
        for (double um : film.cellsUm()) {
            least = Math.min(least, um);
        }
        assertThat(least).as("thinnest film, seed %d", seed).isNotNegative();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void theMirroredFilmLevelsToTheMirrorImageToTheLastBit(long seed) {
        OilFilm film = ragged(new Well19937c(seed));
        OilFilm image = mirrored(film);
        Levelling.usual().relax(film, 2 * HOUR_S);
        Levelling.usual().relax(image, 2 * HOUR_S);
        assertThat(mirrored(image).cellsUm()).as("seed %d", seed).isEqualTo(film.cellsUm());
    }

    @Test
    void twoRestsLevelLikeOneAsLongAsBoth() {
        LaneGrid grid = LaneGrid.DEFAULT;
        OilFilm once = rippled(grid, 20, 0.4, 3);
        OilFilm twice = once.copy();
        TABLE.relax(once, 1500);
        TABLE.relax(twice, 1000);
        TABLE.relax(twice, 500);
        for (int column = 0; column < grid.columns(); column++) {
            assertThat(twice.thicknessUm(column, 0)).isCloseTo(once.thicknessUm(column, 0), within(1e-5));
        }
    }

    /** Tracks a contact wide, one every board, worn half down: nothing to be seen after an hour on 5 um. */
    @Test
    void aFilmOfFiveMicrometresHardlyChangesInAnHour() {
        OilFilm film = tracked(5.3, 0.5);
        OilFilm before = film.copy();
        Levelling.usual().relax(film, HOUR_S);
        assertThat(trackDepthUm(film)).isGreaterThan(0.95 * trackDepthUm(before));
    }

    @Test
    void belowTheLeastFilmNothingMovesHoweverLongItRests() {
        OilFilm film = tracked(4.9, 0.5);
        OilFilm before = film.copy();
        Levelling.usual().relax(film, 100 * DAY_S);
        assertThat(film.cellsUm()).isEqualTo(before.cellsUm());
    }

    /**
     * The quoted quarter of an hour belongs to tracks side by side. A lone track also holds longer waves, which stay:
     * on an endless even film its depth is the mean of exp(-t/tau) over all waves that the columns can show, computed
     * here as an integral.
     */
    @ParameterizedTest(name = "{0} um, {1} min: {2} of the depth left")
    @CsvSource({"20, 15, 0.728", "20, 60, 0.478", "10, 60, 0.835", "10, 240, 0.600"})
    void aLoneTrackSpreadsAndFillsMoreSlowly(double filmUm, double minutes, double left) {
        double waveNumberStepRadpm = Math.PI / LaneGrid.DEFAULT.columnWidthM() / 2000;
        double sum = 0;
        for (int i = 0; i < 2000; i++) {
            double wavelengthM = 2 * Math.PI / ((i + 0.5) * waveNumberStepRadpm);
            sum += Math.exp(-minutes * MINUTE_S / TABLE.timeConstantS(filmUm, wavelengthM));
        }
        assertThat(sum / 2000).isCloseTo(left, within(1e-3));
        OilFilm film = tracked(filmUm, 0.02);
        double beforeUm = trackDepthUm(film);
        TABLE.relax(film, minutes * MINUTE_S);
        assertThat(trackDepthUm(film) / beforeUm).isCloseTo(sum / 2000, within(0.02));
    }

    /** From 20 um in the middle to 7 outside within nine boards: an afternoon does not move the pattern. */
    @Test
    void aPatternKeepsItsShapeAcrossTheLaneForAnAfternoon() {
        OilFilm film = OilFilm.fresh(OilPattern.of("heavy", 12, 60, 3).falling(2, 0.05), LaneGrid.DEFAULT);
        assertThat(film.meanOnBoardUm(20, 0, LaneGeometry.FOOT_M)).isGreaterThan(15);
        OilFilm before = film.copy();
        TABLE.relax(film, 4 * HOUR_S);
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            assertThat(film.meanOnBoardUm(board, 0, LaneGeometry.FOOT_M))
                    .as("board %d", board)
                    .isCloseTo(before.meanOnBoardUm(board, 0, LaneGeometry.FOOT_M), within(0.1));
        }
    }

    @Test
    void anEvenFilmStaysAsItIs() {
        OilFilm film = rippled(LaneGrid.DEFAULT, 20, 0, 1);
        TABLE.relax(film, DAY_S);
        for (double um : film.cellsUm()) {
            assertThat(um).isCloseTo(20, within(1e-11));
        }
    }

    @Test
    void aRestOfNoTimeChangesNoBit() {
        OilFilm film = ragged(new Well19937c(3));
        OilFilm before = film.copy();
        TABLE.relax(film, 0);
        assertThat(film.cellsUm()).isEqualTo(before.cellsUm());
    }

    @Test
    void valuesOutsideTheirRangesAreRefused() {
        assertThatThrownBy(() -> new Levelling(0.1, 850, 0.04, 5)).hasMessageContaining("surface tension (N/m) is 0.1");
        assertThatThrownBy(() -> new Levelling(0.03, 85, 0.04, 5)).hasMessageContaining("density (kg/m^3) is 85.0");
        assertThatThrownBy(() -> new Levelling(0.03, 850, 40, 5)).hasMessageContaining("viscosity (Pa s) is 40.0");
        assertThatThrownBy(() -> TABLE.relax(OilFilm.bare(LaneGrid.DEFAULT), -1))
                .hasMessageContaining("rest of the lane (s) is -1.0");
        assertThatThrownBy(() -> TABLE.timeConstantS(0, 0.01)).hasMessageContaining("film (um) is 0.0");
    }

    private static double seconds(String unit) {
        return switch (unit) {
            case "s" -> 1;
            case "min" -> MINUTE_S;
            case "h" -> HOUR_S;
            case "d" -> DAY_S;
            default -> YEAR_S;
        };
    }

    private static OilFilm rippled(LaneGrid grid, double meanUm, double rippleUm, int wavesPerBoard) {
        OilFilm film = OilFilm.bare(grid);
        for (int column = 0; column < grid.columns(); column++) {
            double boards = (column + 0.5) / grid.columnsPerBoard();
            fill(film, column, meanUm + rippleUm * Math.cos(2 * Math.PI * wavesPerBoard * boards));
        }
        return film;
    }

    /** A film with a track one column wide in the middle of every third board. */
    private static OilFilm tracked(double filmUm, double wornShare) {
        OilFilm film = OilFilm.bare(LaneGrid.DEFAULT);
        for (int column = 0; column < film.grid().columns(); column++) {
            fill(film, column, column % 24 == 12 ? filmUm * (1 - wornShare) : filmUm);
        }
        return film;
    }

    private static double trackDepthUm(OilFilm film) {
        return film.thicknessUm(12 + 6 * 24 + 12, 0) - film.thicknessUm(12 + 6 * 24, 0);
    }

    /** From bare to 25 um from column to column, with bare stretches, and rows that thin out toward the pins. */
    private static OilFilm ragged(RandomGenerator random) {
        LaneGrid grid = new LaneGrid(1 + random.nextInt(12), 1);
        OilFilm film = OilFilm.bare(grid);
        for (int column = 0; column < grid.columns(); column++) {
            double most = random.nextInt(5) == 0 ? 0 : 25 * random.nextDouble();
            for (int row = 0; row < grid.rows(); row++) {
                film.cellsUm()[column * grid.rows() + row] = most * (1 - row / 60.0);
            }
        }
        return film;
    }

    private static OilFilm mirrored(OilFilm film) {
        OilFilm image = film.copy();
        int rows = film.grid().rows();
        for (int column = 0; column < film.grid().columns(); column++) {
            int from = (film.grid().columns() - 1 - column) * rows;
            System.arraycopy(film.cellsUm(), from, image.cellsUm(), column * rows, rows);
        }
        return image;
    }

    private static double[] rowSums(OilFilm film) {
        double[] sums = new double[film.grid().rows()];
        for (int i = 0; i < film.cellsUm().length; i++) {
            sums[i % sums.length] += film.cellsUm()[i];
        }
        return sums;
    }

    private static void fill(OilFilm film, int column, double um) {
        int rows = film.grid().rows();
        Arrays.fill(film.cellsUm(), column * rows, (column + 1) * rows, um);
    }
}
