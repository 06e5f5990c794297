package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class PreviewCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");
    private static final Path CLUB = Scenarios.FOLDER.resolve("club-night.yaml");

    private static Program.Outcome json;
    private static JsonNode answer;

    @BeforeAll
    static void look() {
        json = preview(ONE_PAIR, "--bowler", "Leadoff", "--format", "json", "--threads", 1);
        answer = json.answer();
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256")
                .contains("squad", "pair", "bowler", "style", "hand", "games", "watch", "cautions");
        assertThat(answer.get("squad").asString()).isEqualTo("evening");
        assertThat(answer.get("pair").asString()).isEqualTo("1-2");
        assertThat(answer.get("hand").asString()).isEqualTo("left");
        assertThat(answer.get("games")).hasSize(6);
        assertThat(answer.get("games").get(0).propertyNames())
                .contains(
                        "game",
                        "exitWindow",
                        "exitBoard",
                        "laydownBoard",
                        "arrowsBoard",
                        "pocketShare",
                        "moveBoards",
                        "cover",
                        "text");
    }

    /** Fresh oil: the first game is played from where the style starts on the sheet, and nobody has to move. */
    @Test
    void onFreshOilTheFirstGameStartsAsOnTheFreshPatternWhateverIsTrue() {
        JsonNode usual = preview(ONE_PAIR, "--bowler", "Leadoff", "--format", "json", "--sets", "usual")
                .answer();
        JsonNode first = usual.get("games").get(0);
        assertThat(first.get("laydownBoard")).isEqualTo(usual.get("fresh").get("laydownBoard"));
        assertThat(first.get("moveBoards").asDouble()).isZero();
        assertThat(first.get("laydownSpread").get("low"))
                .isEqualTo(first.get("laydownSpread").get("high"));
        JsonNode possible = answer.get("games").get(0);
        // A lane that nobody measured may be out of level, and get a little more or less oil.
        assertThat(possible.get("laydownBoard").asDouble())
                .isCloseTo(first.get("laydownBoard").asDouble(), within(0.3));
    }

    /** The same numbers as the command `lines` gives for that bowler, which is a different way through the program. */
    @Test
    void theFreshLineIsThatOfTheCommandLines() {
        JsonNode lines = Program.run(
                        "lines",
                        ONE_PAIR,
                        "--style",
                        "stroker",
                        "--hand",
                        "left",
                        "--level",
                        "scratch",
                        "--cover",
                        "weak-reactive",
                        "--surface",
                        "hard-synthetic",
                        "--format",
                        "json")
                .answer();
        JsonNode natural = lines.get("lines").get(0);
        JsonNode fresh = answer.get("fresh");
        assertThat(fresh.get("laydownBoard").asDouble())
                .isEqualTo(natural.get("laydownBoard").asDouble(), within(0.011));
        assertThat(fresh.get("arrowsBoard").asDouble())
                .isEqualTo(natural.get("arrowsBoard").asDouble(), within(0.011));
    }

    @Test
    void everyMoveIsTheChangeOfTheLaydown() {
        for (int game = 1; game < 6; game++) {
            double moved = answer.get("games").get(game).get("laydownBoard").asDouble()
                    - answer.get("games").get(game - 1).get("laydownBoard").asDouble();
            assertThat(answer.get("games").get(game).get("moveBoards").asDouble())
                    .isEqualTo(moved, within(0.26));
        }
    }

    @Test
    void theAnswerDoesNotDependOnTheThreads() {
        assertThat(preview(ONE_PAIR, "--bowler", "Leadoff", "--format", "json", "--threads", 3)
                        .out())
                .isEqualTo(json.out());
    }

    @Test
    void theTextSaysWhatToDoInEveryGameAndWhatToWatch() {
        Program.Outcome outcome = preview(CLUB, "--pair", "3-4", "--style", "stroker", "--hand", "left");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .contains("Squad league from pair 3-4: stroker, left-handed")
                .contains("- Game 1 on 3-4: start as on the fresh pattern.", "- Game 3 on 3-4:")
                .contains("What to watch in practice", "Lay down on board", "These are estimates of a model");
        assertThat(outcome.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void theTableHasARowForEachGame() {
        Program.Outcome outcome = preview(ONE_PAIR, "--bowler", "Anchor", "--format", "csv");

        assertThat(outcome.out()).startsWith("game,pair,laydownBoard,").hasLineCount(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--bowler Leadof|Did you mean `Leadoff`?",
                "--squad evning --bowler Anchor|Did you mean `evening`?",
                "--pair 1-3|Did you mean `1-2`?",
                "--pair 1-2 --style powr|Did you mean `power`?",
                "--pair 1-2 --hand rigth|Did you mean `right`?",
                "--squad evening|Pairs: 1-2."
            })
    void aNameThatDoesNotExistIsOfferedTheNearest(String options, String advice) {
        Program.Outcome outcome = preview(ONE_PAIR, (Object[]) options.split(" ", -1));

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(advice).hasLineCount(1);
    }

    @Test
    void whereThereAreSeveralSquadsOneMustBeNamed() {
        Program.Outcome outcome = preview(Scenarios.FOLDER.resolve("championship.yaml"), "--pair", "1-2");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("--squad");
    }

    private static Program.Outcome preview(Path scenario, Object... options) {
        return Program.runWith(List.of("preview", scenario, "--replications", 4), options);
    }
}
