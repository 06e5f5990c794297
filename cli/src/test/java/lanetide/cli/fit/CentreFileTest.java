package lanetide.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.cli.scenario.centre.CentreFileFromJson;
import lanetide.cli.scenario.centre.PatternMark;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Severity;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Findings;
import lanetide.squads.unknown.ValueSets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Centre files written, read back by a scenario that names them, and refused where something is wrong in them. */
class CentreFileTest {
    private static final String HOUSE = PatternMark.of(OilPattern.of("House", 12.192, 24, 5));
    private static final String FILE = "lanes.json";
    private static final List<TapeTaken> TAPES = List.of(
            new TapeTaken(1, new When("A", 0), 2.4384, 20, 38, 2, "tapes.csv line 2"),
            new TapeTaken(2, new When("A", 0), 6.7056000000000004, 8, 0, 0.75, "tapes.csv line 3"),
            new TapeTaken(1, new When("A", 2), 2.4384, 20, 31.25, 2, "tapes.csv line 4"));
    private static final CentreFile SOUND = new CentreFile(
            ValueSets.mark(),
            "lanetide fit small.yaml --centre lanes.json",
            List.of(new CentreFile.Day(
                    "small.yaml",
                    "0123",
                    "Small day \"one\"",
                    HOUSE,
                    new Measurements(
                            TAPES,
                            List.of(
                                    ball(OptionalDouble.of(7.6), OptionalDouble.empty()),
                                    ball(OptionalDouble.empty(), OptionalDouble.of(31.5)),
                                    seenInPassing()),
                            List.of(new ScoreMade("A", 2, "Anchor", 201, "scores.csv line 3")),
                            List.of()),
                    TAPES.subList(0, 2))),
            ValueSets.shipped().subList(0, 20));

    private static final Value AT =
            new Value(new ScalarNode(Tag.STR, FILE, ScalarStyle.PLAIN), "centre.fitted", "", new Notices("small.yaml"));

    @TempDir
    Path folder;

    private String written;

    @BeforeEach
    void writesAScenarioThatNamesIt() throws IOException {
        SmallDay.write(folder);
        Files.writeString(
                folder.resolve("small.yaml"),
                SmallDay.SCENARIO
                        .replace("hard-synthetic\n", "hard-synthetic\n  fitted: " + FILE + "\n")
                        .replaceAll("measured: .*\n", ""));
        written = CentreFileAsJson.write(SOUND);
    }

    private static BallThrown ball(OptionalDouble speed, OptionalDouble spin) {
        return new BallThrown(
                OptionalInt.of(1),
                new When("A", 1),
                Optional.of("Anchor"),
                new BallSeen(
                        OptionalDouble.of(14),
                        OptionalDouble.of(11.5),
                        Optional.empty(),
                        OptionalDouble.of(17.25),
                        0.5),
                speed,
                spin,
                "balls.csv line 2");
    }

    /** Nobody knows who threw it where; it was seen on the lane alone. */
    private static BallThrown seenInPassing() {
        return new BallThrown(
                OptionalInt.empty(),
                new When("A", 2),
                Optional.empty(),
                new BallSeen(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.of(new BallSeen.Passed(12.192, 9.5)),
                        OptionalDouble.empty(),
                        1),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "balls.csv line 4");
    }

    @Test
    void whatIsWrittenIsReadBack() {
        assertThat(CentreFileFromJson.read(bytes(written), AT)).contains(SOUND);
    }

    @Test
    void aScenarioThatNamesItIsPlayedOnTheseLanes() throws IOException {
        Reading reading = read(written);

        assertThat(reading.notices()).noneMatch(notice -> notice.severity() == Severity.ERROR);
        assertThat(reading.namedFiles()).containsOnlyKeys(FILE);
        assertThat(reading.scenario().orElseThrow().event().centre().findings()).isEqualTo(SOUND.findings(HOUSE));
        assertThat(reading.scenario().orElseThrow().assumptions())
                .contains(new Assumption(
                        "centre.fitted",
                        "20 sets of values that published facts and what was measured here leave",
                        "7 readings of Small day \"one\""));
    }

    /** Two of them can be compared by eye, line by line. */
    @Test
    void everyReadingAndEverySetHasALineOfItsOwn() {
        assertThat(written.lines().filter(line -> line.contains("\"place\""))).hasSize(7);
        assertThat(written.lines().filter(line -> line.contains("\"drawnBy\""))).hasSize(20);
    }

