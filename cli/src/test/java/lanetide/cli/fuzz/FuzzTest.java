package lanetide.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.cli.check.CheckJson;
import lanetide.cli.check.CheckText;
import lanetide.cli.command.Program;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.Severity;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Shipped scenarios and tables, changed at random and given to the commands. Whatever comes: an exit code of the table,
 * no stack trace, notices with place and advice, no number in an answer that is none, and an end within seconds. What
 * fails names the seed and the number of the scenario; {@code -Dlanetide.fuzzSeed=N} plays others, and
 * {@code -Dlanetide.fuzzScenarios=N} looks at more.
 */
class FuzzTest {
    private static final long SEED = Long.getLong("lanetide.fuzzSeed", 18);
    private static final Set<Integer> EXIT_CODES = Set.of(0, 1, 2, 3);
    private static final long LONGEST_CHECK_NANOS = 5_000_000_000L;

    /** What no answer may hold: the words in which a program talks to programmers, and numbers that are none. */
    private static final List<String> UNSAID =
            List.of("\tat ", "Exception", "java.", "NaN", "Infinity", "\u221e", "Optional[");

    /** Every command with as little work as it allows; the words of the scenario's own stand for its bowlers. */
    private static final List<String> COMMANDS = List.of(
            "pattern SCENARIO --format json",
            "pattern SCENARIO",
            "lines SCENARIO --surface wood --format json",
            "rotate SCENARIO --format json",
            "rotate SCENARIO",
            "simulate SCENARIO --replications 1 --format json",
            "simulate SCENARIO --replications 1 --all-lanes --shot-log shots.csv",
            "preview SCENARIO --bowler BOWLER --replications 1",
            "reoil SCENARIO --replications 4 --games 2 --format json",
            "fairness SCENARIO --replications 10 --bounds 0 --remedies 0 --format json",
            "compare SCENARIO SCENARIO --replications 2",
            "sheets SCENARIO --replications 1 --into sheets");

    @TempDir
    private Path folder;

    private static final int FAILURES_TOLD = 10;
    private static final int BY_COMMAND = 50;

    /** So many are tried at most for each that is played. */
    private static final int TRIES = 20;

    /** A sentence that also says what to try is longer (letters). */
    private static final int SHORTEST_ADVICE = 40;

    private final Map<Integer, Integer> exits = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();

    /** Looks at one scenario and goes on, whatever comes. */
    private interface Look {
        void look() throws IOException;
    }

    private void look(String what, Look look) throws IOException {
        try {
            look.look();
        } catch (AssertionError | RuntimeException e) {
            String why = String.valueOf(e);
            failures.add(what + "\n" + why.substring(0, Math.min(why.length(), 2_000)));
        }
    }

    @AfterEach
    void noneFailed() {
        assertThat(failures.stream().limit(FAILURES_TOLD).toList())
                .as("%d failures, exits of checks %s", failures.size(), exits)
                .isEmpty();
    }

    @Test
    void changedScenariosAreCheckedAndSomeOfThemPlayed() throws IOException {
        check(SEED, 2_000);
        play(SEED, 2);
    }

    @Test
    @Tag("slow")
    void othersAreCheckedAndMoreOfThemPlayed() throws IOException {
        check(SEED + 1, Integer.getInteger("lanetide.fuzzScenarios", 400));
        play(SEED + 1, 10);
    }

    private void check(long seed, int scenarios) throws IOException {
        List<Tree.Block> sound = new ArrayList<>();
        for (Path file : Scenarios.shipped()) {
            sound.add((Tree.Block) Tree.parse(Files.readString(file)));
        }
        Map<String, String> tables = tables();
        write(tables);
        for (int number = 0; number < scenarios; number++) {
            UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz/check/" + number);
            Mutator mutator = new Mutator(luck);
            Map<String, String> sane = new TreeMap<>();
            for (Map.Entry<String, String> table : tables.entrySet()) {
                if (luck.nextInt(4) == 0) {
                    sane.put(table.getKey(), table.getValue());
                    write(table.getKey(), mutator.mutateTable(table.getValue()));
                }
            }
            Tree.Block scenario = sound.get(number % sound.size());
            String text = (luck.nextInt(8) == 0 ? scenario : mutator.mutate(scenario)).write();
            String what = "seed " + seed + ", scenario " + number + ":\n" + text;
            boolean byCommand = number % BY_COMMAND == 0;
            look(what, () -> checked(text, byCommand, what));
            write(sane);
        }
        assertThat(exits.keySet()).as("both are met").contains(0, 1);
    }

    /** Reads a scenario as check does; the command itself, which looks at its lines too, for some. */
    private void checked(String text, boolean byCommand, String what) throws IOException {
        Path file = write("event.yaml", text);
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
        said(words + json, what);
        notices(JsonMapper.shared().readTree(json), what);
    }

    private static void notices(JsonNode answer, String what) {
        for (JsonNode notice : answer.get("notices")) {
            assertThat(notice.get("line").asInt()).as(what).isPositive();
            assertThat(notice.get("column").asInt()).as(what).isPositive();
            assertThat(notice.get("file").asString()).as(what).isNotEmpty();
            assertThat(notice.get("message").asString()).as(what).endsWith(".").doesNotContain(UNSAID);
            boolean tellsWhatMustBe = !notice.get("limit").asString().isEmpty()
                    || notice.get("message").asString().length() > SHORTEST_ADVICE;
            assertThat(tellsWhatMustBe).as("advice: %s in %s", notice, what).isTrue();
        }
    }

