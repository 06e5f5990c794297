package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.FewPlayings;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Runs every example of every help in a shell, in a folder with the shipped scenarios and a reader's own files. Little
 * is played: few playings, and of the dearest scenarios few games and four bowlers on a pair at most.
 */
@Tag("slow")
class ExamplesTest {
    private static final String PROGRAM = "lanetide ";
    private static final Pattern WRITTEN =
            Pattern.compile("(?:-o|--into|--centre|--dot|--shot-log|>) ([a-z-]+(?:\\.[a-z.]+)?)");

    private static final Map<String, Map<String, String>> SHORTER = Map.of(
            "club-night.yaml", Map.of("games: 3", "games: 2", "perSquad: 40", "perSquad: 8"),
            "club-final.yaml", Map.of("games: 6", "games: 4"),
            "championship.yaml", Map.of("games: 8", "games: 2", "perSquad: 60", "perSquad: 24"),
            "one-pair.yaml", Map.of("games: 6", "games: 2"));

    @TempDir
    Path folder;

    @BeforeEach
    void laysOutTheFiles() throws IOException {
        Files.createDirectory(folder.resolve("scenarios"));
        try (Stream<Path> files = Files.list(Scenarios.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve("scenarios").resolve(file.getFileName());
                Files.copy(file, copy);
                if (SHORTER.containsKey(file.getFileName().toString())) {
                    Files.writeString(copy, shorter(file));
                }
            }
        }
        Files.copy(Scenarios.FOLDER.resolve("club-final.csv"), folder.resolve("entries.csv"));
        Files.writeString(folder.resolve("tapes.csv"), "lane,distance,board,units\n1,8,20,38\n2,8,20,31\n");
        String measured = shorter(Scenarios.FOLDER.resolve("one-pair.yaml")) + "measured: tapes.csv\n";
        Files.writeString(folder.resolve("monday.yaml"), measured);
        // The tutorial's test fits the whole of this evening.
        Files.writeString(folder.resolve("scenarios").resolve("measured-night.yaml"), measured);
        Files.copy(folder.resolve("tapes.csv"), folder.resolve("scenarios").resolve("tapes.csv"));
        Files.writeString(folder.resolve("tuesday.yaml"), measured.replace("seed: 3", "seed: 4"));
    }

    private static String shorter(Path scenario) throws IOException {
        String text = Files.readString(scenario);
        for (Map.Entry<String, String> edit :
                SHORTER.get(scenario.getFileName().toString()).entrySet()) {
            String longer = text;
            text = text.replaceFirst("(?m)^( *)" + edit.getKey() + "$", "$1" + edit.getValue());
            assertThat(text).isNotEqualTo(longer);
        }
        return text;
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.HelpTest#examples")
    void itDoesWhatItIsShownFor(String example) throws IOException {
        String own = example.contains("my-night.yaml") ? "my-night.yaml" : "my-event.yaml";
        if (!example.contains("lanetide new")) {
            Files.writeString(
                    folder.resolve(own),
                    shorter(Scenarios.FOLDER.resolve("club-night.yaml")).replace("length: 40 ft", "length: 37 ft"));
        }

        if (example.contains("lanetide merge")) {
            for (int part = 1; part <= 2; part++) {
                playsPart(part);
            }
        }
        Program.Outcome outcome = new Shell(folder).run(played(example));

        List<Integer> good = example.contains("--until-halfwidth") || example.contains("--fail-if-unfair")
                ? List.of(ExitCode.DONE, ExitCode.CONDITION_FAILS)
                : List.of(ExitCode.DONE);
        assertThat(outcome.exitCode()).as(outcome.err()).isIn(good);
        assertThat(outcome.err()).doesNotContain("lanetide: ", "Exception");
        Matcher written = WRITTEN.matcher(example);
        boolean toFiles = false;
        while (written.find()) {
            toFiles = true;
            assertThat(folder.resolve(written.group(1))).exists();
        }
        assertThat(outcome.out().isEmpty()).isEqualTo((toFiles && isSilent(example)) || example.startsWith("source"));
    }

    private static String played(String example) {
        return example.startsWith(PROGRAM) ? PROGRAM + FewPlayings.of(example.substring(PROGRAM.length())) : example;
    }

    private void playsPart(int part) {
        Path scenario = folder.resolve("scenarios").resolve("one-pair.yaml");
        Path playings = folder.resolve("part-" + part + ".txt");
        Program.run("simulate", scenario, "--replications", "2", "--resume", playings, "--part", part + "/2");
        assertThat(playings).exists();
    }

    /** Whether a command that writes files prints nothing besides. */
    private static boolean isSilent(String example) {
        return !example.contains("--into")
                && !example.contains("lanetide new")
                && !example.matches(".*(--centre|--dot|--shot-log).*");
    }
}
