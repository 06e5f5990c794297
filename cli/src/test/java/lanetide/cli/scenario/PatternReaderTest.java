package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.AcrossShape;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.TapePattern;
import lanetide.oilflow.film.TapeTable;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatternReaderTest {
    private static final String SHEET = "  length: 39 ft\n  volume: 23 mL\n  ratio: 4:1\n";
    private static final String TAPED = """
              length: 38 ft
              tapes:
                error: 1.5 units
                boards: [20, 3, 10]
                readings:
                  - {at: 30 ft, units: [14, 3, 9]}
                  - {at: 8 ft, units: [28, 6, 18]}
                  - {at: 40 ft, units: [1, 0, 0]}
            """;

    @TempDir
    Path folder;

    @Test
    void whatASheetStatesIsTakenAsItStands() {
        SheetPattern pattern =
                sheet(SHEET + "  taperFrom: 6 boards\n  taperTo: 13 boards\n  buffFrom: 27 ft\n  buffTo: 4 %\n"
                        + "  left: {ratio: 2:1, taperTo: 12 boards}\n");

        assertThat(pattern.right()).isEqualTo(new AcrossShape(4, 6, 13));
        assertThat(pattern.left()).isEqualTo(new AcrossShape(2, 6, 12));
        assertThat(pattern.along().appliedToM()).isCloseTo(27 * 0.3048, within(1e-12));
        assertThat(pattern.along().buffTo()).isCloseTo(0.04, within(1e-12));
        assertThat(pattern.along().floor()).isEqualTo(OilPattern.DEFAULT_FLOOR);
    }

    @Test
    void whatASheetDoesNotStateIsTheUsualAndAlikeOnBothSides() {
        SheetPattern pattern = sheet(SHEET);

        assertThat(pattern.isSymmetric()).isTrue();
        assertThat(pattern.along().appliedToM()).isEqualTo(pattern.lengthM());
        assertThat(sheet(SHEET + "  buffFrom: 27 ft\n").along().buffTo()).isEqualTo(OilPattern.DEFAULT_BUFF_TO);
    }

    @Test
    void aTaperThatIsNotStatedLiesByRatioAndLengthOnEachHalf() {
        Reading reading = read(SHEET.replace("4:1", "8:1") + "  left: {ratio: 2:1}\n");
        SheetPattern pattern = (SheetPattern) pattern(reading);

        assertThat(pattern.right()).isEqualTo(AcrossShape.usual(8, pattern.lengthM()));
        assertThat(pattern.left()).isEqualTo(AcrossShape.usual(2, pattern.lengthM()));
        assertThat(reading.scenario().orElseThrow().assumptions())
                .contains(
                        new Assumption("pattern.taperFrom", "7.75 boards", "by ratio and length"),
                        new Assumption("pattern.taperTo", "12.75 boards", "by ratio and length"),
                        new Assumption("pattern.left.taperFrom", "5 boards", "by ratio and length"),
                        new Assumption("pattern.left.taperTo", "14 boards", "by ratio and length"));
    }

    @Test
    void ofATaperThatIsStatedInPartTheRestFollows() {
        Reading reading = read(SHEET.replace("4:1", "8:1") + "  taperFrom: 6 boards\n");

        assertThat(((SheetPattern) pattern(reading)).right()).isEqualTo(new AcrossShape(8, 6, 11));
        assertThat(reading.scenario().orElseThrow().assumptions())
                .extracting(Assumption::name)
                .contains("pattern.taperTo")
                .doesNotContain("pattern.taperFrom", "pattern.left.taperFrom");
    }

    @Test
    void tapesMayStandInAnyOrder() {
        TapePattern pattern = (TapePattern) pattern(read(TAPED));

        TapeTable tapes = pattern.tapes();
        assertThat(tapes.boards()).containsExactly(3, 10, 20, 30, 37);
        assertThat(tapes.distancesM()).hasSize(2).isSorted();
        assertThat(tapes.units().get(0)).containsExactly(6.0, 18.0, 28.0, 18.0, 6.0);
        assertThat(tapes.errorUnits()).isEqualTo(1.5);
        assertThat(pattern.isSymmetric()).isTrue();
        assertThat(pattern.volumeMl()).isEqualTo(tapes.volumeMl(pattern.lengthM(), 0));
        assertThat(read(TAPED).scenario().orElseThrow().assumptions())
                .anySatisfy(taken -> assertThat(taken.value())
                        .isEqualTo(
                                "straight lines between readings; before 8 ft as there, from 30 ft to the end as there,"
                                        + " toward the gutters as on boards 3 and 37"));
    }

    @Test
    void aVolumeWithinTheErrorBarIsTheOneThatIsLaid() {
        double tapedMl = pattern(read(TAPED)).volumeMl();
        String stated = String.format(java.util.Locale.ROOT, "  volume: %.3f mL\n", tapedMl * 1.05);

        assertThat(pattern(read(TAPED + stated)).volumeMl()).isCloseTo(tapedMl * 1.05, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "distance,board,units\n",
                "Distance (ft),BOARD,Units of oil\n",
                "\ufeffdistance_ft, Board number ,oil\n",
                "feet,board,reading\n"
            })
    void aTableMayWriteItsHeaderInManyWays(String header) throws IOException {
        String rows = "8,3,6\n8,10,18\n8,20,28\n\n30,20,14\n30,10,9\n30,3,\"3\"\n";

        assertThat(fromFile(header + rows)).isEqualTo(withoutPastTheEnd());
        assertThat(fromFile((header + rows).replace("\n", "\r\n"))).isEqualTo(withoutPastTheEnd());
    }

    @Test
    void aTableMayBeMetricAndHaveMoreColumnsThanAreRead() throws IOException {
        StringBuilder table = new StringBuilder("lane,distance (m),board,oil (\u00b5m),by\n");
        double[][] readings = {{8, 3, 6}, {8, 10, 18}, {8, 20, 28}, {30, 3, 3}, {30, 10, 9}, {30, 20, 14}};
        for (double[] reading : readings) {
            table.append(String.format(
                    Locale.ROOT,
                    "5,%s,%d,%s,me\n",
                    reading[0] * 0.3048,
                    (int) reading[1],
                    reading[2] * OilFilm.UNIT_UM));
        }

        Reading reading = readFile(table.toString());

        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.COLUMN_IGNORED, NoticeCode.COLUMN_IGNORED);
        assertThat(reading.notices().get(0).file()).endsWith("t.csv");
        TapeTable tapes = ((TapePattern) pattern(reading)).tapes();
        assertThat(tapes.units().get(0).get(1)).isCloseTo(18, within(1e-9));
        assertThat(tapes.distancesM().get(1)).isCloseTo(30 * 0.3048, within(1e-12));
    }

    @Test
    void aTableBelongsToTheScenarioItIsNamedIn() throws IOException {
        Reading reading = readFile("distance,board,units\n");

        assertThat(reading.namedFiles()).containsOnlyKeys("t.csv");
        assertThat(reading.namedFiles().get("t.csv")).matches("[0-9a-f]{64}");
        assertThat(reading.notices()).extracting(Notice::code).containsExactly(NoticeCode.TOO_FEW_READINGS);
        assertThat(readFile("").notices()).extracting(Notice::code).containsExactly(NoticeCode.COLUMN_MISSING);
    }

    /** Whatever a table holds, the reader answers with a pattern or with errors. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aSpoiltTableGivesNoticesOrAPattern(long seed) throws IOException {
        UniformRandomProvider luck = new RandomStreams(seed).stream("table");
        List<String> pieces = List.of(",", "\"", "\n", "\r", ";", " ", "-", "1e309", "nan", "ft", "45", "70", "\u0000");
        for (int i = 0; i < 60; i++) {
            StringBuilder table =
                    new StringBuilder("distance,board,units\n8,3,6\n8,10,18\n8,20,28\n30,3,3\n30,10,9\n30,20,14\n");
            for (int change = luck.nextInt(3); change >= 0; change--) {
                int at = luck.nextInt(table.length());
                table.replace(
                        at, Math.min(table.length(), at + luck.nextInt(4)), pieces.get(luck.nextInt(pieces.size())));
            }

            Reading reading = readFile(table.toString());

            assertThat(reading.scenario().isEmpty())
                    .as("seed %d, table %d:%n%s", seed, i, table)
                    .isEqualTo(reading.count(Severity.ERROR) > 0);
            assertThat(reading.notices())
                    .allSatisfy(notice -> assertThat(notice.message()).endsWith("."));
        }
    }

    @Test
    void bandsAreThePublishedOnesUnlessTheScenarioSetsItsOwn() {
        assertThat(read(SHEET).scenario().orElseThrow().bands()).isEqualTo(PatternBands.PUBLISHED);
        PatternBands own = read(SHEET + "  bands: {longFrom: 43 ft, sportTo: 3:1}\n")
                .scenario()
                .orElseThrow()
                .bands();
        assertThat(own.longFromM()).isCloseTo(43 * 0.3048, within(1e-12));
        assertThat(own.sportTo()).isEqualTo(3);
        assertThat(own.houseFrom()).isEqualTo(8);
    }

    private TapePattern withoutPastTheEnd() {
        return (TapePattern) pattern(read(TAPED.replace("      - {at: 40 ft, units: [1, 0, 0]}\n", "")));
    }

    private TapePattern fromFile(String table) throws IOException {
        return (TapePattern) pattern(readFile(table));
    }

    private Reading readFile(String table) throws IOException {
        Files.writeString(folder.resolve("t.csv"), table, StandardCharsets.UTF_8);
        String text = text("  length: 38 ft\n  tapes: {error: 1.5 units, file: t.csv}\n");
        return new ScenarioReader(OptionalLong.empty())
                .read(folder.resolve("s.yaml").toString(), text.getBytes(StandardCharsets.UTF_8));
    }

    private static SheetPattern sheet(String block) {
        return (SheetPattern) pattern(read(block));
    }

    private static OilPattern pattern(Reading reading) {
        return reading.scenario()
                .orElseThrow(() -> new AssertionError(reading.notices()))
                .event()
                .pattern();
    }

    private static Reading read(String block) {
        return Scenarios.read(text(block));
    }

    private static String text(String block) {
        return Scenarios.SOUND.replace(SHEET, block);
    }
}
