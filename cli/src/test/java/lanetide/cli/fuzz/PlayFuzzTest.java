package lanetide.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.des.random.RandomStreams;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.model.Event;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/**
 * Small events, changed at random so that they can still be played, through all commands that read a scenario, each
 * with as little work as it allows. Whatever comes: an answer, unless check has named the command that has none; no
 * stack trace and no number that is none. {@code -Dlanetide.fuzzSeed=N} plays others, {@code -Dlanetide.fuzzPlays=N}
 * more of them. A fit takes half a minute whatever was measured, and has tests of its own.
 */
class PlayFuzzTest {
    private static final long SEED = Long.getLong("lanetide.fuzzSeed", 18);

    /** One scenario in so many is played under sets of values; the others with the usual ones, whose lines are few. */
    private static final int UNDER_SETS = 10;

    /** So many are tried at most for each that is played. */
    private static final int TRIES = 20;

    private static final int MOST_LANES = 4;
    private static final int MOST_GAMES = 2;

    /** Every command in each of its forms, of which every scenario meets one in turn. */
    private static final List<List<String>> COMMANDS = List.of(
            List.of(
                    "check SCENARIO",
                    "check SCENARIO --format json",
                    "check SCENARIO --no-shows A=1 --write INTO/new.yaml"),
            List.of(
                    "pattern SCENARIO --format json",
                    "pattern SCENARIO --units metric",
                    "pattern SCENARIO --pattern PATTERN --format csv"),
            List.of(
                    "lines SCENARIO --style stroker --surface wood --format json",
                    "lines SCENARIO --hand left --level league --cover plastic",
                    "lines SCENARIO --style power --pattern PATTERN --format csv"),
            List.of(
                    "rotate SCENARIO --format json",
                    "rotate SCENARIO --dot INTO/map.dot --graphml INTO/map.graphml",
                    "rotate SCENARIO --format csv",
                    "rotate SCENARIO --no-shows A=1 --late A=20min"),
            List.of(
                    "simulate SCENARIO SETS --replications 1 --format json",
                    "simulate SCENARIO SETS --replications 2 --all-lanes --shot-log INTO/shots.csv --trace"
                            + " INTO/t.jsonl",
                    "simulate SCENARIO SETS --replications 1 --format csv",
                    "simulate SCENARIO SETS --replications 1 --no-shows A=1"),
            List.of(
                    "preview SCENARIO SETS --bowler BOWLER --replications 1",
                    "preview SCENARIO SETS --bowler BOWLER --replications 1 --format json",
                    "preview SCENARIO SETS --bowler BOWLER --replications 1 --format html"),
            List.of(
                    "reoil SCENARIO SETS --replications 4 --games 2 --format json",
                    "reoil SCENARIO SETS --replications 4 --games 2 --oilings 1",
                    "reoil SCENARIO SETS --replications 4 --games 3 --format csv"),
            List.of(
                    "fairness SCENARIO SETS --replications FEWEST --bounds 0 --remedies 0 --format json",
                    "fairness SCENARIO SETS --replications FEWEST --bounds 0 --remedies 0",
                    "fairness SCENARIO SETS --replications FEWEST --bounds 0 --remedies 0 --format csv",
                    "fairness SCENARIO SETS --replications FEWEST --bounds 0 --remedies 0 --format html"),
            List.of(
                    "compare SCENARIO SCENARIO SETS --replications 2",
                    "compare SCENARIO ORIGINAL SETS --replications 2 --format json"),
            List.of(
                    "sheets SCENARIO SETS --replications 1 --into INTO/sheets",
                    "sheets SCENARIO SETS --replications 1 --into INTO/sheets --paper letter --first-day 2027-03-06"),
            List.of(
                    "report SCENARIO SETS --replications 1 --fairness 0 --reoil 0 -o INTO/page.html",
                    "report SCENARIO SETS --replications 1 --fairness 0 --reoil 0 --bowlers INTO/pages -o"
                            + " INTO/page.html"));

    @TempDir
    private Path temporary;

    private FuzzFolder folder;
    private final Told told = new Told();
    private final Map<String, Integer> exits = new HashMap<>();

    @BeforeEach
    void laysOutTables() throws IOException {
        folder = new FuzzFolder(temporary);
        folder.write(FuzzFolder.tables());
    }

    @AfterEach
    void noneFailed() {
        told.noneFailed("exits " + exits);
    }

    @Test
    void changedEventsGoThroughAllCommands() throws Exception {
        play(SEED, 60);
    }

    @Test
    @Tag("slow")
    void othersGoThroughAllCommands() throws Exception {
        play(SEED + 1, Integer.getInteger("lanetide.fuzzPlays", 3));
    }

