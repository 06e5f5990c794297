package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.page.FilmReel;
import lanetide.cli.page.PageAnswers;
import lanetide.cli.page.ReportPage;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilStudy;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");

    @TempDir
    Path folder;

    @Test
    void thePageIsTheSameWhateverTheThreads() throws IOException {
        Path one = folder.resolve("one.html");
        Path four = folder.resolve("four.html");
        List<Object> command =
                List.of("report", ONE_PAIR, "--replications", 3, "--fairness", 4, "--remedies", 4, "--reoil", 0);

        assertThat(Program.runWith(command, "--threads", 1, "-o", one).exitCode())
                .isZero();
        assertThat(Program.runWith(command, "--threads", 4, "-o", four).exitCode())
                .isZero();

        assertThat(one).hasSameBinaryContentAs(four);
        assertThat(Files.readString(one)).startsWith("<!doctype html>").contains("Two bowlers on one pair");
    }

    @Test
    void aFolderThatIsMissingIsToldBeforeTheRunAndNothingIsLeft() throws IOException {
        Program.Outcome outcome = Program.run("report", ONE_PAIR, "-o", folder.resolve("missing/page.html"));

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("there is no folder").hasLineCount(1);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void anotherFormIsRefusedWithAdvice() {
        Program.Outcome outcome = Program.run("report", ONE_PAIR, "--format", "json");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("lanetide simulate");
    }

    /** What a mail carries, and what a person waits for. */
    @Test
    @Tag("slow")
    void thePageOfTheChampionshipIsSmallAndQuickToWrite() throws IOException {
        Path file = Scenarios.FOLDER.resolve("championship.yaml");
        Reading reading = new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));
        Event event = reading.scenario().orElseThrow().event();
        FilmReel reel = new FilmReel();
        PageAnswers answers = new PageAnswers(
                EventStudy.run(
                        new PossibleEvents(event, 1),
                        1,
                        Playings.fixed(1),
                        Execution.on(1),
                        done -> {},
                        Observers.of(reel)),
                Optional.of(FairnessAnswer.of(FairnessStudy.run(
                        event, new FairnessPlan(1, FairnessStudy.fewestPlayings(event), 2, true), 2, done -> {}))),
                Optional.of(ReoilStudy.run(
                        event,
                        new ReoilPlan(
                                1,
                                ReoilPlan.MIN_REPLICATIONS,
                                ReoilPlan.DEFAULT_GAMES,
                                2,
                                ReoilPlan.DEFAULT_LIMIT_BOARDS,
                                reading.scenario().orElseThrow().policy().costs()),
                        2,
                        done -> {})));

        // The processor's time, not the clock's: other tests run meanwhile.
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long beforeNs = threads.getCurrentThreadCpuTime();
        String page = ReportPage.write(reading, answers, reel, false, List.of());
        double seconds = (threads.getCurrentThreadCpuTime() - beforeNs) / 1e9;

        assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(3_000_000);
        assertThat(seconds).isLessThan(2);
    }
}
