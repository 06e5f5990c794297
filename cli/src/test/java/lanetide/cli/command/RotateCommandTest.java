package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class RotateCommandTest {
    private static final Path CHAMPIONSHIP = Scenarios.FOLDER.resolve("championship.yaml");

    @TempDir
    private Path folder;

    @Test
    void theTextOpensWithTheVerdictAndSaysUnaskedThatOnePairRightIsTheWorst() {
        Program.Outcome outcome = Program.run("rotate", CHAMPIONSHIP, "--quiet");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        String words = outcome.out().replaceAll("\\s+", " ");
        assertThat(words)
                .containsSubsequence(
                        "Verdict",
                        "the worst there is in who follows whom",
                        "The carry-over index is 588, where 84 is possible",
                        "`balanced` scores best",
                        "Squads A, B and C: pairs by group and game",
                        "Checks of squads A, B and C",
                        "Lanes met",
                        "A 8 0 0 3.5 B 0 8 0 11.5 C 0 0 8 19.5",
                        "it is impossible that each also follows each other once; that takes 6 days",
                        "Designs compared",
                        "Please keep in mind");
        assertThat(outcome.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(outcome.out().chars()).allMatch(c -> c == '\n' || (c >= 32 && c < 127));
    }

    @Test
    void theJsonHasEveryFieldOfTheNote() {
        JsonNode answer = json("rotate", CHAMPIONSHIP, "--format", "json");

        assertThat(answer.at("/schemaVersion").isNumber()).isTrue();
        assertThat(answer.at("/seed").asInt()).isEqualTo(1);
        assertThat(answer.at("/scenarioSha256").asString()).hasSize(64);
        assertThat(answer.at("/rotation")).hasSize(3 * 12 * 8);
        assertThat(answer.at("/rotation/0/squad").asString()).isEqualTo("A");
        assertThat(answer.at("/rotation/0/game").asInt()).isEqualTo(1);
        assertThat(answer.at("/rotation/0/pair").asString()).isEqualTo("1-2");
        assertThat(answer.at("/rotation/0/group").asString()).isEqualTo("1");
        assertThat(answer.at("/checks/isPermutation").asBoolean()).isTrue();
        assertThat(answer.at("/checks/repeatedVisits").isArray()).isTrue();
        assertThat(answer.at("/checks/carryOverIndex").asInt()).isEqualTo(3 * 588);
        assertThat(answer.at("/checks/carryOverMinimum").asInt()).isEqualTo(3 * 84);
        assertThat(answer.at("/checks/carryOverMaximum").asInt()).isEqualTo(3 * 588);
        assertThat(answer.at("/checks/distinctPredecessors/min").asInt()).isEqualTo(1);
        assertThat(answer.at("/checks/distinctPredecessors/max").asInt()).isEqualTo(1);
        assertThat(answer.at("/checks/walkPairsPerGame").asDouble()).isEqualTo(1.8333);
        assertThat(answer.at("/alternatives/0/design").asString()).isEqualTo("right");
        assertThat(answer.at("/alternatives/0/isPlanned").asBoolean()).isTrue();
        for (String field : List.of("carryOverIndex", "repeatedVisits", "walkPairsPerGame")) {
            assertThat(answer.at("/alternatives/1/" + field).isNumber()).isTrue();
        }
        assertThat(answer.at("/exposure")).hasSize(36);
        assertThat(answer.at("/exposure/35/wornGames").asInt()).isEqualTo(8);
        assertThat(answer.at("/squads/0/checks/0/code").asString()).isEqualTo("permutation");
    }

    @Test
    void theSameQuestionGetsTheSameBytesAndThreadsDoNotMatter() {
        String one = Program.run("rotate", CHAMPIONSHIP, "--format", "json", "--threads", 1)
                .out();

        assertThat(Program.run("rotate", CHAMPIONSHIP, "--format", "json", "--threads", 3)
                        .out())
                .isEqualTo(one);
    }

    @Test
    void theCsvHasARowForEveryGroupAndGame() {
        String table = Program.run("rotate", CHAMPIONSHIP, "--format", "csv", "--design", "balanced")
                .out();

        assertThat(table.lines()).hasSize(1 + 3 * 12 * 8);
        assertThat(table.lines())
                .startsWith(
                        "squad,group,bowlers,game,pair,leftLane,rightLane",
                        "A,1,5,1,1 and 2,1,2",
                        "A,1,5,2,23 and 24,23,24");
    }

    @ParameterizedTest
    @CsvSource({"balanced, 84", "part-balanced, 84", "apart, 108", "turning, 588", "left, 588", "stay, 588"})
    void anotherDesignCanBeAskedFor(String design, int index) {
        JsonNode answer = json("rotate", CHAMPIONSHIP, "--format", "json", "--design", design);

        assertThat(answer.at("/design/name").asString()).isEqualTo(design);
        assertThat(answer.at("/checks/carryOverIndex").asInt()).isEqualTo(3 * index);
        assertThat(answer.at("/alternatives")
                        .valueStream()
                        .filter(other -> other.at("/design").asString().equals(design)
                                && other.at("/move").asInt()
                                        == answer.at("/design/move").asInt()))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --design balancd | Did you mean `balanced`?
            --design balanced --move 2 | --move is 2, but means nothing in the design balanced.
            --design apart --every 2 | --every is 2, but means nothing in the design apart.
            --design right --move 0 | --move is 0; it must be a whole number from 1 to 100.
            --design right --move 12 | The step (12) must be no multiple of the number of pairs (12).
            --design turning --move 3 | The step (3) must be even
            --move 2 | goes with --design
            """)
    void aDesignThatCannotBeHadIsToldWhyAndWhatToTry(String words, String reason) {
        List<Object> args = new ArrayList<>(List.of("rotate", CHAMPIONSHIP));
        Collections.addAll(args, (Object[]) words.split(" "));
        Program.Outcome outcome = Program.run(args.toArray());

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(reason);
    }

    @Test
    void aSearchIsNeverWorseSaysWhyItStoppedAndCanBePastedIn() throws IOException {
        Path scenario = scenario("A", "right", "  perSquad: 12", "", 5);
        JsonNode answer = json("rotate", scenario, "--search", "--format", "json");
        double best = answer.at("/alternatives")
                .valueStream()
                .filter(other -> !other.at("/design").asString().equals("searched"))
                .mapToDouble(other -> other.at("/cost").asDouble())
                .min()
                .orElseThrow();

        assertThat(answer.at("/squads/0/search/cost").asDouble()).isLessThanOrEqualTo(best);
        assertThat(answer.at("/squads/0/search/stoppedBecause").asString()).isNotBlank();

        String text = Program.run("rotate", scenario, "--search").out();
        String block = text.substring(text.indexOf("rotation:\n"), text.indexOf("\nHow to read it"));
        Path pasted = folder.resolve("pasted.yaml");
        Files.writeString(pasted, Files.readString(scenario).replace("rotation: right\n", block));
        JsonNode again = json("rotate", pasted, "--format", "json");
        assertThat(again.at("/alternatives/0/cost").asDouble())
                .isEqualTo(answer.at("/squads/0/search/cost").asDouble());
    }

    /** Where walking is all that matters, nobody moves; where following is all that matters, walking does not count. */
    @Test
    void theDirectorWeighsWhatCounts() {
        JsonNode walking = json(
                "rotate", CHAMPIONSHIP, "--format", "json", "--weights", "repeats=0,carry-over=0,wear=0,walking=1");

        assertThat(walking.at("/alternatives")
                        .valueStream()
                        .filter(other -> other.at("/design").asString().equals("stay")))
                .singleElement()
                .satisfies(stay -> assertThat(stay.at("/cost").asDouble()).isZero());
        assertThat(Program.run("rotate", CHAMPIONSHIP, "--weights", "walking=0").out())
                .contains("as you have weighed it");
        assertThat(Program.run("rotate", CHAMPIONSHIP, "--weights", "walk=1").err())
                .contains("--weights is `walk`", "walking");
        assertThat(Program.run("rotate", CHAMPIONSHIP, "--weights", "wear=-1").err())
                .contains("a weight must be from 0 to 1000000");
        assertThat(Program.run("rotate", CHAMPIONSHIP, "--weights", "wear=x").exitCode())
                .isEqualTo(2);
    }

    @Test
    void graphsAreWrittenBesideTheAnswerAndNamesStayText() throws IOException {
        Path scenario = scenario("A<script>'x'\\\" &", "right", "  perSquad: 12", "", 3);
        Path graphMl = folder.resolve("rotation.graphml");
        Path dot = folder.resolve("rotation.dot");

        Program.Outcome outcome = Program.run("rotate", scenario, "--graphml", graphMl, "--dot", dot);

        assertThat(outcome.exitCode()).isZero();
        assertThat(Files.readString(graphMl)).contains("&lt;script&gt;").doesNotContain("<script>");
        assertThat(Files.readString(dot)).contains("strict digraph rotation", "\\\\\\\" &, game 1");
        assertThat(Program.run("rotate", scenario, "--dot", folder.resolve("none/a.dot"))
                        .exitCode())
                .isEqualTo(3);
        assertThat(Program.run("rotate", scenario, "--dot", scenario).exitCode())
                .isEqualTo(2);
        Program.Outcome same = Program.run("rotate", scenario, "--dot", dot, "-o", folder.resolve("./rotation.dot"));
        assertThat(same.exitCode()).isEqualTo(2);
        assertThat(same.err()).contains("--dot and --out name the same file");
    }

    @Test
    void sparePairsStayFreeInEveryDesign() throws IOException {
        Path scenario = scenario("A", "balanced", "  perSquad: 10", "  spare: [5-6]\n", 5);
        JsonNode answer = json("rotate", scenario, "--format", "json");

        assertThat(answer.at("/rotation").valueStream())
                .hasSize(5 * 5)
                .noneMatch(cell -> cell.at("/pair").asString().equals("5-6"));
        assertThat(answer.at("/squads/0/checks").valueStream())
                .anyMatch(check -> check.at("/code").asString().equals("existence")
                        && check.at("/text").asString().startsWith("Impossible for 5 groups"));
        assertThat(json("rotate", scenario, "--design", "right", "--format", "json")
                        .at("/rotation")
                        .valueStream())
                .noneMatch(cell -> cell.at("/pair").asString().equals("5-6"));
        assertThat(Program.run("rotate", scenario).out()).contains("Pair 5-6 is kept spare.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"turning", "part-balanced", "drawn", "searched"})
    void everyDesignCanStandInAScenario(String design) throws IOException {
        Path scenario = scenario("A", design, "  perSquad: 12", "", 4);

        assertThat(json("rotate", scenario, "--format", "json")
                        .at("/design/name")
                        .asString())
                .isEqualTo(design);
    }

    @Test
    void theOrderOfTheFileChangesNothing() throws IOException {
        String[] blocks = Files.readString(CHAMPIONSHIP).split("\n(?=[a-z]+:)");
        List<String> shuffled = new ArrayList<>(List.of(blocks).subList(1, blocks.length));
        Collections.shuffle(shuffled, new Random(3));
        Path other = folder.resolve("other.yaml");
        Files.writeString(other, String.join("\n", shuffled));

        String mine = Program.run("rotate", CHAMPIONSHIP, "--format", "json").out();
        String theirs = Program.run("rotate", other, "--format", "json").out();
        assertThat(withoutHash(theirs)).isEqualTo(withoutHash(mine));
    }

    @Test
    void aLossOfPairsIsToldGroupByGroup() throws IOException {
        Path scenario = scenario("A", "right", "  perSquad: 5", "", 4);
        JsonNode answer = json("rotate", scenario, "--without", "5-6", "--format", "json");

        assertThat(answer.at("/design/name").asString()).isEqualTo("changed");
        assertThat(answer.at("/changes/visits").valueStream())
                .hasSize(3)
                .allMatch(visit -> visit.at("/plannedPair").asString().equals("5-6"));
        assertThat(answer.at("/changes/movedBowlers")).isEmpty();
        assertThat(answer.at("/rotation").valueStream())
                .noneMatch(cell -> cell.at("/pair").asString().equals("5-6"));
        assertThat(answer.at("/changes/plannedChecks/carryOverIndex").isNumber())
                .isTrue();

        String text = Program.run("rotate", scenario, "--without", "5-6").out();
        assertThat(text)
                .contains(
                        "What changes, and for whom",
                        "3 of 20 planned visits go to another pair, and nobody changes groups",
                        "Squad A, group 3: game 1 on ",
                        "Verdict on the new schedule",
                        "put this into the scenario");
        String block = text.substring(text.indexOf("rotation:\n"), text.indexOf("\nHow to read it"));
        Path pasted = folder.resolve("pasted.yaml");
        Files.writeString(pasted, Files.readString(scenario).replace("rotation: right\n", block));
        assertThat(json("rotate", pasted, "--format", "json").at("/rotation")).isEqualTo(answer.at("/rotation"));
    }

    @Test
    void aLossInAFullHouseRegroupsAndBetweenGamesSplitsTheSquad() {
        JsonNode answer = json(
                "rotate", CHAMPIONSHIP, "--without", "9-10", "--from-squad", "B", "--from-game", 3, "--format", "json");

        assertThat(answer.at("/changes/dissolvedGroups")).hasSize(2);
        assertThat(answer.at("/changes/movedBowlers")).hasSize(10);
        assertThat(answer.at("/squads")
                        .valueStream()
                        .flatMap(squad -> squad.at("/ids").valueStream())
                        .map(JsonNode::asString))
                .containsExactly("A", "B", "B (2)", "C");
    }

    @Test
    void sparePairsAreUsedBeforeAnybodyMustRegroup() throws IOException {
        Path scenario = scenario("A", "right", "  perSquad: 20", "  spare: [5-6]\n", 4);
        JsonNode answer = json("rotate", scenario, "--without", "1-2", "--format", "json");

        assertThat(answer.at("/changes/movedBowlers")).isEmpty();
        assertThat(answer.at("/changes/visits").valueStream())
                .hasSize(4)
                .allMatch(visit -> visit.at("/pair").asString().equals("5-6"));
    }

    @Test
    void rotationsWithoutRepeatsMayBeWorthMoreChanges() throws IOException {
        Path scenario = scenario("A", "right", "  perSquad: 12", "", 4);
        JsonNode few = json("rotate", scenario, "--without", "3-4,5-6", "--format", "json");
        JsonNode sound = json("rotate", scenario, "--without", "3-4,5-6", "--avoid-repeats", "--format", "json");

        assertThat(sound.at("/changes/visits").size())
                .isGreaterThanOrEqualTo(few.at("/changes/visits").size());
        assertThat(sound.at("/checks/repeatedVisits").size())
                .isLessThanOrEqualTo(few.at("/checks/repeatedVisits").size());
    }

    @Test
    void noShowsAndALateSquadAreToldTogether() {
        JsonNode answer = json("rotate", CHAMPIONSHIP, "--no-shows", "A=12", "--late", "B=60min", "--format", "json");

        assertThat(answer.at("/changes/absentBowlers")).hasSize(12);
        assertThat(answer.at("/changes/visits")).isEmpty();
        assertThat(answer.at("/changes/starts/0/plannedStart").asString()).isEqualTo("13:30");
        assertThat(answer.at("/changes/starts/0/start").asString()).isEqualTo("14:30");
        assertThat(Program.run("rotate", CHAMPIONSHIP, "--no-shows", "A-01,C-60", "--late", "C=1h 30min")
                        .out())
                .contains(
                        "Squad A bowls without A-01.",
                        "Squad C bowls without C-60.",
                        "Squad C starts at 20:30 in place of 19:00.");
    }

    @Test
    void ofASingleBowlerNobodyMayStayAway() throws IOException {
        Path scenario =
                Files.writeString(folder.resolve("one.yaml"), Scenarios.SOUND.replace("perSquad: 8", "perSquad: 1"));

        Program.Outcome outcome = Program.run("rotate", scenario, "--no-shows", "A=1");

        assertThat(outcome.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains("squad A (1) must be 0, so that somebody bowls.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --without 9-11 | --without is `9-11`, which this scenario does not know.
            --from-game 2 | goes with --without
            --avoid-repeats | goes with --without
            --without 9-10 --from-game 9 | --from-game is 9; it must be a whole number from 1 to 8.
            --without 9-10 --from-squad D | --from-squad is `D`, which this scenario does not know.
            --without 1-2,3-4,5-6,7-8,9-10,11-12,13-14 | at least 6 for its 60 bowlers, with at most 10 on a pair
            --no-shows 12 | neither a bowler nor a number for a squad
            --no-shows A=60 | must be 1 to 59
            --no-shows D=2 | --no-shows is `D`
            --late B | must be a squad and a time
            --late B=0min | --late is 0; it must be a whole number from 1 to 1440.
            --late D=5min | --late is `D`
            """)
    void aChangeThatCannotBeMadeIsToldWhyAndWhatToTry(String words, String reason) {
        List<Object> args = new ArrayList<>(List.of("rotate", CHAMPIONSHIP));
        Collections.addAll(args, (Object[]) words.split(" "));
        Program.Outcome outcome = Program.run(args.toArray());

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).startsWith("lanetide: ").contains(reason).doesNotContain("Exception");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    private static String withoutHash(String answer) {
        return answer.replaceAll("\"scenarioSha256\" : \"[0-9a-f]{64}\"", "");
    }

    private Path scenario(String squad, String rotation, String field, String centre, int games) throws IOException {
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(
                file, String.format(Locale.ROOT, """
                name: Test
                centre:
                  lanes: 1 to 12
                %s  surface: hard-synthetic
                pattern: {length: 39 ft, volume: 23 mL, ratio: "4:1"}
                games: %d
                rotation: %s
                squads:
                  - {id: '%s', start: "08:00", oil: fresh}
                field:
                %s
                  hands: {right: 75 %%, left: 25 %%}
                  styles: {tweener: 100 %%}
                  levels: {league: 100 %%}
                  covers: {medium-reactive: 100 %%}
                """, centre, games, rotation, squad.replace("'", "''"), field));
        return file;
    }

    private static JsonNode json(Object... args) {
        Program.Outcome outcome = Program.run(args);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return outcome.answer();
    }
}
