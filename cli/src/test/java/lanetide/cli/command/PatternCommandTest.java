package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import lanetide.cli.scenario.Scenarios;
import lanetide.oilflow.film.AlongShape;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class PatternCommandTest {
    private static final Path CLUB = Scenarios.FOLDER.resolve("club-night.yaml");
    private static final Path TAPED = Scenarios.FOLDER.resolve("taped-lanes.yaml");
    private static final Path FAULTY = Scenarios.FOLDER.resolve("faulty").resolve("tapes-file-negative.yaml");

    @TempDir
    Path folder;

    @Test
    void theJsonHasTheAgreedFields() {
        JsonNode answer = json(CLUB);

        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256", "patterns")
                .doesNotContain("namedFilesSha256");
        JsonNode pattern = answer.get("patterns").get(0);
        assertThat(pattern.propertyNames())
                .startsWith(
                        "id",
                        "lengthFt",
                        "volumeMl",
                        "ratio",
                        "lengthBand",
                        "volumeBand",
                        "tier",
                        "tierRight",
                        "tierLeft",
                        "exitBoardByRule",
                        "integratedVolumeMl")
                .contains("tapes", "shape");
        assertThat(pattern.get("tapes").get(0).propertyNames()).containsExactly("distanceFt", "board", "units");
    }

    /** What the scenario says, the published bands of 40 ft, 23 mL and 8:1, and 40 less 31. */
    @Test
    void aHousePatternIsWhatItsSheetSays() {
        JsonNode pattern = json(CLUB).get("patterns").get(0);

        assertThat(pattern.get("lengthFt").asDouble()).isEqualTo(40);
        assertThat(pattern.get("volumeMl").asDouble()).isEqualTo(23);
        assertThat(pattern.get("ratio").asDouble()).isEqualTo(8);
        assertThat(pattern.get("lengthBand").asString()).isEqualTo("medium");
        assertThat(pattern.get("volumeBand").asString()).isEqualTo("medium");
        assertThat(pattern.get("tier").asString()).isEqualTo("house");
        assertThat(pattern.get("exitBoardByRule").asDouble()).isEqualTo(9);
        assertThat(pattern.get("integratedVolumeMl").asDouble()).isCloseTo(23, within(0.115));
        assertThat(pattern.get("measuredRatio").asDouble()).isCloseTo(8, within(0.08));
        assertThat(pattern.get("exits")).hasSize(4).allSatisfy(exit -> {
            double board = exit.get("exitBoard").asDouble();
            assertThat(board)
                    .isBetween(
                            exit.get("exitWindow").get("low").asDouble(),
                            exit.get("exitWindow").get("high").asDouble());
        });
    }

    @Test
    void tapesGiveBothHandsTheirOwnExitsAndAreNamedInTheHead() {
        JsonNode answer = json(TAPED);
        JsonNode pattern = answer.get("patterns").get(0);

        assertThat(answer.get("namedFilesSha256").get("taped-lanes.csv").asString())
                .matches("[0-9a-f]{64}");
        assertThat(pattern.get("basis").asString()).isEqualTo("tapes");
        assertThat(pattern.get("symmetric").asBoolean()).isFalse();
        assertThat(pattern.get("measuredRatioRight").asDouble())
                .isGreaterThan(pattern.get("measuredRatioLeft").asDouble());
        assertThat(pattern.get("exits")).hasSize(8);
        // The table says 17 units on board 20 at 22 ft; the stated volume scales what the tapes hold.
        double scale = reading(pattern, 22, 20) / 17;
        assertThat(scale).isCloseTo(1, within(0.1));
        assertThat(reading(pattern, 8, 5)).isCloseTo(7 * scale, within(0.15));
        assertThat(reading(pattern, 42, 20)).isZero();
    }

    @Test
    void theTextSaysWhatItMeansForPlay() {
        Program.Outcome outcome = Program.run("pattern", CLUB);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("Club night on four pairs\nPattern: 40 ft, 23 mL, 8:1.\n")
                .contains("Length 40 ft, medium:", "Volume 23 mL, medium:", "Ratio 8:1, house tier:")
                .contains("Surface textured-synthetic, dry friction 0.28: more than hard-synthetic (0.23).")
                .contains("By the length rule, board 9: the length in feet less 31.")
                .contains("not a lane inspection and not a ruling", "trained staff only")
                .contains("style power: natural launch angle 1.2 degrees")
                .doesNotContain("pace.pinsetter");
        assertThat(outcome.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(Program.run("pattern", TAPED).out().lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100))
                .anySatisfy(line -> assertThat(line).contains("power (left)"));
    }

    @Test
    void metricUnitsLeaveFeetAndUnitsOfOilOut() {
        assertThat(Program.run("pattern", CLUB, "--units", "metric").out())
                .contains("12.19 m", "micrometres", "6.71 m")
                .doesNotContain("40 ft");
    }

    @ParameterizedTest(name = "{0}, {1}, {2}: {3}, {4}, {5}")
    @CsvSource({
        "34 ft, 19 mL, 2:1, short, low, sport",
        "42 ft, 28 mL, 5:1, long, high, challenge",
        "20 ft, 24.1 mL, 8:1, short, high, house"
    })
    void everyBandHasItsWords(String length, String volume, String ratio, String band, String oil, String tier)
            throws Exception {
        Path scenario = written(Scenarios.SOUND
                .replace("39 ft", length)
                .replace("23 mL", volume)
                .replace("4:1", ratio));

        String text = Program.run("pattern", scenario).out();

        assertThat(text)
                .contains("Length " + length + ", " + band + ": ")
                .contains("Volume " + volume + ", " + oil + ": ")
                .contains("Ratio " + ratio + ", " + tier + " tier: ");
    }

    @Test
    void theRuleNamesNoBoardForAPatternItWasNotMadeFor() throws Exception {
        Path scenario = written(Scenarios.SOUND.replace("39 ft", "31 ft"));

        assertThat(json(scenario).get("patterns").get(0).get("exitBoardByRule").isNull())
                .isTrue();
        assertThat(Program.run("pattern", scenario).out()).contains("names no board for a pattern of this length");
    }

    /** What the program writes it can read: the tapes of a pattern give that pattern back, within straight lines. */
    @Test
    void aPatternsTapesMakeThePatternAgain() throws Exception {
        Path scenario = written(Scenarios.SOUND);
        Path table = folder.resolve("tapes.csv");
        assertThat(Program.run("pattern", scenario, "--format", "csv", "-o", table)
                        .exitCode())
                .isZero();
        assertThat(Files.readString(table)).startsWith("distanceFt,board,units\r\n8,1,");

        Path again = Files.writeString(
                folder.resolve("again.yaml"),
                Scenarios.SOUND
                        .replace("  volume: 23 mL\n", "")
                        .replace("  ratio: 4:1\n", "  tapes: {file: tapes.csv}\n"));
        JsonNode pattern = json(again).get("patterns").get(0);

        assertThat(pattern.get("ratio").asDouble()).isCloseTo(4, within(0.04));
        assertThat(pattern.get("volumeMl").asDouble()).isCloseTo(23 * shareThatTapesFind(), within(0.23));
    }

    /**
     * Before 8 ft the tapes know nothing and the film is held, so that a part of the heads is missing; from there to
     * the last tape it runs in straight lines, a little above the film. Of a pattern of 39 ft.
     */
    private static double shareThatTapesFind() {
        AlongShape along =
                AlongShape.unbuffed(OilPattern.DEFAULT_DECAY, OilPattern.DEFAULT_FLOOR, 39 * LaneGeometry.FOOT_M);
        double[] tapesFt = {0, 8, 15, 22, 27.5, 37, 39};
        double found = 0;
        double laid = 0;
        for (int i = 1; i < tapesFt.length; i++) {
            double from = tapesFt[i - 1];
            double to = tapesFt[i];
            found += (to - from) * (film(along, Math.max(8, from)) + film(along, Math.min(37, to))) / 2;
            double step = (to - from) / 1000;
            for (int k = 0; k < 1000; k++) {
                laid += step * film(along, from + (k + 0.5) * step);
            }
        }
        return found / laid;
    }

    private static double film(AlongShape along, double atFt) {
        return along.share(atFt * LaneGeometry.FOOT_M, 39 * LaneGeometry.FOOT_M);
    }

    @Test
    void eachHalfIsJudgedByItself() throws Exception {
        Path scenario = written(Scenarios.SOUND.replace("ratio: 4:1", "ratio: 2:1\n  left: {ratio: 8:1}"));

        JsonNode pattern = json(scenario).get("patterns").get(0);
        assertThat(pattern.get("tierRight").asString()).isEqualTo("sport");
        assertThat(pattern.get("tierLeft").asString()).isEqualTo("house");
        assertThat(pattern.get("tier").asString()).isEqualTo("house");
        assertThat(Program.run("pattern", scenario).out())
                .contains(
                        "Ratio on the right-hand half 2:1, sport tier: ",
                        "Ratio on the left-hand half 8:1, house tier: ",
                        "pattern.taperFrom: 5 boards (by ratio and length).",
                        "pattern.left.taperFrom: 7.75 boards (by ratio and length).");
    }

    @Test
    void tapesWithLessOilInsideThanOutsideHaveNoTier() throws Exception {
        String tapes = """
                  tapes:
                    boards: [20, 10, 3]
                    readings:
                      - {at: 8 ft, units: [10, 15, 20]}
                      - {at: 30 ft, units: [6, 9, 12]}
                """;
        Path scenario = written(Scenarios.SOUND.replace("  volume: 23 mL\n", "").replace("  ratio: 4:1\n", tapes));

        JsonNode pattern = json(scenario).get("patterns").get(0);
        assertThat(pattern.get("ratio").asDouble()).isLessThan(1);
        assertThat(pattern.get("tier").asString()).isEqualTo("inverse");
        assertThat(Program.run("pattern", scenario).out())
                .contains(":1, no tier: there is more oil outside than inside")
                .doesNotContain("sport tier: ");
    }

    @Test
    void theFallAlongTheLaneIsToldInUnitsOnlyWhereItIsAssumed() throws Exception {
        String fall = "How the oil falls along the lane is assumed here.";
        Path assumed = written(Scenarios.SOUND);
        JsonNode pattern = json(assumed).get("patterns").get(0);
        String text = Program.run("pattern", assumed).out().replaceAll("\\s+", " ");

        assertThat(text).contains(fall);
        for (int feet : List.of(8, 15, 22, 35)) {
            assertThat(text)
                    .contains(String.format(
                            Locale.ROOT,
                            "%.1f and %.1f at %d ft",
                            reading(pattern, "shape", feet, 20),
                            reading(pattern, "shape", feet, 5),
                            feet));
        }
        assertThat(reading(pattern, "shape", 8, 20)).isEqualTo(reading(pattern, 8, 20));
        Path stated = written(Scenarios.SOUND.replace("ratio: 4:1", "ratio: 4:1\n  decay: 1.2\n  floor: 25 %"));
        assertThat(Program.run("pattern", stated).out().replaceAll("\\s+", " ")).doesNotContain(fall);
        assertThat(Program.run("pattern", TAPED).out().replaceAll("\\s+", " ")).doesNotContain(fall);
    }

    @Test
    void theAnswerIsTheSameToTheByte() {
        assertThat(Program.run("pattern", TAPED, "--format", "json", "--threads", 2)
                        .out())
                .isEqualTo(Program.run("pattern", TAPED, "--format", "json").out());
    }

    @Test
    void aFaultInATableIsToldWithItsFileAndLine() {
        Program.Outcome outcome = Program.run("pattern", FAULTY);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().replaceAll("\\s+", " "))
                .contains("tapes-file-negative.csv line 6: units is `-15 units`; it must be from 0 units to 500 units.")
                .contains("[negative_value]");
    }

    private Path written(String text) throws Exception {
        return Files.writeString(folder.resolve("event.yaml"), text);
    }

    private static double reading(JsonNode pattern, double feet, int board) {
        return reading(pattern, "tapes", feet, board);
    }

    private static double reading(JsonNode pattern, String readings, double feet, int board) {
        for (JsonNode tape : pattern.get(readings)) {
            if (tape.get("distanceFt").asDouble() == feet && tape.get("board").asInt() == board) {
                return tape.get("units").asDouble();
            }
        }
        throw new AssertionError("no tape at " + feet + " ft on board " + board);
    }

    private static JsonNode json(Path scenario) {
        Program.Outcome outcome = Program.run("pattern", scenario, "--format", "json");
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return outcome.answer();
    }
}
