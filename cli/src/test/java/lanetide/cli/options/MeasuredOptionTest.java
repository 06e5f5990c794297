package lanetide.cli.options;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenarios;
import lanetide.squads.measured.Measurements;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tables of measurements that an option names. */
class MeasuredOptionTest {
    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();

    @Command(name = "asks")
    static final class Asks {
        @Mixin
        private CommonOptions options;

        @Mixin
        private MeasuredOption measured;
    }

    @BeforeEach
    void writesFiles() throws IOException {
        write("event.yaml", Scenarios.SOUND + "measured: tapes.csv\n");
        write("tapes.csv", "lane,distance,board,units\n1,22,10,31\n");
        write("more.csv", "lane,distance,board,units\n1,22,20,44\n");
        write("scores.csv", "game,bowler,score\n1,A-01,187\n");
        write("faulty.csv", "game,bowler,score\n1,A-01,187\n1,A-09,187\n1,A-02,301\n");
    }

    @Test
    void everyTableThatIsNamedAddsToTheScenario() {
        Reading reading = read("--measured", path("more.csv"), "--measured", path("scores.csv"));
        Measurements known = reading.scenario().orElseThrow().measurements();

        assertThat(known.tapes())
                .extracting(tape -> tape.place())
                .containsExactly("tapes.csv line 2", "more.csv line 2");
        assertThat(known.scores()).hasSize(1);
        assertThat(reading.namedFiles()).containsOnlyKeys("more.csv", "scores.csv", "tapes.csv");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void withoutItTheScenarioStandsAsItIs() {
        assertThat(read().scenario().orElseThrow().measurements().tapes()).hasSize(1);
    }

    @Test
    void allFaultsAreToldAndTheCommandStopsAsForAWrongScenario() {
        refuses(ExitCode.CANNOT_RUN, "The tables that --measured names have errors", "--measured", path("faulty.csv"));

        assertThat(unwrapped())
                .contains("faulty.csv line 3: bowler is `A-09`, who does not bowl in squad A", "[unknown_name]")
                .contains("line 4: score is `301 pins`", "[out_of_range]");
    }

    @Test
    void whatIsWrongInManyRowsIsToldOnce() throws IOException {
        String strangers =
                IntStream.range(0, 400).mapToObj(i -> "1,Nobody" + i + ",200\n").collect(Collectors.joining());
        write("strangers.csv", "game,bowler,score\n" + strangers);
        write("long.csv", "game,bowler,score\n" + strangers.replace(",200", ",200,5"));
        write("alike.csv", "game,bowler,score\n" + "1,A-01,301\n".repeat(400));

        for (String name : new String[] {"strangers.csv", "long.csv"}) {
            refuses(ExitCode.CANNOT_RUN, "errors", "--measured", path(name));
            assertThat(unwrapped()).contains("Something like it 394 times more, on lines 8 to 401.");
        }
        refuses(ExitCode.CANNOT_RUN, "errors", "--measured", path("alike.csv"));
        assertThat(unwrapped()).contains("The same 399 times more, on lines 3 to 401.");
        assertThat(err.toString().lines()).hasSizeLessThan(10);
    }

    @Test
    void aTableThatTheScenarioNamesAlreadyIsRefused() {
        refuses(ExitCode.CANNOT_RUN, "errors", "--measured", path("tapes.csv"));

        assertThat(unwrapped()).contains("holds the same as one that is read already", "[table_twice]");
    }

    @Test
    void aTableThatCannotBeReadIsFileTrouble() {
        refuses(ExitCode.FILE_TROUBLE, "There is no table", "--measured", path("none.csv"));
        refuses(ExitCode.FILE_TROUBLE, "is a folder", "--measured", folder.toString());
    }

    @Test
    void noAnswerReplacesATable() throws IOException {
        Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("scores.csv"));
        for (String output : new String[] {"scores.csv", "link.csv"}) {
            refuses(
                    ExitCode.CANNOT_RUN,
                    "The answer would replace " + path("scores.csv") + ", which is read for it",
                    "--measured",
                    path("scores.csv"),
                    "-o",
                    path(output));
        }
    }

    private void refuses(int exitCode, String message, String... words) {
        assertThatThrownBy(() -> read(words))
                .isInstanceOfSatisfying(
                        CommandFailure.class,
                        failure -> assertThat(failure.exitCode()).isEqualTo(exitCode))
                .hasMessageContaining(message);
    }

    private Reading read(String... words) {
        err.getBuffer().setLength(0);
        Asks asks = new Asks();
        CommandLine command = new CommandLine(asks).setErr(new PrintWriter(err));
        command.parseArgs(Stream.concat(Stream.of(path("event.yaml")), Arrays.stream(words))
                .toArray(String[]::new));
        asks.options.answerFile();
        return asks.measured.read(asks.options, asks.options.read());
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private String unwrapped() {
        return err.toString().replaceAll("\\s+", " ");
    }
}
