package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that are killed for good, which cannot tidy up. {@code -Dlanetide.kills=N} kills more of them. */
@Tag("slow")
class KilledTest {
    private static final int KILLS = Integer.getInteger("lanetide.kills", 8);

    @TempDir
    private Path folder;

    /** Each file by itself is the older one or the new one; of several, one may be new and another not yet. */
    @Test
    void whatAKilledRunWasToWriteIsThereWholeOrAsItWas() throws Exception {
        Path scenario = Files.copy(Scenarios.FOLDER.resolve("one-pair.yaml"), folder.resolve("event.yaml"));
        List<Path> files = Stream.of("answer.txt", "shots.csv", "trace.txt")
                .map(folder::resolve)
                .toList();
        List<Object> words = List.of(
                "simulate",
                scenario,
                "--replications",
                4,
                "-o",
                files.get(0),
                "--shot-log",
                files.get(1),
                "--trace",
                files.get(2));
        assertThat(Program.runWith(words).exitCode()).isZero();
        List<String> whole = contents(files);
        Random random = new Random(18);
        int killed = 0;
        for (int run = 0; run < KILLS; run++) {
            for (Path file : files) {
                Files.writeString(file, "older");
            }
            Process process = new Shell(folder).starting(words.toArray());
            if (!process.waitFor(100 + random.nextInt(2_400), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly().waitFor();
                killed++;
            } else {
                assertThat(process.exitValue()).as("a run that ended by itself").isZero();
            }
            List<String> now = contents(files);
            for (int i = 0; i < now.size(); i++) {
                assertThat(now.get(i)).as("%s of run %d", files.get(i), run).isIn("older", whole.get(i));
            }
            assertThat(scenario).hasSameTextualContentAs(Scenarios.FOLDER.resolve("one-pair.yaml"));
        }
        assertThat(killed).isPositive();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.filter(file -> !files.contains(file) && !file.equals(scenario)))
                    .allMatch(file -> file.getFileName().toString().endsWith(".part"));
        }
    }

    private static List<String> contents(List<Path> files) throws IOException {
        List<String> contents = new ArrayList<>();
        for (Path file : files) {
            contents.add(Files.readString(file));
        }
        return contents;
    }
}
