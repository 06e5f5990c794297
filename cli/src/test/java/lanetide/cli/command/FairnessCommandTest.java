package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FairnessCommandTest {
    private static final String TWO_SQUADS = Scenarios.SOUND
            .replace("games: 3", "games: 2")
            .replace(
                    "  - {id: A, start: \"18:00\", oil: fresh}",
                    "  - {id: A, start: \"10:00\", oil: fresh}\n  - {id: B, start: \"14:00\", oil: none}");

    @TempDir
    static Path folder;

    private static Path scenario;
    private static Program.Outcome json;

    @BeforeAll
    static void study() throws Exception {
        scenario = Files.writeString(folder.resolve("two-squads.yaml"), TWO_SQUADS);
        json = fairness("--format", "json", "--threads", 1);
    }

    private static Program.Outcome fairness(Object... options) {
        return bounded(0, options);
    }

    private static Program.Outcome bounded(int rounds, Object... options) {
        List<Object> words = List.of("fairness", scenario, "--replications", 18, "--remedies", 12, "--bounds", rounds);
        return Program.runWith(words, options);
    }

    @Test
    void thePageForAProtestHasTheVerdictHowSureItIsWhyAndWhoDecidesInstead() {
        Program.Outcome outcome = fairness("--format", "html");
        Document page = Jsoup.parse(outcome.out());
        JsonNode answer = json.answer();

        assertThat(outcome.exitCode()).isZero();
        assertThat(page.select("h2").eachText())
                .containsExactly("The verdict of the model", "Which rule decides instead", "How sure it is", "Why");
        assertThat(page.select("#verdict").text())
                .contains(answer.get("verdict").asString());
        assertThat(page.select("#decides li").eachText())
                .hasSize(5)
                .anyMatch(rule -> rule.startsWith("First the event's own published rules"))
                .anyMatch(rule -> rule.contains("governing body"));
        assertThat(answer.get("wear").size()).isPositive();
        assertThat(page.select("li").eachText())
                .anyMatch(text -> text.startsWith("Squad A: ") && text.contains(" strikes in 100 for "))
                .anyMatch(text -> text.startsWith("Squad B: ") && text.contains(" strikes in 100 for "));
        assertThat(page.text()).contains("These are estimates of a model, not a lane inspection and not a ruling.");
        assertThat(page.select("script, img, iframe")).isEmpty();
    }

    /** Without a move nobody follows the lanes at all; the bounds have the luck of the study's first rounds. */
    @Test
    void besideEveryAdvantageStandsWhatItIsIfNobodyMovesAndIfAllKnow() throws Exception {
        JsonNode bounded = bounded(3, "--format", "json").answer();
        Path never = Files.writeString(folder.resolve("never.yaml"), TWO_SQUADS + "bowlers: {knowledge: nothing}\n");

        JsonNode nobodyMoves = Program.run(
                        "fairness", never, "--replications", 18, "--remedies", 0, "--bounds", 0, "--format", "json")
                .answer();

        for (int i = 0; i < bounded.get("effects").size(); i++) {
            JsonNode effect = bounded.get("effects").get(i);
            assertThat(effect.get("ifNobodyMoves"))
                    .isEqualTo(nobodyMoves.get("effects").get(i).get("advantagePinsPerGame"));
            assertThat(effect.get("ifAllKnow").isNumber()).isTrue();
            assertThat(nobodyMoves.get("effects").get(i).get("ifAllKnow").isNull())
                    .isTrue();
        }
    }

    @Test
    void theTextTellsWhatIsNotKnown() {
        String text = bounded(2).out().replaceAll("\\s+", " ");

        assertThat(text)
                .contains("What is not known: how bowlers follow the lanes")
                .contains("played 2 rounds with bowlers who never move, and 2 with bowlers who see the oil")
                .contains("squad bowlers pins a game 90 % interval verdict if nobody moves if all know");
        assertThat(bounded(0).out()).doesNotContain("if nobody moves");
        assertThat(bounded(1).err()).contains("--bounds is 1");
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(json.err()).isEmpty();
        JsonNode answer = json.answer();

        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256", "verdict", "marginPinsPerGame")
                .contains("effects", "structure", "reasons", "evenness", "replications", "remedies");
        assertThat(answer.get("verdict").asString()).isIn("fair", "unfair", "undecided");
        assertThat(answer.get("marginPinsPerGame").asDouble()).isEqualTo(2);
        assertThat(answer.get("replications").asInt()).isEqualTo(18);
        assertThat(answer.get("rounds").asInt()).isEqualTo(3);
        JsonNode effect = answer.get("effects").get(0);
        assertThat(effect.propertyNames()).contains("kind", "id", "advantagePinsPerGame", "ci90", "verdict");
        assertThat(effect.get("kind").asString()).isEqualTo("squad");
        assertThat(effect.get("ci90").get("low").asDouble())
                .isLessThan(effect.get("advantagePinsPerGame").asDouble());
        JsonNode structure = answer.get("structure");
        assertThat(structure.propertyNames())
                .contains(
                        "isPermutation",
                        "repeatedVisits",
                        "carryOverIndex",
                        "carryOverMinimum",
                        "distinctPredecessors");
    }

    @Test
    void everyKindOfAdvantageIsLookedAt() {
        JsonNode effects = json.answer().get("effects");

        assertThat(effects.valueStream()
                        .map(effect -> effect.get("kind").asString() + " "
                                + effect.get("id").asString()))
                .containsExactly(
                        "squad A",
                        "squad B",
                        "pair 1-2",
                        "pair 3-4",
                        "group A/1",
                        "group A/2",
                        "group B/1",
                        "group B/2",
                        "hand right",
                        "hand left",
                        "style stroker",
                        "style tweener");
    }

    @Test
    void theBytesAreTheSameForAnyNumberOfThreads() {
        assertThat(fairness("--format", "json", "--threads", 2).out()).isEqualTo(json.out());
    }

    @Test
    void theTextGivesTheVerdictFirstAndReadsAloud() {
        String text = fairness().out();

        assertThat(text).startsWith("Practice night\nVerdict: ");
        assertThat(text)
                .contains("if up to 2 pins a game count as fair")
                .contains("Squads: what playing in one is worth", "90 % interval")
                .contains("What would mend it", "as it is", "fresh oil for every squad")
                .contains("How it was found, and how sure it is", "not a lane inspection and not a ruling");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void theTableHasOneRowForEachAdvantage() {
        List<String> rows = fairness("--format", "csv").out().lines().toList();

        assertThat(rows).hasSize(13);
        assertThat(rows.get(0)).startsWith("kind,id,bowlers,advantagePinsPerGame,");
    }

    @Test
    void onLanesThatStayAsTheyAreLaidNobodyHasAnyAdvantage() {
        Program.Outcome still = fairness("--still-lanes", "--format", "csv", "--fail-if-unfair");

        assertThat(still.exitCode()).isZero();
        assertThat(still.out().lines().skip(1))
                .allSatisfy(row -> assertThat(row).contains(",0.000,0.0000,0.000,0.000,"));
    }

    @Test
    void unfairEndsWithOneOnlyIfItIsAskedFor() throws Exception {
        // A squad of right-handers on fresh oil and one on lanes on which ten games have been played.
        Path unfair = Files.writeString(
                folder.resolve("unfair.yaml"),
                TWO_SQUADS
                        .replace("games: 2", "games: 6")
                        .replace("hands: {right: 75 %, left: 25 %}", "hands: {right: 100 %, left: 0 %}"));
        Object[] args = {
            "fairness",
            unfair,
            "--replications",
            60,
            "--remedies",
            0,
            "--bounds",
            0,
            "--margin",
            "0.05",
            "--quiet",
            "--sets",
            "usual"
        };

        assertThat(Program.run(args).out()).contains("Verdict: unfair, if up to 0.05 pins a game count as fair.");
        assertThat(Program.run(args).exitCode()).isZero();
        Object[] strict = java.util.Arrays.copyOf(args, args.length + 1);
        strict[args.length] = "--fail-if-unfair";
        assertThat(Program.run(strict).exitCode()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "51", "NaN"})
    void aMarginThatNoScheduleCanKeepIsWrongUse(String margin) {
        Program.Outcome outcome = fairness("--margin", margin);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("--margin is ", "above 0", "Try 2.");
    }

    @Test
    void aMarginThatIsNoNumberIsWrongUse() {
        assertThat(fairness("--margin", "two").err()).contains("`two` must be a number");
    }

    @Test
    void tooFewPlayingsAreWrongUse() {
        Program.Outcome outcome = Program.run("fairness", scenario, "--replications", 11);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("--replications is 11; it must be a whole number from 12 to ");
    }

    @Test
    void theScenarioMaySetTheMargin() throws Exception {
        Path own = Files.writeString(folder.resolve("margin.yaml"), TWO_SQUADS + "fairness: {margin: 4 pins}\n");

        String text = Program.run("fairness", own, "--replications", 12, "--remedies", 0, "--bounds", 0)
                .out();

        assertThat(text).contains("if up to 4 pins a game count as fair", "set by the director");
        assertThat(Program.run("fairness", own, "--replications", 12, "--remedies", 0, "--bounds", 0, "--margin", "3")
                        .out())
                .contains("if up to 3 pins a game count as fair");
    }

    @Test
    void listingBowlersInAnotherOrderOfGroupsChangesNothing() throws Exception {
        String head = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:"));
        String first = """
                  - {id: Ann, hand: right, style: power, level: scratch, cover: urethane, group: 1}
                  - {id: Ben, hand: left, style: straight, level: league, cover: plastic, group: 1}
                """;
        String second = """
                  - {id: Cat, hand: right, style: stroker, level: scratch, cover: weak-reactive, group: 2}
                  - {id: Dan, hand: right, style: tweener, level: elite, cover: medium-reactive, group: 2}
                """;
        Path one = Files.writeString(folder.resolve("one.yaml"), head + "entries:\n" + first + second);
        Path other = Files.writeString(folder.resolve("other.yaml"), "entries:\n" + second + first + head);

        assertThat(Program.run("fairness", other, "--replications", 20, "--format", "csv")
                        .out())
                .isEqualTo(Program.run("fairness", one, "--replications", 20, "--format", "csv")
                        .out());
    }

    @Test
    void lateChangesAreJudgedAndHeldAgainstTheEventAsPlanned() {
        String changed = fairness("--no-shows", "B=1", "--format", "json").out();
        JsonNode planned = json.answer();
        JsonNode late = JsonMapper.shared().readTree(changed);

        assertThat(planned.get("lateChanges").isNull()).isTrue();
        assertThat(late.get("lateChanges").get("spreadBeforePins").asDouble())
                .isEqualTo(planned.get("evenness").get("spreadPins").asDouble());
        assertThat(late.get("lateChanges").get("spreadAfterPins").asDouble())
                .isEqualTo(late.get("evenness").get("spreadPins").asDouble());
        assertThat(late.get("lateChanges").get("groups")).isNotEmpty();
    }

    @Test
    void ofASingleGroupNothingIsHeldAgainstTheEventAsPlanned() throws Exception {
        Path one = Files.writeString(
                folder.resolve("one-group.yaml"),
                Scenarios.SOUND.replace("lanes: 1 to 4", "lanes: 1 to 2").replace("perSquad: 8", "perSquad: 4"));
        Program.Outcome answer = Program.run(
                "fairness",
                one,
                "--no-shows",
                "A=1",
                "--replications",
                10,
                "--remedies",
                0,
                "--bounds",
                0,
                "--format",
                "json");

        assertThat(answer.err()).isEmpty();
        assertThat(JsonMapper.shared().readTree(answer.out()).get("lateChanges").isNull())
                .isTrue();
    }

    @Test
    void theTextTellsWhatLateChangesDo() {
        assertThat(fairness("--no-shows", "B=1").out()).contains("What the late changes do", "as planned it is");
        assertThat(fairness("--without", "91-92").err()).contains("--without", "91-92");
    }

    private static Program.Outcome ofACut(Object... options) {
        return Program.runWith(
                List.of(
                        "fairness",
                        Scenarios.FOLDER.resolve("small-open.yaml"),
                        "--replications",
                        12,
                        "--remedies",
                        0,
                        "--bounds",
                        0),
                options);
    }

    @Test
    void aCutIsToldInTextJsonAndTable() {
        assertThat(ofACut().out())
                .contains(
                        "6 of 21 people go on, by their totals with handicap",
                        "The last who goes on is expected to have",
                        "entered again");
        JsonNode cut = ofACut("--format", "json").answer().get("cut");
        assertThat(cut.get("places").asInt()).isEqualTo(6);
        double goOn = 0;
        for (JsonNode level : cut.get("levels")) {
            assertThat(level.get("squads")).hasSize(3);
            double people =
                    level.get("level").isNull() ? 0 : level.get("people").asInt();
            goOn += people * level.get("chance").asDouble();
        }
        JsonNode again = cut.get("again");
        goOn += again.get("people").asInt() * again.get("chance").asDouble();
        assertThat(goOn).isCloseTo(6, org.assertj.core.api.Assertions.within(1e-3));
        List<String> rows = ofACut("--format", "csv").out().lines().toList();
        assertThat(rows.get(0))
                .endsWith(",cutPins,level,chance,chanceMore,chanceLow,chanceHigh,chanceLuckLow,"
                        + "chanceLuckHigh,chanceSignShare");
        assertThat(rows).filteredOn(row -> row.startsWith("cut-squad,")).hasSize(12);
    }

    @Test
    void onLanesThatNeverChangeASquadIsWorthNothingAtTheCut() {
        for (JsonNode level :
                ofACut("--still-lanes", "--format", "json").answer().get("cut").get("levels")) {
            for (JsonNode squad : level.get("squads")) {
                assertThat(squad.get("more").asDouble()).isZero();
            }
        }
    }

    @Test
    void whereASquadGoesOnInTwoPartsTheCutIsNotTold() {
        assertThat(ofACut("--without", "7-8", "--from-squad", "B", "--from-game", 3)
                        .out())
                .contains("Not told: a squad goes on in two parts");
    }
}
