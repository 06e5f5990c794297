package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
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

    /** Bytes and not seconds, since a build may run beside others. */
    @Test
    void twiceAsManyFaultsTakeTwiceTheWork() throws IOException {
        worked(2_000);
        long few = worked(4_750);
        long many = worked(19_000);

        assertThat(many).isLessThan(5 * few);
    }

    private long worked(int entries) throws IOException {
        Path scenario = flood(entries);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();

        Program.Outcome outcome = Program.run("check", scenario);

        assertThat(unwrapped(outcome)).contains(3 * entries + " errors");
        assertThat(outcome.out().lines()).hasSizeLessThan(60);
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    @Test
    void aFloodOfOtherFaultsIsCountedInTextAndWholeInJson() throws IOException {
        Path scenario = Files.writeString(
                folder.resolve("keys.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("one-pair.yaml"))
                        + IntStream.range(0, 1_250)
                                .mapToObj(i -> "zzzzzzzz" + i + ": 1\n")
                                .collect(Collectors.joining()));

        String text = unwrapped(Program.run("check", scenario));

        assertThat(text)
                .contains("`zzzzzzzz49`", "And 1 200 more; `lanetide check --all` tells them.")
                .doesNotContain("`zzzzzzzz50`");
        assertThat(unwrapped(Program.run("check", scenario, "--all")))
                .contains("`zzzzzzzz1249`")
                .doesNotContain("--all");
        assertThat(Program.run("check", scenario, "--format", "json").answer().get("notices"))
                .hasSize(1_250);
        assertThat(unwrapped(
                        new Program.Outcome(0, Program.run("lines", scenario).err(), "")))
                .contains("And 1 200 more");
    }

    @Test
    void aCheckStopsWhenItIsInterrupted() throws IOException {
        Path scenario = flood(ENTRIES);
        Thread.currentThread().interrupt();
        try {
            Notices notices = new Notices("event.yaml");

            assertThatThrownBy(() -> notices.add(NoticeCode.BAD_TEXT, Place.START, "name", "x", "The name is wrong."))
                    .isInstanceOf(CancellationException.class);
            assertThat(Program.run("check", scenario).exitCode()).isEqualTo(ExitCode.INTERRUPTED);
        } finally {
            Thread.interrupted();
        }
    }

    /** Entries with three faults each. */
    private Path flood(int entries) throws IOException {
        String rows = IntStream.range(0, entries)
                .mapToObj(i -> "B" + i + ",h" + i + ",stroker" + i + ",league" + i + ",,A\n")
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("list.csv"), "Name,Hand,Style,Level,Ball,Squad\n" + rows);
        return Files.writeString(
                folder.resolve("event.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("club-final.yaml")).replace("club-final.csv", "list.csv"));
    }
}
