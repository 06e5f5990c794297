package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.scenario.Scenarios;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands on the bowlers' pages, without a browser: all pages, cards and previews of one set of playings. */
class BowlerPageTest {
    private static final int BOWLERS = 24;
    private static final int ASKED = 20;
    private static final List<Object> PLAYINGS = List.of("--replications", 2, "--sets", "usual");
    private static final List<String> PARTS =
            List.of("allBoards", "headsBoards", "midLaneBoards", "pastEndBoards", "togetherBoards");

    @TempDir
    static Path folder;

    /** The club final, cut to three games. */
    private static Path shortFinal;

    private static Document director;
    private static Document cards;
    /** The pages in the order of the entries, as the director's page leads to them. */
    private static List<Document> pages;

    @BeforeAll
    static void write() throws IOException {
        Files.copy(Scenarios.FOLDER.resolve("club-final.csv"), folder.resolve("club-final.csv"));
        shortFinal = Files.writeString(
                folder.resolve("club-final.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("club-final.yaml")).replace("\ngames: 6", "\ngames: 3"));
        run(
                "report",
                shortFinal,
                "--fairness",
                0,
                "--reoil",
                0,
                "-o",
                folder.resolve("page.html"),
                "--bowlers",
                folder.resolve("the bowlers"));
        run("sheets", shortFinal, "--into", folder.resolve("print"));
        director = Jsoup.parse(folder.resolve("page.html"));
        cards = Jsoup.parse(folder.resolve("print/cards.html"));
        pages = director.select("#bowlers a").stream()
                .map(link -> folder.resolve(link.attr("href").replace("%20", " ")))
                .map(BowlerPageTest::parse)
                .toList();
    }

    private static void run(Object... command) {
        Program.Outcome outcome = Program.runWith(List.of(command), PLAYINGS.toArray());
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
    }

    private static Document parse(Path file) {
        try {
            return Jsoup.parse(file);
        } catch (IOException e) {
            throw new AssertionError("a dead link: " + file, e);
        }
    }

    @Test
    void theDirectorsPageLeadsToAPageOfEveryBowler() throws IOException {
        assertThat(pages).hasSize(BOWLERS);
        List<String> names = director.select("#bowlers a").eachText();
        assertThat(pages.stream().map(page -> page.selectFirst("h1").text())).containsExactlyElementsOf(names);
        assertThat(director.select("nav a[href=#bowlers]")).hasSize(1);
        try (Stream<Path> files = Files.list(folder.resolve("the bowlers"))) {
            assertThat(files).hasSize(BOWLERS);
        }
    }

    /** One set of playings, asked in three ways. */
    @Test
    void cardPreviewAndPageAgreeForTwentyBowlers() {
        Map<String, Element> cardOf = cards.select(".card").stream()
                .collect(Collectors.toMap(card -> card.selectFirst("h2").text(), Function.identity()));
        for (Document page : pages.subList(0, ASKED)) {
            String bowler = page.selectFirst("h1").text();
            String preview = Program.runWith(
                            List.of("preview", shortFinal, "--bowler", bowler, "--format", "json"), PLAYINGS.toArray())
                    .out();
            JsonNode answer = JsonMapper.shared().readTree(preview);
            assertThat(answer(page)).as(bowler).isEqualTo(answer);

            List<Element> rows = cardOf.get(bowler).select("tbody tr");
            List<Element> told = page.select("#games tbody tr");
            assertThat(rows).hasSameSizeAs(told).hasSameSizeAs(answer.get("games"));
            for (int game = 0; game < rows.size(); game++) {
                List<String> card = cells(rows.get(game));
                List<String> cells = cells(told.get(game));
                assertThat(card.subList(2, 6))
                        .as("%s, game %d", bowler, game + 1)
                        .isEqualTo(cells.subList(1, 5));
            }
        }
    }

    @Test
    void everyNumberOfThePageIsThatOfTheAnswer() {
        for (Document page : pages) {
            JsonNode games = answer(page).get("games");
            List<Element> rows = page.select("#games tbody tr");
            for (int game = 0; game < rows.size(); game++) {
                List<String> cells = cells(rows.get(game));
                JsonNode told = games.get(game);
                assertThat(cells.get(1)).isEqualTo(told.get("pair").asString());
                same(cells.get(2), told.get("laydownBoard"));
                same(cells.get(3).split("-", -1)[0], told.at("/laydownSpread/low"));
                same(cells.get(3).split("-", -1)[1], told.at("/laydownSpread/high"));
                same(cells.get(4), told.get("arrowsBoard"));
                same(cells.get(5), told.get("exitBoard"));
                assertThat(Double.parseDouble(cells.get(6)))
                        .isEqualTo(told.get("moveBoards").asDouble());

                List<String> why = cells(page.select("#why-table tbody tr").get(game));
                double sum = 0;
                for (int part = 0; part < PARTS.size(); part++) {
                    double boards = told.at("/why/" + PARTS.get(part)).asDouble();
                    assertThat(Double.parseDouble(why.get(part + 1))).isEqualTo(boards);
                    sum += part == 0 ? 0 : boards;
                }
                assertThat(sum).isCloseTo(told.at("/why/allBoards").asDouble(), within(1e-9));
            }
        }
    }

    @Test
    void sentencesOfThePageAreThoseOfTheAnswer() {
        for (Document page : pages) {
            JsonNode answer = answer(page);
            List<String> texts = page.select("li").eachText();
            answer.get("games").forEach(game -> {
                assertThat(texts).contains(game.get("text").asString());
                assertThat(texts)
                        .anyMatch(text -> text.endsWith(game.at("/why/text").asString()));
            });
            answer.at("/practice/lanes")
                    .forEach(lanes ->
                            assertThat(texts).contains(lanes.get("text").asString()));
            assertThat(answer.at("/practice/lines")
                            .valueStream()
                            .mapToInt(line -> line.get("balls").asInt())
                            .sum())
                    .isEqualTo(10);
        }
    }

    /** Everybody in this list brings one ball. */
    @Test
    void noBallIsOfferedThatIsNotInTheEntry() {
        for (Document page : pages) {
            JsonNode answer = answer(page);
            String own = answer.get("cover").asString();
            answer.get("games")
                    .forEach(game -> assertThat(game.get("cover").asString()).isEqualTo(own));
            for (String other : List.of("plastic", "urethane", "weak-", "medium-", "strong-")) {
                if (!own.startsWith(other)) {
                    assertThat(page.body().text().toLowerCase(java.util.Locale.ROOT))
                            .doesNotContain(other);
                }
            }
        }
    }

    @Test
    void thePageIsOneFileWithoutScript() {
        for (Document page : pages) {
            assertThat(page.select("script").eachAttr("type")).containsExactly("application/json");
            assertThat(page.select("link[rel=stylesheet], img, iframe")).isEmpty();
            assertThat(page.select("meta[http-equiv]").attr("content")).startsWith("default-src 'none'");
        }
    }

    @Test
    void pagesWithoutAFileForTheDirectorsAreRefusedAndOtherCommandsWriteNone() {
        Program.Outcome alone = Program.run("report", shortFinal, "--bowlers", folder.resolve("alone"));
        assertThat(alone.exitCode()).isEqualTo(2);
        assertThat(alone.err()).contains("--bowlers needs --out").hasLineCount(1);
        assertThat(folder.resolve("alone")).doesNotExist();

        Program.Outcome other = Program.run("lines", shortFinal, "--format", "html");
        assertThat(other.exitCode()).isEqualTo(2);
        assertThat(other.err()).contains("lines writes no page").hasLineCount(1);
    }

    @Test
    void aHostileNameStandsThereAsText() throws IOException {
        String name = String.join(" ", Scenarios.hostileNames().subList(0, 6));
        Path scenario = Files.writeString(
                folder.resolve("hostile.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("one-pair.yaml")).replace("Leadoff", Scenarios.quoted(name)));
        Path page = folder.resolve("hostile.html");
        run("preview", scenario, "--bowler", name, "--format", "html", "-o", page);

        Document read = parse(page);
        assertThat(read.selectFirst("h1").text().replaceAll("\\s+", "")).isEqualTo(name.replaceAll("\\s+", ""));
        assertThat(read.select("script")).hasSize(1);
        assertThat(answer(read).get("bowler").asString()).isEqualTo(name);
    }

    private static JsonNode answer(Document page) {
        return JsonMapper.shared().readTree(page.selectFirst("#answer").data());
    }

    private static List<String> cells(Element row) {
        return row.select("th, td").eachText();
    }

    /** A page has whole boards, the answer hundredths. */
    private static void same(String cell, JsonNode board) {
        assertThat(Double.parseDouble(cell)).isCloseTo(board.asDouble(), within(0.506));
    }
}
