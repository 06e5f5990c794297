package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.output.ExitCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The file of finished playings: after a stop at any moment a run gives what an unbroken one gives, and so do parts.
 */
class PlayingsTest {
    /** Two bowlers and two games, so that a playing takes some thousandths of a second. */
    private static final String SMALL = """
            name: Short evening
            seed: 5
            centre: {pairs: [1-2], surface: hard-synthetic}
            pattern: {length: 39 ft, volume: 23 mL, ratio: 4:1}
            games: 2
            rotation: stay
            squads:
              - {id: A, start: "18:00", oil: fresh}
              - {id: B, start: "20:00", oil: none}
            entries:
              - {id: Ash, hand: right, style: tweener, level: elite, cover: plastic, squad: A}
              - {id: Elm, hand: left, style: stroker, level: league, cover: plastic, squad: B}
            """;

    private static final List<String> SIMULATE =
            List.of("simulate", "small.yaml", "--replications", "6", "--sets", "usual", "--format", "json");

    private static final int RESUMED = Integer.getInteger("lanetide.resumed", 2);

    @TempDir
    private Path folder;

    private Path scenario;
    private Path playings;

    @BeforeEach
    void writesTheScenario() throws IOException {
        scenario = Files.writeString(folder.resolve("small.yaml"), SMALL);
        playings = folder.resolve("playings.txt");
    }

    private Program.Outcome run(List<String> words, Object... more) {
        return Program.runWith(
                words.stream()
                        .map(word -> word.equals("small.yaml") ? scenario.toString() : word)
                        .toList(),
                more);
    }

    private Program.Outcome resumed(List<String> words, Object... more) {
        return run(
                Stream.concat(words.stream(), Stream.of("--resume", playings.toString()))
                        .toList(),
                more);
    }

    private static String answer(Program.Outcome outcome) {
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return outcome.out();
    }

    /** A process that is killed leaves a file up to some byte, whichever it was about to write. */
    @Test
    void afterAStopAtAnyByteTheSameCommandGivesTheBytesOfAnUnbrokenRun() throws IOException {
        String unbroken = answer(run(SIMULATE));
        assertThat(answer(resumed(SIMULATE))).isEqualTo(unbroken);
        byte[] whole = Files.readAllBytes(playings);
        Random random = new Random(18);
        for (int stop = 0; stop < 50; stop++) {
            int length = stop < 2 ? stop : random.nextInt(whole.length);
            Files.write(playings, Arrays.copyOf(whole, length));

            Program.Outcome outcome = resumed(SIMULATE, "--threads", 1 + stop % 2);

            assertThat(answer(outcome)).as("stopped at byte %d", length).isEqualTo(unbroken);
            assertThat(outcome.err()).doesNotContain("damaged");
            assertThat(lines(playings)).hasSameElementsAs(lines(whole));
        }
    }

    private static List<String> lines(Path file) throws IOException {
        return lines(Files.readAllBytes(file));
    }