    @Test
    void theSmallEventsArePlayableAndHaveEveryBlock() throws IOException {
        List<String> keys = new ArrayList<>();
        for (Map.Entry<String, String> small : FuzzFolder.smallEvents().entrySet()) {
            assertThat(folder.read(small.getValue()).filter(PlayFuzzTest::isSmall))
                    .as(small.getKey())
                    .isPresent();
            ((Tree.Block) Tree.parse(small.getValue())).all().forEach(pair -> keys.add(pair.key()));
        }
        assertThat(keys).containsAll(EventKeys.SCENARIO.names());
    }

    private void play(long seed, int wanted) throws Exception {
        List<String> small = List.copyOf(FuzzFolder.smallEvents().values());
        int played = 0;
        for (int number = 0; played < wanted; number++) {
            assertThat(number).as("tried for %d", wanted).isLessThan(TRIES * wanted);
            UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz/play/" + number);
            String original = small.get(number % small.size());
            String text =
                    new Mutator(luck).vary((Tree.Block) Tree.parse(original)).write();
            Optional<Scenario> scenario = folder.read(text).filter(PlayFuzzTest::isSmall);
            if (scenario.isPresent()) {
                folder.write("original.yaml", original);
                String what = "seed " + seed + ", scenario " + number + ":\n" + text;
                played(scenario.get(), played, what);
                played++;
            }
        }
    }

    private static boolean isSmall(Scenario scenario) {
        Event event = scenario.event();
        return event.centre().pairs().size() <= MOST_LANES / 2
                && event.rotations().stream().allMatch(rotation -> rotation.games() <= MOST_GAMES);
    }

    private void played(Scenario scenario, int number, String what) throws Exception {
        String told = Program.run("check", folder.resolve("event.yaml")).out();
        for (List<String> forms : COMMANDS) {
            String command = forms.get(number % forms.size());
            this.told.look(command + "\n" + what, () -> asked(command, scenario, number, told));
        }
        this.told.look("in parts\n" + what, this::playedInParts);
    }

    /** A command that has no answer says so, and check has said it before. */
    private void asked(String command, Scenario scenario, int number, String checked) {
        Program.Outcome outcome = Program.run(words(command, scenario, number));

        String name = command.substring(0, command.indexOf(' '));
        exits.merge(name + " " + outcome.exitCode(), 1, Integer::sum);
        Told.said(outcome.out() + outcome.err(), outcome.err());
        if (outcome.exitCode() == ExitCode.CANNOT_RUN) {
            assertThat(outcome.err()).contains("lanetide: ").endsWith(".\n");
            if (!command.contains("--no-shows")) {
                assertThat(checked).as(outcome.err()).contains("`lanetide " + name + "` has no answer");
            }
        } else {
            assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.DONE);
        }
        if (outcome.exitCode() == ExitCode.DONE && command.endsWith("--format json")) {
            Told.finite(JsonMapper.shared().readTree(outcome.out()), outcome.out());
        }
    }

    private Object[] words(String command, Scenario scenario, int number) {
        Event event = scenario.event();
        String bowler = event.squads().get(0).groups().get(0).bowlers().get(0).id();
        return Stream.of(command.split(" ", -1))
                .map(word -> switch (word) {
                    case "SCENARIO" -> folder.resolve("event.yaml").toString();
                    case "ORIGINAL" -> folder.resolve("original.yaml").toString();
                    case "SETS" -> number % UNDER_SETS == 0 ? "--sets=possible" : "--sets=usual";
                    case "BOWLER" -> bowler;
                    case "PATTERN" -> event.patterns().get(0).id();
                    case "FEWEST" -> String.valueOf(FairnessStudy.fewestPlayings(event));
                    default -> word.replace("INTO", temporary.toString());
                })
                .toArray();
    }

    private void playedInParts() throws IOException {
        List<Object> words = List.of(
                "simulate", folder.resolve("event.yaml"), "--replications", 2, "--sets", "usual", "--format", "csv");
        Path joined = folder.resolve("joined");
        Path first = folder.resolve("part-1");
        Path second = folder.resolve("part-2");
        for (Path file : List.of(joined, first, second)) {
            Files.deleteIfExists(file);
        }
        assertThat(Program.runWith(words, "--resume", second, "--part", "2/2").exitCode())
                .isZero();
        assertThat(Program.runWith(words, "--resume", first, "--part", "1/2").exitCode())
                .isZero();
        assertThat(Program.run("merge", second, first, "-o", joined).exitCode()).isZero();

        assertThat(Program.runWith(words, "--resume", joined)).isEqualTo(Program.runWith(words));
    }
}
