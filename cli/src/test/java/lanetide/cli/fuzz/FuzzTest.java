package lanetide.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import lanetide.cli.check.CheckJson;
import lanetide.cli.check.CheckText;
import lanetide.cli.command.Program;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.Severity;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/**
 * Shipped scenarios and tables, changed at random and checked. Whatever comes: an exit code of the table, no stack
 * trace, notices with place and advice, and an end within seconds. What fails names the seed and the number of the
 * scenario; {@code -Dlanetide.fuzzSeed=N} looks at others, and {@code -Dlanetide.fuzzScenarios=N} at more.
 */
class FuzzTest {
    private static final long SEED = Long.getLong("lanetide.fuzzSeed", 18);
    private static final long LONGEST_CHECK_NANOS = 5_000_000_000L;
    private static final int BY_COMMAND = 50;

    @TempDir
    private Path temporary;

    private FuzzFolder folder;
    private final Told told = new Told();
    private final Map<Integer, Integer> exits = new TreeMap<>();

    @BeforeEach
    void laysOutTables() throws IOException {
        folder = new FuzzFolder(temporary);
        folder.write(FuzzFolder.tables());
    }

    @AfterEach
    void noneFailed() {
        told.noneFailed("exits of checks " + exits);
        assertThat(exits.keySet()).as("both are met").contains(0, 1);
    }

    @Test
    void changedScenariosAreChecked() throws Exception {
        check(SEED, 2_000);
    }

    @Test
    @Tag("slow")
    void othersAreChecked() throws Exception {
        check(SEED + 1, Integer.getInteger("lanetide.fuzzScenarios", 100));
    }

    private void check(long seed, int scenarios) throws Exception {
        List<Tree.Block> sound = new ArrayList<>();
        for (Path file : Scenarios.shipped()) {
            sound.add((Tree.Block) Tree.parse(Files.readString(file)));
        }
        Map<String, String> tables = FuzzFolder.tables();
        for (int number = 0; number < scenarios; number++) {
            UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz/check/" + number);
            Mutator mutator = new Mutator(luck);
            Map<String, String> sane = new TreeMap<>();
            for (Map.Entry<String, String> table : tables.entrySet()) {
                if (luck.nextInt(4) == 0) {
                    sane.put(table.getKey(), table.getValue());
                    folder.write(table.getKey(), mutator.mutateTable(table.getValue()));
                }
            }
            Tree.Block scenario = sound.get(number % sound.size());
            String text = (luck.nextInt(8) == 0 ? scenario : mutator.mutate(scenario)).write();
            String what = "seed " + seed + ", scenario " + number + ":\n" + text;
            boolean byCommand = number % BY_COMMAND == 0;
            told.look(what, () -> checked(text, byCommand, what));
            folder.write(sane);
        }
    }

    /** Reads a scenario as check does; the command itself, which looks at its lines too, for some. */
    private void checked(String text, boolean byCommand, String what) throws IOException {
        Path file = folder.write("event.yaml", text);
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();

        Reading reading = new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));
        String words = CheckText.write(file.toString(), reading, true, false);
        String json = CheckJson.write(reading);
        int exitCode = byCommand
                ? Program.run("check", file).exitCode()
                : reading.count(Severity.ERROR) == 0 ? ExitCode.DONE : ExitCode.CONDITION_FAILS;

        assertThat(threads.getCurrentThreadCpuTime() - before).as(what).isLessThan(LONGEST_CHECK_NANOS);
        assertThat(exitCode).as(what).isEqualTo(reading.scenario().isPresent() ? 0 : 1);
        exits.merge(exitCode, 1, Integer::sum);
        Told.said(words + json, what);
        Told.notices(JsonMapper.shared().readTree(json), what);
    }
}