    private static List<String> lines(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void whatIsThereIsNotPlayedAgain() throws IOException {
        answer(resumed(SIMULATE));
        byte[] before = Files.readAllBytes(playings);
        answer(resumed(SIMULATE));
        assertThat(Files.readAllBytes(playings)).isEqualTo(before);
        assertThat(lines(before)).filteredOn(line -> line.startsWith("0 ")).hasSize(6);
    }

    @Test
    void aPlayingThatWasChangedIsToldAndPlayedAgain() throws IOException {
        String unbroken = answer(resumed(SIMULATE));
        byte[] changed = Files.readAllBytes(playings);
        changed[changed.length - 60] ^= 1;
        Files.write(playings, changed);

        Program.Outcome outcome = resumed(SIMULATE);

        assertThat(answer(outcome)).isEqualTo(unbroken);
        assertThat(outcome.err()).contains("1 playings in " + playings + " are damaged and are played again.");
    }

    /** What each plays differs, and so does what is kept of it; with every second playing gone it is the same again. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "simulate small.yaml --replications 6 --format json",
                "simulate small.yaml --until-halfwidth 12 --replications 30 --format json",
                "fairness small.yaml --replications 12 --remedies 6 --bounds 2 --sets usual --format json",
                "fairness small.yaml --replications 12 --remedies 0 --bounds 0 --late B=30min --sets usual",
                "reoil small.yaml --replications 4 --games 2 --oilings 1 --format json",
                "compare small.yaml small.yaml --replications 4 --format json"
            })
    void everyCommandThatPlaysGoesOnFromWhatItHasKept(String command) throws IOException {
        List<String> words = List.of(command.split(" ", -1));
        Program.Outcome whole = run(words);
        String unbroken = whole.out();
        assertThat(unbroken).as(whole.err()).isNotEmpty();
        assertThat(resumed(words).out()).isEqualTo(unbroken);
        List<String> all = lines(playings);
        int head = all.indexOf("") + 1;
        List<String> left = new ArrayList<>(all.subList(0, head));
        IntStream.range(head, all.size()).filter(i -> i % 2 == 0).forEach(i -> left.add(all.get(i)));
        assertThat(left.size()).isGreaterThan(head + 1).isLessThan(all.size());
        Files.writeString(playings, String.join("\n", left) + "\n");

        assertThat(resumed(words).out()).isEqualTo(unbroken);
        assertThat(lines(playings)).hasSameElementsAs(all);
    }

    @Test
    void partsInAnyOrderGiveTheBytesOfOneRun() throws IOException {
        String unbroken = answer(run(SIMULATE));
        List<Path> parts = new ArrayList<>();
        for (int part = 1; part <= 3; part++) {
            Path own = folder.resolve("part-" + part);
            Program.Outcome outcome = run(SIMULATE, "--resume", own, "--part", part + "/3");
            assertThat(answer(outcome)).isEmpty();
            assertThat(outcome.err()).contains("Part " + part + " of 3 is played: " + own + " holds 2 of 6 playings");
            parts.add(own);
        }
        Path one = folder.resolve("one");
        Path other = folder.resolve("other");
        merge(one, parts.get(2), parts.get(0), parts.get(1));
        merge(other, parts.get(1), parts.get(2), parts.get(0), parts.get(1));

        assertThat(one).hasSameBinaryContentAs(other);
        byte[] joined = Files.readAllBytes(one);
        assertThat(answer(run(SIMULATE, "--resume", one))).isEqualTo(unbroken);
        assertThat(Files.readAllBytes(one)).as("nothing was left to play").isEqualTo(joined);
        assertThat(run(SIMULATE, "--resume", one, "--part", "1/3").err())
                .contains("holds all playings; the same command without --part answers from them.");
    }

    private static void merge(Path into, Path... files) {
        Program.Outcome outcome = Program.runWith(Stream.concat(Stream.of("merge", "-o", into), Arrays.stream(files))
                .toList());
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
    }

    /** Later steps need the first: they are played when parts are joined, by one run or in parts again. */
    @Test
    void partsOfAnAnswerInStepsPlayStepByStep() throws IOException {
        List<String> words = List.of(
                "fairness",
                "small.yaml",
                "--replications",
                "12",
                "--sets",
                "usual",
                "--bounds",
                "2",
                "--format",
                "csv");
        String unbroken = answer(run(words));
        Path joined = folder.resolve("joined");
        for (int round = 0; round < 2; round++) {
            List<Path> parts = new ArrayList<>();
            for (int part = 1; part <= 2; part++) {
                Path own = folder.resolve("part-" + round + "-" + part);
                if (round > 0) {
                    Files.copy(joined, own);
                }
                assertThat(answer(run(words, "--resume", own, "--part", part + "/2")))
                        .isEmpty();
                parts.add(own);
            }
            Files.deleteIfExists(joined);
            merge(joined, parts.get(1), parts.get(0));
        }
        assertThat(lines(joined))
                .anyMatch(line -> line.startsWith("fairness/0 "))
                .anyMatch(line -> line.startsWith("bounds/0 "));
        assertThat(answer(run(words, "--resume", joined))).isEqualTo(unbroken);
    }

    @Test
    void playingsOfSomethingElseAreRefusedAndLeftAsTheyAre() throws IOException {
        answer(resumed(SIMULATE));
        byte[] mine = Files.readAllBytes(playings);

        refused(resumed(SIMULATE, "--seed", 6), "was begun with seed 5, and here it is 6. Name another file.");
        refused(
                resumed(List.of("simulate", "small.yaml", "--replications", "6")),
                "was begun with --sets usual, and here it is possible.");
        refused(resumed(List.of("fairness", "small.yaml")), "was begun by lanetide simulate, and this is fairness.");
        Files.writeString(
                playings, new String(mine, StandardCharsets.UTF_8).replaceFirst("program: .*", "program: 0.0.1"));
        refused(resumed(SIMULATE), "was begun by lanetide 0.0.1, and this is ");
        Files.write(playings, mine);
        Files.writeString(scenario, SMALL + "\n# one more line\n");
        refused(resumed(SIMULATE), "holds playings of another scenario");
        assertThat(Files.readAllBytes(playings)).isEqualTo(mine);

        Files.writeString(scenario, SMALL);
        Path other = Files.writeString(folder.resolve("letter.txt"), "lanetide-playings 1\nDear all");
        refused(run(SIMULATE, "--resume", other), "is no file of playings, and is left as it is");
        refused(run(SIMULATE, "--resume", scenario), "The answer would replace the scenario");
        assertThat(other).hasContent("lanetide-playings 1\nDear all");
        assertThat(scenario).hasContent(SMALL);
    }

    private static void refused(Program.Outcome outcome, String why) {
        assertThat(outcome.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains(why).hasLineCount(1);
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void aFileBelongsToOneRunAtATime() throws IOException {
        answer(resumed(SIMULATE));
        try (FileChannel other = FileChannel.open(playings, StandardOpenOption.WRITE);
                FileLock lock = other.lock()) {
            assertThat(lock.isValid()).isTrue();
            Program.Outcome outcome = resumed(SIMULATE);
            assertThat(outcome.exitCode()).isEqualTo(ExitCode.FILE_TROUBLE);
            assertThat(outcome.err()).contains("Another run keeps its playings in " + playings);
        }
        answer(resumed(SIMULATE));
    }

    @Test
    void partsNeedAFileAndANumberOfPlayings() {
        refused(run(SIMULATE, "--part", "1/2"), "--part needs --resume FILE");
        refused(resumed(SIMULATE, "--part", "1/2", "--until-halfwidth", 3), "--part has no share of --until-halfwidth");
        for (String part : List.of("3/2", "0/2", "1", "a/b", "1/2/3")) {
            refused(resumed(SIMULATE, "--part", part), "`" + part + "` must be one of so many, such as 3/8");
        }
    }

    @Test
    void filesOfDifferentPlayingsAreNotJoined() throws IOException {
        answer(resumed(SIMULATE));
        Path other = folder.resolve("other");
        answer(run(SIMULATE, "--seed", 6, "--resume", other));
        Path joined = folder.resolve("joined");
        refused(Program.run("merge", playings, other, "-o", joined), "was begun with seed 6, and here it is 5");
        refused(Program.run("merge", playings, scenario, "-o", joined), "is no file of playings");
        refused(Program.run("merge", playings, other, "-o", other), "The answer would replace " + other);
        assertThat(Program.run("merge", playings, folder.resolve("none"), "-o", joined)
                        .exitCode())
                .isEqualTo(ExitCode.FILE_TROUBLE);

        String twice = Files.readString(playings).replaceFirst("seed: 5", "seed: 6");
        Files.writeString(playings, twice);
        refused(Program.run("merge", playings, other, "-o", joined), "of 0 is not the same in " + other);
        assertThat(joined).doesNotExist();
    }

    /**
     * Processes are killed for good, each after it has played on for a while, and then one is let end. So often as
     * {@code -Dlanetide.resumed=N} says.
     */
    @Test
    @Tag("slow")
    void aRunThatIsKilledAgainAndAgainEndsWithTheBytesOfAnUnbrokenOne() throws Exception {
        List<String> words = List.of("simulate", "small.yaml", "--replications", "300", "--sets", "usual");
        String unbroken = answer(run(words));
        Path out = folder.resolve("answer.txt");
        Object[] command = Stream.concat(words.stream(), Stream.of("--resume", playings, "-o", out))
                .toArray();
        Random random = new Random(7);
        for (int resumed = 0; resumed < RESUMED; resumed++) {
            Files.deleteIfExists(playings);
            Files.deleteIfExists(out);
            for (int kills = 1 + random.nextInt(3); kills > 0; kills--) {
                killAfter(1 + random.nextInt(20_000), command);
                assertThat(out).doesNotExist();
            }
            assertThat(new Shell(folder).starting(command).waitFor()).isZero();
            assertThat(out).content().isEqualTo(unbroken);
        }
    }

    private void killAfter(int bytes, Object[] command) throws IOException, InterruptedException {
        long more = size() + bytes;
        Process process = new Shell(folder).starting(command);
        while (process.isAlive() && size() < more) {
            process.waitFor(5, TimeUnit.MILLISECONDS);
        }
        process.destroyForcibly().waitFor();
        assertThat(size()).as("it was killed while it played").isGreaterThanOrEqualTo(more);
    }

    private long size() throws IOException {
        return Files.exists(playings) ? Files.size(playings) : 0;
    }
}