    @Test
    void tapesOnAnotherPatternAreReadAndLeftOut() throws IOException {
        Reading reading = read(written.replace(HOUSE, PatternMark.of(OilPattern.of("House", 12, 24, 5))));

        assertThat(reading.scenario().orElseThrow().event().centre().findings())
                .isEqualTo(new Findings(SOUND.sets(), List.of(), List.of()));
    }

    @Test
    void oneOfOtherSetsIsRefusedWithTheCommandThatMakesItAnew() throws IOException {
        String old = written.replace(ValueSets.mark(), "abc").replace("\"unknowns\"", "\"somethingElse\"");

        assertThat(refusal(old))
                .startsWith("centre_file_old: centre.fitted is `lanes.json`, which was fitted from sets of values that"
                        + " this program no longer has.")
                .endsWith("make the file again: `lanetide fit small.yaml --centre lanes.json`.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "^.*|nothing at all|it is not JSON",
                "(?s)^.*|[1, 2]|it does not begin with \"centreFile\": 1",
                "(?s)^.*|{\"centreFile\": 2}|it does not begin with \"centreFile\": 1",
                "(?s)^.*|{\"centreFile\": 1}|`startedFrom` is no text",
                "(?s).{200}$|''|it is not JSON",
                "\"sets\": \\[(?s).*|\"sets\": []}|it holds no sets of values",
                "\"days\"|\"nights\"|`days` is no list",
                "\"end-floor\"|\"end-flour\"|its `unknowns` are not the 39 of this program",
                "\"drawnBy\":\"|\"drawnBy\":\"x|set 1 is drawn by no whole number",
                "\"values\":\\[|\"values\":[1,|set 1 has 40 values of 39 unknowns",
                "\"values\":\\[[^,]*|\"values\":[97|in set 1 absorption is 97 and must lie between 0.5 and 2.0",
                "\"values\":\\[[^,]*|\"values\":[\"a\"|in set 1 absorption is \"a\" and must lie between 0.5 and 2.0",
                "\"board\":20|\"board\":41|a value in it lies outside what is possible",
                "\"board\":20|\"board\":20.5|`board` is no whole number",
                "\"lane\":1|\"lane\":99999999999|`lane` is no whole number",
                "\"units\":38.0|\"units\":-38.0|a value in it lies outside what is possible",
                "\"units\":38.0|\"units\":1e999|`units` is no number",
                "\"pins\":201|\"pins\":301|a value in it lies outside what is possible",
                "\"event\":\"|\"event\":\"\\\\u001b[2J|`event` has characters that cannot be printed"
            })
    void whatIsNoneIsRefusedAndSaysWhy(String from, String to, String why) throws IOException {
        String broken = written.replaceFirst(from, to);
        assertThat(broken).isNotEqualTo(written);

        assertThat(refusal(broken))
                .startsWith(
                        "no_centre_file: centre.fitted is `lanes.json`, which must be a centre file as `lanetide fit`"
                                + " writes it, and is none: " + why + ".")
                .endsWith("Name the file that `lanetide fit SCENARIO --centre FILE` has written.");
    }

    @Test
    void oneLargerThanAllIsRefused() throws IOException {
        assertThat(refusal(written + " ".repeat(1 << 20))).contains("it is larger than 1 MB");
    }

    /** However a file is damaged, it is read or refused, and nothing escapes. */
    @Test
    void damageIsToldAndNothingEscapes() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            byte[] damaged = bytes(written);
            for (int hit = 0; hit <= i % 3; hit++) {
                damaged[random.nextInt(2500)] = (byte) random.nextInt(256);
            }
            Files.write(folder.resolve(FILE), damaged);

            assertThat(SmallDay.read(folder).notices())
                    .allSatisfy(notice ->
                            assertThat(notice.message()).endsWith(".").doesNotContain("Exception", "null", "\u001b"));
        }
    }

    private String refusal(String text) throws IOException {
        Reading reading = read(text);

        assertThat(reading.scenario()).isEmpty();
        List<Notice> errors = reading.notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .toList();
        assertThat(errors).hasSize(1);
        return errors.get(0).code().code() + ": " + errors.get(0).message();
    }

    private Reading read(String text) throws IOException {
        Files.writeString(folder.resolve(FILE), text);
        return SmallDay.read(folder);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
