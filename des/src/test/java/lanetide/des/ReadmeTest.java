package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Tally;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;

/** The example in the README is this one, and prints what the README says. */
class ReadmeTest {

    @Test
    void theExampleOfTheReadmeIsTheCodeBelow() throws IOException {
        String source = Files.readString(Path.of("src/test/java/lanetide/des/ReadmeTest.java"));
        String example = source.split("// example (begin|end)s here\n", -1)[1]
                .stripIndent()
                .strip();
        assertThat(Files.readString(Path.of("README.md"))).contains("```java\n" + example + "\n```");
    }

    @Test
    void theExamplePrintsWhatTheReadmeSays() throws IOException {
        assertThat(Files.readString(Path.of("README.md"))).contains("```text\n" + example() + "\n```");
    }

    @Test
    void everyCheckOfTheReadmeIsHeldByTheTestThatComputesItsFigure() throws IOException {
        StringBuilder tests = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                tests.append(Files.readString(file));
            }
        }

        assertThat(ReadmeRow.checks())
                .hasSizeGreaterThan(20)
                .allSatisfy(check ->
                        assertThat(tests).contains('"' + check.substring(0, Math.min(12, check.length()))));
    }

    /** All rows are held by their tests; of the two of the benchmark none is. */
    @Test
    void theReadmeClosesWithHowManyRowsAreMet() throws IOException {
        Path readme = Path.of("README.md");
        String text = Files.readString(readme);
        long closedForms = text.lines()
                .filter(line -> line.matches(".* \\| [+-][0-9.]+ \\|"))
                .count();
        long within = text.lines()
                .filter(line -> line.matches(".* \\| [+-][0-2]\\.[0-9] \\|"))
                .count();
        long open =
                text.lines().filter(line -> line.matches("\\| .*: OPEN.* \\|")).count();
        String counts = "Met of all: closed forms " + within + " of " + closedForms + "; other checks "
                + ReadmeRow.checks().size() + " of " + ReadmeRow.checks().size() + "; OPEN in the benchmark: " + open
                + ".";
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(readme, text.replaceAll("(?m)^Met of all: .*$", counts));
            return;
        }

        assertThat(text).contains("\n" + counts + "\n");
    }

    private static String example() {
        // example begins here
        IntFunction<Double> gameMinutes = replication -> {
            Simulator simulator = new Simulator();
            UniformRandomProvider pace = new RandomStreams(42).forReplication(replication).stream("bowler/1/pace");
            Runnable shot = new Runnable() {
                @Override
                public void run() {
                    if (simulator.executedEvents() < 20) {
                        simulator.schedule(pace.nextLong(20_000, 40_000), 0, "shot", this);
                    }
                }
            };
            shot.run();
            simulator.run();
            return simulator.nowMs() / 60_000.0;
        };
        Tally minutes = new Tally("minutes for 20 shots");
        Replications.run(100, 2, gameMinutes, done -> {}).forEach(minutes::add);
        ConfidenceInterval mean = minutes.meanInterval(0.95);
        // example ends here
        return String.format(
                Locale.ROOT, "%.2f minutes (95 %%: %.2f to %.2f)", minutes.mean(), mean.low(), mean.high());
    }
}
