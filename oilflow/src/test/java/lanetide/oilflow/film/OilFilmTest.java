package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OilFilmTest {
    private static final double FOOT_M = LaneGeometry.FOOT_M;

    /** Trade definition, from memory: 0.0167 mL on a square foot; thickness computed: 0.180 um, 7.08 microinch. */
    @Test
    void aUnitOfOilIs180ThousandthsOfAMicrometre() {
        assertThat(OilFilm.UNIT_UM).isCloseTo(0.180, within(0.0005));
        assertThat(OilFilm.UNIT_UM / 0.0254).isCloseTo(7.08, within(0.005));
        assertThat(3 * OilFilm.UNIT_UM).isCloseTo(0.54, within(0.005));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void theFilmHoldsTheStatedVolumeWhateverTheShape(long seed) {
        RandomGenerator random = new Well19937c(seed);
        LaneGrid grid = new LaneGrid(1 + random.nextInt(16), 1 + random.nextInt(4));
        double lengthM = 6 + 11.7 * random.nextDouble();
        double floor = random.nextDouble();
        AlongShape along = new AlongShape(
                4 * random.nextDouble(),
                floor,
                lengthM * (0.5 + 0.5 * random.nextDouble()),
                floor * random.nextDouble());
        OilPattern pattern =
                new SheetPattern("any", lengthM, 5 + 40 * random.nextDouble(), side(random), side(random), along);
        OilFilm film = OilFilm.fresh(pattern, grid);
        assertThat(film.volumeMl()).as("volume, seed %d", seed).isCloseTo(pattern.volumeMl(), withinPercentage(1e-10));
        double endM = Math.ceil(pattern.lengthM() / grid.rowLengthM()) * grid.rowLengthM();
        assertThat(film.volumePastMl(endM))
                .as("oil past the end, seed %d", seed)
                .isZero();
    }

    /** Of the row in which it begins, the share is taken that lies past; rows before keep every bit. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 33.25, 40, 59.5, 60})
    void cleaningPastADistanceTakesWhatLiesThereAndNothingElse(double feet) {
        LaneGrid grid = new LaneGrid(1, 2);
        OilFilm film = OilFilm.fresh(OilPattern.of("long", 50 * FOOT_M, 25, 3), grid);
        OilFilm before = film.copy();
        double pastMl = film.volumePastMl(feet * FOOT_M);

        double takenMl = film.stripPast(feet * FOOT_M);

        assertThat(takenMl).isEqualTo(pastMl);
        assertThat(film.volumePastMl(Math.ceil(feet) * FOOT_M)).isCloseTo(0, within(1e-12));
        assertThat(film.volumeMl()).isCloseTo(before.volumeMl() - takenMl, within(1e-10));
        for (int row = 0; row < Math.floor(feet); row++) {
            assertThat(film.thicknessUm(30, row)).isEqualTo(before.thicknessUm(30, row));
        }
    }

    private static AcrossShape side(RandomGenerator random) {
        return new AcrossShape(1 + 2 * random.nextDouble(), 5 + 5 * random.nextDouble(), 12 + 5 * random.nextDouble());
    }

    @Test
    void aRatioThatTheTaperCannotGiveIsRefusedWithTheMostItCan() {
        assertThatThrownBy(() -> OilPattern.of("house", 12, 24, 30))
                .hasMessageContaining("must lie between 1.0 and 14.0");
        assertThatThrownBy(() -> new AcrossShape(10, 2, 12)).hasMessageContaining("start the taper further in");
    }

    /**
     * Volume, length and mean film of a championship series, 2005 to 2019. Source of length and volume: trade press of
     * 2012, 2015 and 2016 and event sheets; the mean over oiled length and full width is computed from them.
     */
    @ParameterizedTest(name = "{0} ft, {1} mL: {2} units, {3} um")
    @CsvSource({
        "38, 23.96, 10.9, 1.96",
        "39, 19.0,   8.4, 1.52",
        "40, 23.24, 10.1, 1.81",
        "40, 24.0,  10.4, 1.87",
        "40, 26.16, 11.3, 2.04",
        "40, 26.05, 11.3, 2.03",
        "41, 27.35, 11.6, 2.08",
        "39, 25.2,  11.2, 2.01",
        "38, 26.9,  12.3, 2.20",
        "39, 27.05, 12.0, 2.16",
        "38, 26.7,  12.2, 2.19",
        "39, 27.6,  12.3, 2.20",
        "38, 27.5,  12.5, 2.25"
    })
    void theMeanFilmOfChampionshipPatternsIsThatOfTheirVolumeAndLength(
            double feet, double volumeMl, double units, double micrometres) {
        OilFilm film = OilFilm.fresh(OilPattern.of("any", feet * FOOT_M, volumeMl, 2.5), LaneGrid.DEFAULT);
        double meanUm = 0;
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            meanUm += film.meanOnBoardUm(board, 0, feet * FOOT_M) / LaneGeometry.BOARDS;
        }
        assertThat(meanUm).isCloseTo(micrometres, within(0.0101));
        assertThat(meanUm / OilFilm.UNIT_UM).isCloseTo(units, within(0.0501));
    }

    @Test
    void layingOverAddsAndStrippingTakesAllOff() {
        OilPattern pattern = OilPattern.of("any", 12, 20, 3);
        OilFilm film = OilFilm.fresh(pattern, LaneGrid.DEFAULT);
        assertThat(film.lay(pattern)).isEqualTo(20);
        assertThat(film.volumeMl()).isCloseTo(40, within(1e-10));
        assertThat(film.strip()).isCloseTo(40, within(1e-10));
        assertThat(film.volumeMl()).isZero();
    }

    @Test
    void aCopyGoesItsOwnWay() {
        OilFilm film = OilFilm.fresh(OilPattern.of("any", 12, 20, 3), LaneGrid.DEFAULT);
        OilFilm copy = film.copy();
        copy.strip();
        assertThat(film.volumeMl()).isCloseTo(20, within(1e-10));
    }

    @Test
    void aFreshPatternIsItsOwnMirrorImageToTheLastBit() {
        LaneGrid grid = LaneGrid.DEFAULT;
        OilFilm film = OilFilm.fresh(OilPattern.of("any", 12, 20, 3), grid);
        for (int column = 0; column < grid.columns(); column++) {
            assertThat(film.thicknessUm(column, 5))
                    .as("column %d", column)
                    .isEqualTo(film.thicknessUm(grid.columns() - 1 - column, 5));
        }
    }
}
