package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.Notice;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies beyond what the model was held to is answered, and every answer says that it is doubtful. */
class DoubtsTest {
    private static final String FAR_FETCHED = "far from what is usual, from 12 mL to 40 mL";
    private static final String NO_LINE = "No line meets the pocket on the fresh pattern for stroker";
    private static final String UNHEARD_OF = "Mean scores are such as nobody bowls";

    @TempDir
    private Path folder;

    private Path onePair(String key, String value) throws IOException {
        String text = Files.readString(Scenarios.FOLDER.resolve("one-pair.yaml"))
                .replaceAll("(?m)^( *)" + key + ": .*$", "$1" + Matcher.quoteReplacement(key + ": " + value));
        return Files.writeString(folder.resolve("event.yaml"), text);
    }

    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "pattern",
                "lines --surface wood",
                "rotate",
                "simulate --replications 1",
                "preview --bowler Anchor --replications 1",
                "reoil --replications 4 --games 2",
                "fairness --replications 10 --bounds 0 --remedies 0"
            })
    void aLaneWithNextToNoOilMakesEveryAnswerDoubtful(String command) throws IOException {
        List<String> words = List.of(command.split(" ", -1));
        Path scenario = onePair("volume", "0.1 mL");
        Object[] options = words.subList(1, words.size()).toArray();

        Program.Outcome text = Program.runWith(List.of(words.get(0), scenario), options);
        Program.Outcome json = Program.runWith(List.of(words.get(0), scenario, "--format", "json"), options);

        assertThat(text.exitCode()).isZero();
        assertThat(unwrapped(text.out())).contains(FAR_FETCHED, NO_LINE);
        assertThat(json.answer().get("doubts").toString()).contains(FAR_FETCHED, NO_LINE);
        assertThat(unwrapped(text.out() + text.err())).contains("[implausible_value]", "[no_line_to_pocket]");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "simulate --replications 1 SCENARIO",
                "fairness --replications 10 --bounds 0 --remedies 0 SCENARIO",
                "compare --replications 2 SCENARIO SCENARIO"
            })
    void meansThatNobodyBowlsAreTold(String command) throws IOException {
        Path scenario = onePair("volume", "0.1 mL");

        Program.Outcome outcome = Program.run(
                (Object[]) command.replace("SCENARIO", scenario.toString()).split(" ", -1));

        assertThat(unwrapped(outcome.out())).contains(UNHEARD_OF);
        assertThat(unwrapped(outcome.err())).contains(UNHEARD_OF);
    }

    @Test
    void whatIsHungUpAndHandedOutSaysOnItsFirstPageThatItIsDoubtful() throws IOException {
        Path into = folder.resolve("print");

        Program.Outcome outcome =
                Program.run("sheets", onePair("volume", "0.1 mL"), "--into", into, "--replications", 1);

        assertThat(outcome.exitCode()).isZero();
        for (String name : List.of("assignments.html", "oiling.html", "cards.html")) {
            assertThat(Jsoup.parse(into.resolve(name).toFile())
                            .select("header .doubt")
                            .text())
                    .as(name)
                    .contains("Doubtful: ", FAR_FETCHED, NO_LINE, UNHEARD_OF);
        }
    }

    @Test
    void meansThatBowlersBowlAreNotDoubted() {
        Program.Outcome outcome =
                Program.run("simulate", Scenarios.FOLDER.resolve("one-pair.yaml"), "--replications", 1);

        assertThat(outcome.out()).doesNotContain("doubtful");
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void aFilmThickerThanFrictionWasHeldToIsTold() throws IOException {
        Path scenario = onePair("volume", "40 mL");

        assertThat(unwrapped(Program.run("check", scenario).out()))
                .contains("held to heads of up to 120 units", "[film_beyond_friction]", "1 warning");
    }

    @ParameterizedTest
    @CsvSource({
        "volume, 11.9 mL, 12 mL",
        "volume, 40.1 mL, 40 mL",
        "length, 29.9 ft, 30 ft",
        "length, 52.1 ft, 52 ft",
        "length, 16 m, 15.8 m",
        "ratio, 12.1:1, 12:1",
        "games, 25, 24"
    })
    void beyondALimitAValueIsFarFetchedAndAtTheLimitItIsNot(String key, String beyond, String limit)
            throws IOException {
        assertThat(farFetched(onePair(key, beyond)))
                .singleElement()
                .satisfies(notice -> assertThat(notice.value()).isEqualTo(beyond))
                .satisfies(notice -> assertThat(notice.field()).endsWith(key))
                .satisfies(notice -> assertThat(notice.line()).isGreaterThan(1));
        assertThat(farFetched(onePair(key, limit))).isEmpty();
    }

    private static List<Notice> farFetched(Path scenario) throws IOException {
        Reading reading =
                new ScenarioReader(OptionalLong.empty()).read(scenario.toString(), Files.readAllBytes(scenario));
        assertThat(reading.scenario()).isPresent();
        return reading.notices().stream()
                .filter(notice -> notice.code().code().equals("implausible_value"))
                .toList();
    }

    @Test
    void noScenarioThatShipsIsDoubtful() {
        for (Path scenario : Scenarios.shipped()) {
            assertThat(unwrapped(Program.run("check", scenario).out()))
                    .as(scenario.toString())
                    .contains("no errors")
                    .doesNotContain("implausible_value", "film_beyond_friction", "no_line_to_pocket");
        }
    }

    @Test
    void checkNamesTheCommandsThatHaveNoAnswer() throws IOException {
        Path scenario = Files.writeString(
                folder.resolve("alone.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("one-pair.yaml"))
                        .replaceAll("(?m)^  - \\{id: Leadoff.*\n", ""));
        String why = "The scenario has a single bowler, and fairness needs two to change seats.";

        assertThat(unwrapped(Program.run("check", scenario).out()))
                .contains("`lanetide fairness` has no answer. " + why + " [command_without_answer]");
        Program.Outcome refused = Program.run("fairness", scenario);
        assertThat(refused.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(refused.err()).contains(why);
        assertThat(Program.run("check", Scenarios.FOLDER.resolve("one-pair.yaml"))
                        .out())
                .doesNotContain("command_without_answer");
    }
}