    private void play(long seed, int wanted) throws IOException {
        write(tables());
        List<Tree.Block> sound = smallAndSound();
        int played = 0;
        for (int number = 0; played < wanted; number++) {
            assertThat(number).as("tried for %d", wanted).isLessThan(TRIES * wanted);
            UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz/play/" + number);
            String text =
                    new Mutator(luck).mutate(sound.get(number % sound.size())).write();
            Optional<Scenario> scenario = read(text).filter(FuzzTest::isSmall);
            if (scenario.isPresent()) {
                played++;
                String what = "seed " + seed + ", scenario " + number + ":\n" + text;
                look(what, () -> played(scenario.get(), folder.resolve("event.yaml"), what));
            }
        }
    }

    private List<Tree.Block> smallAndSound() throws IOException {
        List<Tree.Block> sound = new ArrayList<>();
        for (Path file : Scenarios.shipped()) {
            Tree.Block small = small((Tree.Block) Tree.parse(Files.readString(file)));
            if (read(small.write()).filter(FuzzTest::isSmall).isPresent()) {
                sound.add(small);
            }
        }
        assertThat(sound).as("those that can be made small").hasSizeGreaterThan(4);
        return sound;
    }

    private Optional<Scenario> read(String text) throws IOException {
        Path file = write("event.yaml", text);
        return new ScenarioReader(OptionalLong.empty())
                .read(file.toString(), Files.readAllBytes(file))
                .scenario();
    }

    /** The same event with at most four lanes, two games and as few bowlers. */
    private static Tree.Block small(Tree.Block scenario) {
        scenario.put("games", new Tree.Leaf("2"));
        scenario.put("rotation", new Tree.Leaf("stay"));
        scenario.find("centre").ifPresent(centre -> {
            Tree.Block block = (Tree.Block) centre;
            block.all()
                    .removeIf(pair -> Set.of("pairs", "closed", "spare", "topography", "fitted")
                            .contains(pair.key()));
            block.put("lanes", new Tree.Leaf("1 to 4"));
        });
        for (String key : List.of("incidents", "changes", "measured", "field", "qualifying", "finals")) {
            scenario.all().removeIf(pair -> pair.key().equals(key));
        }
        scenario.put(
                "entries",
                Tree.parse(
                        "[{id: Ash, hand: right, style: stroker, level: league, cover: plastic, average: 170 pins, squad: A},"
                                + " {id: Elm, hand: left, style: power, level: scratch, cover: strong-reactive, average: 210 pins, squad: A}]"));
        scenario.put("squads", Tree.parse("[{id: A, start: \"10:00\", oil: fresh}]"));
        return scenario;
    }

    private static boolean isSmall(Scenario scenario) {
        return scenario.event().centre().pairs().size() <= 2
                && scenario.event().rotations().stream().allMatch(rotation -> rotation.games() <= 2)
                && scenario.event().squads().stream()
                        .mapToInt(squad -> squad.everybody().size())
                        .allMatch(bowlers -> bowlers <= 8);
    }

    private void played(Scenario scenario, Path file, String what) {
        String bowler = scenario.event()
                .squads()
                .get(0)
                .groups()
                .get(0)
                .bowlers()
                .get(0)
                .id();
        for (String command : COMMANDS) {
            Object[] words = Stream.of(command.split(" ", -1))
                    .map(word -> switch (word) {
                        case "SCENARIO" -> file;
                        case "BOWLER" -> bowler;
                        case "shots.csv", "sheets" -> folder.resolve(word);
                        default -> word;
                    })
                    .toArray();

            Program.Outcome outcome = Program.run(words);

            String where = command + "\n" + what + "\n" + outcome.err();
            assertThat(outcome.exitCode()).as(where).isIn(EXIT_CODES);
            said(outcome.out() + outcome.err(), where);
            if (outcome.exitCode() == 0 && command.contains("json")) {
                finite(JsonMapper.shared().readTree(outcome.out()), where);
            }
        }
    }

    private void write(Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            write(file.getKey(), file.getValue());
        }
    }

    /** What is no character, such as half of a pair, becomes a question mark. */
    private Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private static void said(String answer, String what) {
        for (String word : UNSAID) {
            int at = answer.indexOf(word);
            assertThat(at < 0 ? "" : answer.substring(Math.max(0, at - 200), Math.min(answer.length(), at + 100)))
                    .as("%s in the answer to %s", word, what)
                    .isEmpty();
        }
    }

    private static void finite(JsonNode node, String what) {
        if (node.isNumber()) {
            assertThat(node.doubleValue()).as(what).isFinite();
        }
        node.forEach(child -> finite(child, what));
    }

    private static Map<String, String> tables() throws IOException {
        Map<String, String> tables = new TreeMap<>();
        try (Stream<Path> files = Files.list(Scenarios.FOLDER)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".csv")).toList()) {
                tables.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return tables;
    }
}
