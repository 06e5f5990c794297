package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** No file that a run reads is written over by the run, whatever the file is called. */
class InputsAreKeptTest {
    private static final String ENTRIES = """
            name,hand,style,level,cover
            Leadoff,right,stroker,league,plastic
            Anchor,left,tweener,scratch,urethane
            """;

    private static final String TAPES = """
            distance,board,units
            8 ft,5,20
            8 ft,20,60
            30 ft,20,30
            """;

    private static final String SCENARIO = Scenarios.SOUND
            .replace("  ratio: 4:1\n", "  tapes: {file: tapes.csv}\n")
            .replace("  volume: 23 mL\n", "")
            .replaceAll("(?s)field:.*", "entries: entries.csv\nmeasured: [scores.csv]\n");

    /** Every option that names a file to be written, in its quickest command; FILE stands for the file. */
    private static final List<String> WRITERS = List.of(
            "check event.yaml -o FILE",
            "compare event.yaml other.yaml --replications 2 -o FILE",
            "compare other.yaml event.yaml --replications 2 -o FILE",
            "fairness event.yaml --replications 10 --remedies 0 -o FILE",
            "fit event.yaml -o FILE",
            "fit event.yaml --centre FILE",
            "fit other.yaml --measured read.csv --day event.yaml --centre FILE",
            "lines event.yaml --style power --surface wood -o FILE",
            "new --entries entries.csv --yes -o FILE",
            "pattern event.yaml -o FILE",
            "preview event.yaml --bowler Anchor --replications 1 -o FILE",
            "reoil event.yaml --replications 4 --games 2 -o FILE",
            "report event.yaml --replications 1 --fairness 0 --reoil 0 -o FILE",
            "rotate event.yaml -o FILE",
            "rotate event.yaml --graphml FILE",
            "rotate event.yaml --dot FILE",
            "sheets event.yaml --replications 1 --into print -o FILE",
            "simulate event.yaml --replications 1 -o FILE",
            "simulate event.yaml --replications 1 --shot-log FILE",
            "simulate event.yaml --replications 1 --trace FILE");

    @TempDir
    Path folder;

    @BeforeEach
    void writesWhatIsRead() throws IOException {
        Files.writeString(folder.resolve("event.yaml"), SCENARIO);
        Files.writeString(folder.resolve("other.yaml"), Scenarios.SOUND);
        Files.writeString(folder.resolve("entries.csv"), ENTRIES);
        Files.writeString(folder.resolve("tapes.csv"), TAPES);
        Files.writeString(folder.resolve("read.csv"), "lane,squad,distance,board,units\n1,A,8 ft,20,30\n");
        Files.writeString(folder.resolve("scores.csv"), "game,bowler,score\n1,Anchor,187\n");
    }

    @ParameterizedTest
    @MethodSource("writersAndInputs")
    void noOutputMayBeAnInput(String words, String input) throws IOException {
        refuses(words, folder.resolve(input));
    }

    @ParameterizedTest
    @CsvSource({"event.yaml", "entries.csv", "tapes.csv"})
    void anInputIsKnownUnderEveryNameItHas(String input) throws IOException {
        Path file = folder.resolve(input);
        Files.createDirectory(folder.resolve("side"));
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), file);
        Path hard = Files.createLink(folder.resolve("hard.csv"), file);
        Path roundabout = folder.resolve("side").resolve("..").resolve(input);
        Path byFolder = Files.createSymbolicLink(folder.resolve("here"), folder).resolve(input);

        for (Path name : List.of(link, hard, roundabout, byFolder)) {
            refuses("rotate event.yaml --dot FILE", name);
            refuses("simulate event.yaml --replications 1 --shot-log FILE", name);
        }
    }

    @ParameterizedTest
    @CsvSource({"event.yaml,assignments.html", "entries.csv,assignments.csv", "tapes.csv,calendar.ics"})
    void noSheetMayBeAnInput(String input, String sheet) throws IOException {
        Files.createDirectory(folder.resolve("print"));
        Files.createLink(folder.resolve("print").resolve(sheet), folder.resolve(input));

        refuses("sheets event.yaml --replications 1 --first-day 2027-03-06 --into FILE", folder.resolve("print"));
    }

    @Test
    void aListThatWouldBeASheetIsKeptWhereItLies() throws IOException {
        Files.writeString(folder.resolve("assignments.csv"), ENTRIES);
        Files.writeString(folder.resolve("event.yaml"), SCENARIO.replace("entries.csv", "assignments.csv"));

        refuses("sheets event.yaml --replications 1 --into FILE", folder);
    }

    @Test
    void anInputWithFaultsIsKeptToo() throws IOException {
        Files.writeString(folder.resolve("tapes.csv"), "no,tapes\n");

        refuses("check event.yaml -o FILE", folder.resolve("tapes.csv"));
    }

    @Test
    void aCentreFileThatIsNamedIsKeptWhateverIsInIt() throws IOException {
        Files.writeString(folder.resolve("lanes.json"), "{}");
        Files.writeString(folder.resolve("event.yaml"), SCENARIO.replace("centre:", "centre:\n  fitted: lanes.json"));

        refuses("check event.yaml -o FILE", folder.resolve("lanes.json"));
        refuses("simulate event.yaml --replications 1 -o FILE", folder.resolve("lanes.json"));
        refuses("fit event.yaml --centre FILE", folder.resolve("lanes.json"));
    }

    @Test
    void theCentreFileIsNoSecondNameOfTheAnswer() throws IOException {
        Program.Outcome outcome = run("fit event.yaml --centre FILE -o FILE", folder.resolve("lanes.json"));

        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains("--centre and --out name the same file");
        assertThat(folder.resolve("lanes.json")).doesNotExist();
    }

    @Test
    void theTableOfTheSheetsIsNoSecondNameOfTheirList() throws IOException {
        Path print = Files.createDirectory(folder.resolve("print"));
        Path here = Files.createSymbolicLink(folder.resolve("here"), print);

        Program.Outcome outcome =
                run("sheets event.yaml --replications 1 --into print -o FILE", here.resolve("cards.html"));

        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains("name the same file");
        assertThat(print).isEmptyDirectory();
    }

    static Stream<Arguments> writersAndInputs() {
        return WRITERS.stream()
                .flatMap(words -> Stream.of("event.yaml", "entries.csv", "tapes.csv", "scores.csv")
                        .filter(input -> !words.startsWith("new") || input.equals("entries.csv"))
                        .map(input -> Arguments.of(words, input)));
    }

    private void refuses(String words, Path file) throws IOException {
        Map<Path, String> before = files();

        Program.Outcome outcome = run(words, file);

        assertThat(outcome.exitCode()).as(words + outcome.err()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err())
                .containsPattern("would replace|There is a file")
                .contains("name another");
        assertThat(outcome.out()).isEmpty();
        assertThat(files()).isEqualTo(before);
    }

    private Program.Outcome run(String words, Path file) {
        List<Object> line = new ArrayList<>();
        for (String word : words.split(" ", -1)) {
            boolean isFile = word.endsWith(".yaml") || word.equals("read.csv") || word.equals("print");
            line.add(word.equals("FILE") ? file : isFile ? folder.resolve(word) : word);
        }
        return Program.run(line.toArray());
    }

    private Map<Path, String> files() throws IOException {
        Map<Path, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(file, Files.readString(file, StandardCharsets.UTF_8));
            }
        }
        return contents;
    }
}
