package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

class LinesCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");
    private static final Path FAULTY = Scenarios.FOLDER.resolve("faulty").resolve("length-61-ft.yaml");

    /** A ball without spin runs straight, and at such angles straight at the pocket from off the lane. */
    private static final String DEAD_STYLE = """
            styles:
              dead:
                speed: 18 mph
                revRate: 0 rpm
                axisRotation: 0 deg
                axisTilt: 0 deg
                naturalLaunch: 5.5 deg
                source: test
            """;

    private static Program.Outcome json;

    @TempDir
    Path folder;

    @BeforeAll
    static void look() {
        json = lines("--format", "json", "--threads", 1);
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(json.err()).isEmpty();
        JsonNode answer = json.answer();

        assertThat(answer.propertyNames())
                .containsExactly(
                        "schemaVersion", "version", "seed", "scenarioSha256", "lines", "assumptions", "cautions");
        assertThat(answer.get("seed").asInt()).isEqualTo(3);
        JsonNode line = answer.get("lines").get(0);
        assertThat(line.propertyNames())
                .contains(
                        "pattern",
                        "surface",
                        "style",
                        "hand",
                        "cover",
                        "basis",
                        "laydownBoard",
                        "arrowsBoard",
                        "launchAngleDeg",
                        "exitBoard",
                        "exitWindow",
                        "breakpoint",
                        "entryAngleDeg",
                        "speedAtPinsMph",
                        "pocketShare",
                        "strikeShare",
                        "missRoomBoards");
        assertThat(line.get("exitWindow").propertyNames()).containsExactly("low", "high");
        assertThat(line.get("breakpoint").propertyNames()).containsExactly("board", "distanceFt");
        assertThat(line.get("missRoomBoards").asDouble())
                .isCloseTo(
                        line.get("missRoom").get("outsideBoards").asDouble()
                                + line.get("missRoom").get("insideBoards").asDouble(),
                        org.assertj.core.data.Offset.offset(0.011));
    }

    /** A tweener from the right and a stroker from the left play this scenario; its surface is the hard one. */
    @Test
    void everyStyleOfTheScenarioIsShownOnEverySurfaceOnBothBases() {
        List<String> shown = new ArrayList<>();
        for (JsonNode line : json.answer().get("lines")) {
            if (isOnTheOtherTrack(line)) {
                continue;
            }
            shown.add(line.get("surface").asString() + " " + line.get("style").asString() + " "
                    + line.get("hand").asString() + " " + line.get("cover").asString() + " "
                    + line.get("basis").asString());
        }
        List<String> expected = new ArrayList<>();
        for (String surface : List.of("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood")) {
            expected.add(surface + " stroker left weak-reactive natural");
            expected.add(surface + " stroker left weak-reactive free");
            expected.add(surface + " tweener right medium-reactive natural");
            expected.add(surface + " tweener right medium-reactive free");
        }
        assertThat(shown).isEqualTo(expected);
    }

    private static boolean isOnTheOtherTrack(JsonNode line) {
        return line.get("basis").asString().equals("other-track");
    }

    /** One launch angle has two lines; the one that is not played is told beside it, and never one half as good. */
    @Test
    void whereThereIsAnotherTrackItIsToldAfterTheNaturalLine() {
        JsonNode lines = json.answer().get("lines");
        int others = 0;
        for (int i = 2; i < lines.size(); i++) {
            if (isOnTheOtherTrack(lines.get(i))) {
                others++;
                JsonNode natural = lines.get(i - 2);
                assertThat(natural.get("basis").asString()).isEqualTo("natural");
                for (String same : List.of("surface", "style", "hand", "cover", "level")) {
                    assertThat(lines.get(i).get(same)).isEqualTo(natural.get(same));
                }
                assertThat(Math.abs(lines.get(i).get("laydownBoard").asDouble()
                                - natural.get("laydownBoard").asDouble()))
                        .isGreaterThan(1);
            }
        }
        assertThat(others).isPositive();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void theBestLineStrikesNoLessThanAnyOtherThatIsTold(Path scenario) {
        JsonNode lines =
                Program.run("lines", scenario, "--format", "json").answer().get("lines");

        JsonNode free = null;
        for (int i = 1; i < lines.size(); i++) {
            String basis = lines.get(i).get("basis").asString();
            free = basis.equals("free") ? lines.get(i) : free;
            JsonNode told = basis.equals("free") ? lines.get(i - 1) : lines.get(i);
            if (!basis.equals("natural") && told.get("strikeShare").isNumber()) {
                assertThat(free.get("strikeShare").asDouble())
                        .isGreaterThanOrEqualTo(told.get("strikeShare").asDouble());
            }
        }
    }

    /** A house pattern holds a pulled ball and brings a wide one back: an outer and an inner line. */
    @Test
    void onAHousePatternTheOtherTrackIsToldWithWhatItGains() throws Exception {
        Path house = Files.writeString(
                folder.resolve("house.yaml"),
                Scenarios.SOUND.replace("39 ft", "40 ft").replace("4:1", "8:1"));
        Object[] question = {"--style", "power", "--hand", "right", "--cover", "weak-reactive", "--surface", "wood"};

        String page = Program.runWith(List.of("lines", house), question).out();
        List<String> rows = tableAfter(page, "The other track, where there is an outside and an inside line");
        JsonNode lines = Program.runWith(List.of("lines", house, "--format", "json"), question)
                .answer()
                .get("lines");

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0)).containsSubsequence("Track", "Laydown", "Arrows", "Leaves", "Strikes", "Gains");
        JsonNode natural = lines.get(0);
        JsonNode other = lines.get(2);
        boolean outside = other.get("laydownBoard").asDouble()
                < natural.get("laydownBoard").asDouble();
        double gain = 100
                * (other.get("strikeShare").asDouble()
                        - natural.get("strikeShare").asDouble());
        String[] cells = rows.get(1).strip().split("\\s{2,}", -1);
        assertThat(cells[2]).isEqualTo(outside ? "outside" : "inside");
        assertThat(Double.parseDouble(cells[7])).isCloseTo(gain, org.assertj.core.data.Offset.offset(0.51));
    }

    /** The rows of the table under a heading, its head first. */
    private static List<String> tableAfter(String page, String heading) {
        return page.lines()
                .dropWhile(line -> !line.equals(heading))
                .skip(1)
                .takeWhile(line -> !line.isBlank())
                .toList();
    }

    @Test
    void theExitAndItsWindowAreThoseThatPatternTells() throws Exception {
        Path scenario = Files.writeString(folder.resolve("event.yaml"), Scenarios.SOUND);
        JsonNode exits = Program.run("pattern", scenario, "--format", "json")
                .answer()
                .get("patterns")
                .get(0)
                .get("exits");

        assertThat(exits).hasSize(4);
        for (JsonNode exit : exits) {
            JsonNode line = Program.run(
                            "lines",
                            scenario,
                            "--style",
                            exit.get("style").asString(),
                            "--hand",
                            "right",
                            "--cover",
                            "medium-reactive",
                            "--level",
                            "scratch",
                            "--format",
                            "json")
                    .answer()
                    .get("lines")
                    .get(0);
            assertThat(line.get("exitBoard")).isEqualTo(exit.get("exitBoard"));
            assertThat(line.get("exitWindow").get("low"))
                    .isEqualTo(exit.get("exitWindow").get("low"));
            assertThat(line.get("exitWindow").get("high"))
                    .isEqualTo(exit.get("exitWindow").get("high"));
        }
    }

    /**
     * Order of friction: Bowlers Journal, November 2012, p. 25; that feet go deeper with it: common practice, no
     * source.
     */
    @Test
    void theMoreFrictionTheDeeperTheFeet() {
        JsonNode answer = json.answer().get("lines");
        for (String style : List.of("stroker", "tweener")) {
            double hard = naturalLaydown(answer, "hard-synthetic", style);
            double textured = naturalLaydown(answer, "textured-synthetic", style);
            assertThat(textured).isGreaterThan(hard);
            assertThat(naturalLaydown(answer, "wood", style)).isGreaterThan(textured);
        }
    }

    private static double naturalLaydown(JsonNode lines, String surface, String style) {
        for (JsonNode line : lines) {
            if (line.get("surface").asString().equals(surface)
                    && line.get("style").asString().equals(style)
                    && line.get("basis").asString().equals("natural")) {
                return line.get("laydownBoard").asDouble();
            }
        }
        throw new AssertionError("no natural line of " + style + " on " + surface);
    }

    @Test
    void theBytesAreTheSameEveryTimeAndForAnyNumberOfThreads() {
        assertThat(lines("--format", "json", "--threads", 8).out()).isEqualTo(json.out());
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void theTextIsAPageThatACoachCanReadAloud(Path scenario) {
        Program.Outcome outcome = Program.run("lines", scenario, "--quiet");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .contains(
                        "Where each style starts on the fresh pattern.",
                        "the surface of this scenario",
                        "Best line, for those who can change their launch angle",
                        "What differs between the surfaces",
                        "Room to miss at the arrows",
                        "Another ball",
                        "How to read it",
                        "not a lane inspection and not a ruling");
        assertThat(outcome.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    static List<Path> shipped() {
        return Scenarios.shipped();
    }

    @Test
    void handsThatPlayTheSameNumbersShareARow() {
        String page = lines("--style", "power", "--hand", "right,left", "--surface", "wood")
                .out();

        assertThat(page).contains("\n  power ").doesNotContain("(left)", "(right)", "What differs between");
        JsonNode both = lines("--style", "power", "--hand", "right,left", "--surface", "wood", "--format", "json")
                .answer()
                .get("lines");
        assertThat(both.get(0).get("hand").asString()).isEqualTo("right");
        assertThat(both.get(2).get("hand").asString()).isEqualTo("left");
        assertThat(both.get(2).get("laydownBoard")).isEqualTo(both.get(0).get("laydownBoard"));
        assertThat(both).hasSize(4);
    }

    @Test
    void levelAndCoverAreThoseAskedFor() {
        String page = lines("--level", "casual", "--cover", "plastic", "--style", "tweener")
                .out();

        assertThat(page).contains("tweener: plastic ball, level casual.", "level casual: 1.46 boards of scatter");
    }

    @Test
    void onLanesOutOfLevelThePageSaysThatLinesAreForLevelOnes() {
        Path uneven = Scenarios.FOLDER.resolve("uneven-lanes.yaml");

        assertThat(Program.run("lines", uneven, "--style", "tweener", "--surface", "wood")
                        .out())
                .contains("shape of the lanes: level");
        assertThat(lines("--style", "tweener", "--surface", "wood").out()).doesNotContain("shape of the lanes");
    }

    /** A rougher ball has more friction in the oil: from the same feet it hooks more, so that the feet go deeper. */
    @Test
    void aBallAtTwoGritsIsComparedWithItself() {
        String page = lines("--grit", "3000,500", "--style", "tweener", "--surface", "hard-synthetic")
                .out();

        assertThat(page)
                .contains(
                        "tweener: medium-reactive at 3000-grit ball",
                        "tweener: medium-reactive at 500-grit ball",
                        "What differs between the balls",
                        "deeper.",
                        "tweener, 500-grit",
                        "ISO 6344");
        assertThat(page.replaceAll("\\s+", " "))
                .containsPattern("against medium-reactive at 3000-grit on hard-synthetic, with the feet: tweener \\d");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aGritWithoutAKnownRoughnessIsRefused() {
        Program.Outcome outcome = lines("--grit", "500,40");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("--grit is 40; it must be a whole number from 180 to 5000.");
    }

    /** 18.288 m is the whole lane (60 ft). */
    @Test
    void metricUnitsChangeDistancesAndNotBoards() {
        String trade = lines("--style", "tweener", "--surface", "wood").out();
        String metric = lines("--style", "tweener", "--surface", "wood", "--units", "metric")
                .out();

        assertThat(trade).contains("39 ft, 23 mL").containsPattern(", \\d+ ft");
        assertThat(metric)
                .contains("11.89 m, 23 mL")
                .containsPattern(", \\d+\\.\\d m")
                .doesNotContain(" ft");
    }

    @ParameterizedTest
    @CsvSource({
        "--style, tweenr, tweener",
        "--hand, rigth, right",
        "--cover, urethan, urethane",
        "--level, eliet, elite",
        "--surface, wod, wood"
    })
    void aMisspeltNameIsOfferedTheNearest(String option, String typed, String meant) {
        Program.Outcome outcome = lines(option, typed);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err())
                .contains(option + " is `" + typed + "`, which this scenario does not know. Did you mean `" + meant
                        + "`?");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @Test
    void whereNoLineMeetsThePocketThatIsSaid() throws Exception {
        Path scenario = Files.writeString(folder.resolve("dead.yaml"), Scenarios.SOUND + DEAD_STYLE);

        Program.Outcome text = Program.run("lines", scenario, "--style", "dead", "--surface", "wood");
        JsonNode line = Program.run("lines", scenario, "--style", "dead", "--format", "json")
                .answer()
                .get("lines")
                .get(0);

        assertThat(text.exitCode()).isZero();
        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("Moving two and one brings no average shot of dead to the pocket on wood")
                .contains("Nearest is ")
                .contains("From everywhere it hooks too")
                .contains(" dead - - - - - - - - - ");
        assertThat(Math.abs(line.get("nearest").get("missBoards").doubleValue()))
                .isGreaterThan(0.02);
        assertThat(line.get("laydownBoard").isNull()).isTrue();
        assertThat(line.get("exitWindow").get("low").isNull()).isTrue();
        assertThat(line.get("ballChange").isNull()).isTrue();
    }

    @Test
    void theTableHasOneRowForEachLine() {
        List<String> rows = lines("--format", "csv").out().lines().toList();

        // 4 surfaces, 2 kinds of bowlers, 2 bases; and other tracks.
        assertThat(rows.stream().filter(row -> !row.contains(",other-track,"))).hasSize(1 + 4 * 2 * 2);
        assertThat(rows).hasSize(1 + json.answer().get("lines").size());
        assertThat(rows.get(0)).startsWith("surface,style,hand,cover,level,basis,laydownBoard,arrowsBoard,");
        assertThat(rows.get(1)).startsWith("hard-synthetic,stroker,left,weak-reactive,scratch,natural,");
        assertThat(rows).allSatisfy(row -> assertThat(row.split(",", -1)).hasSize(20));
    }

    @Test
    void aScenarioWithErrorsIsNotLookedAt() {
        Program.Outcome outcome = Program.run("lines", FAULTY, "--quiet");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("cannot be played.", "[out_of_range]");
    }

    @Test
    void filesAreReadAndWrittenAsByEveryCommand() throws Exception {
        Path answer = Files.writeString(folder.resolve("lines.json"), "older");

        assertThat(Program.run("lines", folder.resolve("none.yaml"), "-o", answer)
                        .exitCode())
                .isEqualTo(3);
        assertThat(answer).hasContent("older");
        assertThat(lines("--format", "json", "-o", answer).exitCode()).isZero();
        assertThat(Files.readString(answer)).isEqualTo(json.out());
    }

    private static Program.Outcome lines(Object... options) {
        return Program.runWith(List.of("lines", ONE_PAIR), options);
    }
}
