package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Scenarios written back by {@code check --write} as they have changed on the day. */
class ChangedScenarioTest {
    @TempDir
    Path folder;

    private Path copy(String name) throws IOException {
        for (String end : List.of(".yaml", ".csv")) {
            Path file = Scenarios.FOLDER.resolve(name + end);
            if (Files.exists(file)) {
                Files.copy(file, folder.resolve(name + end));
            }
        }
        return folder.resolve(name + ".yaml");
    }

    private static Program.Outcome run(String command, Path scenario, String options, String... more) {
        List<Object> words = new ArrayList<>(List.of(command, scenario));
        Arrays.stream(options.split(" ", -1)).filter(word -> !word.isEmpty()).forEach(words::add);
        words.addAll(List.of(more));
        return Program.run(words.toArray());
    }

    /** An answer without what it was made from and rests on. */
    private static String answer(String command, Path scenario, String options, String... more) {
        Program.Outcome outcome = run(command, scenario, options, more);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        ObjectNode answer = (ObjectNode) JsonMapper.shared().readTree(outcome.out());
        answer.remove(List.of("scenarioSha256", "namedFilesSha256", "assumptions"));
        return answer.toPrettyString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "club-final --no-shows Cedar --late B=30min",
                "club-final --without 1-2 --no-shows A=5",
                "small-open --no-shows A=2,C=1 --late B=1h",
                "shared-lanes --late B=30min"
            })
    void theWrittenScenarioGivesTheAnswerOfTheOptions(String words) throws IOException {
        Path scenario = copy(words.substring(0, words.indexOf(' ')));
        String options = words.substring(words.indexOf(' ') + 1);
        Path now = folder.resolve("now.yaml");
        String[] playing = {"--replications", "1", "--sets", "usual", "--format", "json", "--quiet"};

        assertThat(run("check", scenario, options, "--write", now.toString()).exitCode())
                .isZero();

        assertThat(answer("simulate", now, "", playing)).isEqualTo(answer("simulate", scenario, options, playing));
        assertThat(Files.readString(now)).startsWith("# " + scenario.getFileName() + " as changed on the day");
    }

    /** What is written is read again and held to the changed event before it is written. */
    @Test
    void anOpenOf352StartsIsWrittenWithWhoStaysAwayAndWithoutLostPairs() throws IOException {
        Path scenario = copy("two-day-open");
        Path now = folder.resolve("now.yaml");

        Program.Outcome outcome =
                run("check", scenario, "--no-shows A=12 --without 1-2,3-4", "--write", now.toString());

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(Files.readString(now).split("comes: no", -1)).hasSize(13);
    }

    @Test
    void whoWaitsTakesThePlacesOfThoseWhoStayAwayInOrder() throws IOException {
        String entry = "  - {hand: right, style: tweener, level: league, cover: urethane, squad: %s, id: %s%s}%n";
        StringBuilder text = new StringBuilder("""
                name: Doubles
                centre: {lanes: 1 to 4, surface: hard-synthetic}
                pattern: {length: 39 ft, volume: 23 mL, ratio: 4:1}
                games: 1
                squads:
                  - {id: A, start: "09:00", oil: fresh}
                  - {id: B, start: "14:00", oil: fresh}
                entries:
                """);
        for (String bowler : List.of("A a1", "A a2", "A a3", "A a4", "B b1", "B b2")) {
            text.append(String.format(Locale.ROOT, entry, bowler.substring(0, 1), bowler.substring(2), ""));
        }
        for (String bowler : List.of("B w1", "A w2", "A w3", "A w4")) {
            text.append(
                    String.format(Locale.ROOT, entry, bowler.substring(0, 1), bowler.substring(2), ", comes: waiting"));
        }
        Path scenario = Files.writeString(folder.resolve("doubles.yaml"), text.toString());
        Path now = folder.resolve("now.yaml");
        String[] playing = {"--replications", "1", "--sets", "usual", "--format", "json", "--quiet"};

        String told = run("check", scenario, "--no-shows a4,a1", "--write", now.toString())
                .out()
                .replaceAll("\\s+", " ");

        assertThat(told)
                .contains("w2, who waited, takes the place of a1 in squad A, group 1.")
                .contains("w3, who waited, takes the place of a4 in squad A, group 2.")
                .contains("Waiting for a place in squad A, in this order: w4.")
                .contains("Waiting for a place in squad B, in this order: w1.");
        assertThat(answer("simulate", now, "", playing))
                .isEqualTo(answer("simulate", scenario, "--no-shows a4,a1", playing));
        assertThat(run("check", now, "").out()).contains("Waiting for a place in squad A, in this order: w4.");
    }

    @Test
    void aWrittenScenarioCanChangeAgain() throws IOException {
        Path scenario = copy("small-open");
        Path now = folder.resolve("now.yaml");
        Path later = folder.resolve("later.yaml");
        run("check", scenario, "--no-shows A=2", "--write", now.toString());

        Program.Outcome outcome = run("check", now, "--without 1-2", "--write", later.toString());

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(Files.readString(later)).contains("comes: no", "design: listed", "as changed, as changed");
        assertThat(outcome.out()).contains("go to another pair");
    }

    @Test
    void nothingIsWrittenOverTheScenarioOrWhatItCannotSay() throws IOException {
        Path scenario = copy("club-night");
        String before = Files.readString(scenario);
        Path now = folder.resolve("now.yaml");

        Program.Outcome over = run("check", scenario, "", "--write", scenario.toString());
        Program.Outcome drawn = run("check", scenario, "--no-shows 3", "--write", now.toString());

        assertThat(over.exitCode()).isEqualTo(2);
        assertThat(Files.readString(scenario)).isEqualTo(before);
        assertThat(drawn.exitCode()).isEqualTo(2);
        assertThat(drawn.err()).contains("drawn by shares");
        assertThat(now).doesNotExist();
    }
}
