package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What was drawn of a bowler is nowhere shown as if it were known of him. */
class DrawnBowlersTest {
    private static final String HEAD = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:"));
    private static final String BOWLERS = """
            entries:
              - {id: Known, hand: right, style: stroker, level: league, cover: medium-reactive}
              - {id: Unknown, average: 190 pins}
            field: {hands: {left: 100 %}, styles: {tweener: 100 %}, covers: {urethane: 100 %}}
            """;

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void writesTheScenario() throws IOException {
        scenario = Files.writeString(
                folder.resolve("event.yaml"),
                HEAD.replace("1 to 4", "1 to 2").replace("games: 3", "games: 1") + BOWLERS);
    }

    @Test
    void aPreviewMarksWhatWasDrawnAndSaysHowToTellIt() {
        String text = preview("Unknown").out();

        assertThat(text.lines().skip(1).limit(2))
                .containsExactly(
                        "Squad A from pair 1-2, Unknown: tweener (drawn), left-handed (drawn), league, urethane (drawn).",
                        "What is marked as drawn was not in the entries; tell it with --hand, --style, --cover.");
        assertThat(preview("Known").out())
                .startsWith("Practice night\nSquad A from pair 1-2, Known: stroker, right-handed,");
    }

    @Test
    void everyAnswerThatPlaysSaysOfHowManyWhatWasDrawn() {
        List<String> words = List.of("--quiet", "--sets", "usual", "--replications");
        for (List<String> command : List.of(
                List.of("simulate", scenario.toString()),
                List.of("reoil", scenario.toString(), "--games", "2"),
                List.of("compare", scenario.toString(), scenario.toString()),
                List.of("preview", scenario.toString(), "--pair", "1-2"))) {
            List<Object> all = new ArrayList<>(command);
            all.addAll(words);
            all.add(4);

            String text = Program.run(all.toArray()).out().replaceAll("\\s+", " ");

            assertThat(text)
                    .as(command.get(0))
                    .contains(
                            "level of 1 of 2 bowlers by average: elite from 220 pins",
                            "hand of 1 of 2 bowlers drawn by shares: left 100 % (shares of the scenario's field).",
                            "style of 1 of 2 bowlers drawn by shares: tweener 100 %");
        }
    }

    @Test
    void whatAnOptionTellsIsNotDrawn() {
        assertThat(preview("Unknown", "--style", "power", "--cover", "urethane")
                        .out()
                        .lines()
                        .skip(1)
                        .limit(2))
                .containsExactly(
                        "Squad A from pair 1-2, Unknown: power, left-handed (drawn), league, urethane.",
                        "What is marked as drawn was not in the entries; tell it with --hand.");
    }

    @Test
    void programsAreToldWhatWasDrawn() {
        JsonNode drawn = preview("Unknown", "--format", "json").answer().get("drawn");

        assertThat(drawn.valueStream().map(JsonNode::asString)).containsExactly("hand", "style", "cover");
        assertThat(preview("Known", "--format", "json").answer().has("drawn")).isFalse();
    }

    @Test
    void cardsMarkWhatWasDrawnAndTheTableLeavesItOut() throws IOException {
        Path into = folder.resolve("print");

        Program.Outcome outcome =
                Program.run("sheets", scenario, "--into", into, "--replications", 1, "--sets", "usual", "--quiet");

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        List<String> cards = Jsoup.parse(Files.readString(into.resolve("cards.html")))
                .select(".card")
                .eachText();
        assertThat(cards.get(0))
                .contains("stroker, right hand, medium-reactive: ")
                .doesNotContain("drawn");
        assertThat(cards.get(1))
                .contains(
                        "tweener (drawn), left hand (drawn), urethane (drawn): ",
                        "What is marked as drawn was not in the entries. If you play otherwise, these boards are not yours.");
        assertThat(Files.readString(into.resolve("assignments.csv")))
                .contains(",Known,right,stroker,1,", ",Unknown,,,1,");
    }

    @Test
    void whoBowlsInTwoSquadsIsFoundByHisNameInEach() throws IOException {
        String later = "  - {id: B, start: \"22:00\", oil: over}\nentries:";
        Files.writeString(
                scenario,
                Files.readString(scenario)
                        .replace("entries:", later)
                        .replace(
                                "}\n  - {id: Un",
                                ", squad: A}\n  - {id: Known, average: 200 pins, squad: B}\n  - {id: Un")
                        .replace("190 pins", "190 pins, squad: B"));

        assertThat(preview("Known").out()).contains("Squad A from pair 1-2, Known: stroker, right-handed, league");
        assertThat(preview("Known", "--squad", "B").out())
                .contains("Squad B from pair 1-2, Known (B): tweener (drawn)");
        assertThat(preview("Known (B)", "--squad", "B").out()).contains("Squad B from pair 1-2, Known (B): tweener");
    }

    private Program.Outcome preview(String bowler, Object... more) {
        List<Object> words = new ArrayList<>(
                List.of("preview", scenario, "--bowler", bowler, "--replications", 1, "--sets", "usual", "--quiet"));
        words.addAll(List.of(more));
        return Program.run(words.toArray());
    }
}
