package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hundred and thirty faults with one cause are one notice for people, and all of them for programs. */
class FloodTest {
    private static final int ENTRIES = 130;

    @TempDir
    private Path folder;

    private Path scenario(IntFunction<String> style) throws IOException {
        String rows = IntStream.range(0, ENTRIES)
                .mapToObj(i -> "B" + i + ",R," + style.apply(i) + ",League,Medium reactive,A\n")
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("list.csv"), "Name,Hand,Style,Level,Ball,Squad\n" + rows);
        return Files.writeString(
                folder.resolve("event.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("club-final.yaml")).replace("club-final.csv", "list.csv"));
    }

    private static String unwrapped(Program.Outcome outcome) {
        return outcome.out().replaceAll("\\s+", " ");
    }

    @Test
    void aWordMisspeltInAWholeColumnIsToldOnce() throws IOException {
        Program.Outcome text = Program.run("check", scenario(i -> "Strokr"));

        assertThat(unwrapped(text))
                .contains(ENTRIES + " errors", "Did you mean stroker?", "The same 129 times more, on lines 3 to 131.");
        assertThat(text.out().lines()).hasSizeLessThan(20);
        Program.Outcome json = Program.run("check", scenario(i -> "Strokr"), "--format", "json");
        assertThat(json.answer().get("notices")).hasSizeGreaterThanOrEqualTo(ENTRIES);
    }

    @Test
    void ofManyFaultsOfAKindFiveAreToldAndWhereTheOthersAre() throws IOException {
        String text = unwrapped(Program.run("check", scenario(i -> i == 3 ? "Stroker" : "Unheard" + i)));

        assertThat(text).contains("line 2:", "unheard0", "unheard4", "unheard6", "Something like it 123 times more");
        assertThat(text).doesNotContain("unheard7");
    }

    @Test
    void faultsWithACauseOfTheirOwnAreAllTold() throws IOException {
        String text = unwrapped(Program.run("check", scenario(i -> i == 7 ? "Strokr" : i == 9 ? "Powr" : "Stroker")));

        assertThat(text).contains("line 9:", "line 11:").doesNotContain("times more", "time more");
    }
}
