package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SheetsCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");

    @TempDir
    Path folder;

    private Path into;

    @BeforeEach
    void makeNoFolder() {
        into = folder.resolve("print");
    }

    @Test
    void theFilesAreWrittenAndNamed() throws IOException {
        Program.Outcome outcome = sheets(ONE_PAIR, "--first-day", "2027-03-06");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        try (Stream<Path> files = Files.list(into)) {
            assertThat(files.map(Path::toString).sorted())
                    .containsExactlyElementsOf(outcome.out().lines().sorted().toList())
                    .hasSize(5);
        }
    }

    @Test
    void theAssignmentsSayWhoBowlsWhere() throws IOException {
        sheets(Scenarios.FOLDER.resolve("club-night.yaml"));

        Document sheet = html("assignments.html");
        assertThat(sheet.select("#pairs-1 tbody tr")).hasSize(4);
        assertThat(sheet.select("#pairs-1 tbody tr").get(2).text()).isEqualTo("3 5-6 5-6 5-6");
        List<CSVRecord> rows = table("assignments.csv");
        assertThat(rows).hasSize(40 * 3);
        assertThat(rows.get(0).toMap()).containsEntry("lanes", "1 and 2").containsEntry("practice", "19:30");
        assertThat(sheet.select("#groups-1").text()).contains(rows.get(0).get("bowler"));
    }

    @Test
    void partnersAndFinalsStandOnPaperAndFinalsInTheCalendar() throws IOException {
        Program.run(
                "sheets",
                Scenarios.FOLDER.resolve("doubles-open.yaml"),
                "--into",
                into,
                "--replications",
                1,
                "--first-day",
                "2027-03-06",
                "--sets",
                "usual");

        Document sheet = html("assignments.html");
        for (int squad = 1; squad <= 3; squad++) {
            assertThat(sheet.select("#groups-" + squad + " tbody tr").eachText())
                    .hasSize(4)
                    .allSatisfy(group -> assertThat(group).matches("\\d .+ & .+ \\(\\w+\\) \u00b7 .+ & .+ \\(\\w+\\)"));
        }
        assertThat(sheet.select("#qualifying tbody tr")).hasSize(8);
        assertThat(sheet.select("#matches tbody tr").eachText())
                .contains(
                        "1 1 1-2 seed 1 seed 8",
                        "1 4 7-8 seed 2 seed 7",
                        "3 7 1-2 winner of match 5 winner of match 6");
        assertThat(html("cards.html").select(".card"))
                .hasSize(48)
                .allSatisfy(card -> assertThat(card.text()).containsPattern("Your partners as \\w+: \\w+ \\w+"));
        assertThat(html("oiling.html").select("#oilings tbody tr").eachText())
                .hasSize(4)
                .last()
                .asString()
                .startsWith("finals cleaned and oiled day 2 14:");
        assertThat(html("oiling.html").text()).contains("Before the finals");
        assertThat(table("assignments.csv").get(0).isMapped("partners")).isTrue();
        assertThat(Files.readString(into.resolve("calendar.ics")))
                .contains("Doubles open: finals", "oiled before the finals", "DTSTART:20270307T150000");
    }

    /** What is printed after a change is what `rotate` tells of it, and says that it is no longer the plan. */
    @Test
    void lateChangesStandOnPaper() throws IOException {
        Path event = Scenarios.FOLDER.resolve("club-final.yaml");
        Object[] changes = {"--no-shows", "Amber,Onyx", "--late", "A=3h", "--without", "3-4"};
        sheets(event, changes);
        Document sheet = html("assignments.html");
        String told = Program.run(
                        "rotate", event, changes[0], changes[1], changes[2], changes[3], changes[4], changes[5])
                .out();

        assertThat(sheet.text()).contains("as changed", "Practice from 12:00", "bowls without Amber");
        assertThat(sheet.select("#groups-1, #groups-2").text()).doesNotContain("Amber", "Onyx");
        assertThat(sheet.select("#pairs-1, #pairs-2").text()).doesNotContain("3-4");
        assertThat(html("cards.html").text()).contains("as changed").doesNotContain("3-4 ");
        assertThat(told).contains("Squad A starts at 12:00 in place of 09:00.");
        Program.Outcome preview =
                Program.run("preview", event, "--bowler", "Cedar", "--without", "1-2", "--replications", 2);
        assertThat(preview.out()).contains("What has changed on the day").doesNotContain("pair 1-2,");
    }

    @Test
    void theCutAndTheFinalsStayAfterALateChangeAndFinalsLeaveTheLostPair() {
        Path event = Scenarios.FOLDER.resolve("small-open.yaml");

        String played = Program.run("simulate", event, "--without", "1-2", "--replications", 2, "--quiet")
                .out()
                .replaceAll("\\s+", " ");
        Program.Outcome tooFew = Program.run("simulate", event, "--without", "1-2,3-4", "--replications", 2);

        assertThat(played)
                .contains("6 of 21 people go on", "1 game a match, on 3-4, 5-6, 7-8, on the lanes as they are");
        assertThat(tooFew.exitCode()).isEqualTo(2);
        assertThat(tooFew.err()).contains("The finals have 3 matches at once, and only 2 pairs are left to them");
    }

    /** A card is a short preview: for his own style, level and ball, from as many playings. */
    @Test
    void aCardTellsABowlerWhatHisPreviewTellsHim() throws IOException {
        Program.run("sheets", Scenarios.FOLDER.resolve("club-final.yaml"), "--into", into, "--replications", 3);
        Document cards = html("cards.html");
        for (String bowler : List.of("Amber", "Dune", "Onyx")) {
            JsonNode games = JsonMapper.shared()
                    .readTree(Program.run(
                                    "preview",
                                    Scenarios.FOLDER.resolve("club-final.yaml"),
                                    "--bowler",
                                    bowler,
                                    "--replications",
                                    3,
                                    "--format",
                                    "json")
                            .out())
                    .get("games");
            Element card = cards.select(".card").stream()
                    .filter(each -> each.selectFirst("h2").text().equals(bowler))
                    .findFirst()
                    .orElseThrow();
            List<Element> rows = card.select("tbody tr");
            assertThat(rows).hasSameSizeAs(games);
            for (int game = 0; game < rows.size(); game++) {
                JsonNode told = games.get(game);
                List<String> cells = rows.get(game).select("td").eachText();
                same(cells.get(2), told.get("laydownBoard"));
                same(cells.get(4), told.get("arrowsBoard"));
                same(cells.get(5).split("-", -1)[0], told.at("/exitWindow/low"));
                same(cells.get(5).split("-", -1)[1], told.at("/exitWindow/high"));
            }
        }
    }

    /** A card has whole boards, the answer hundredths. */
    private static void same(String cell, JsonNode board) {
        assertThat(Double.parseDouble(cell)).isCloseTo(board.asDouble(), within(0.506));
    }

    /** Two lanes, one machine, 45 s to strip and 45 s to oil each, 5 s from one to the other, to be done by 18:00. */
    @Test
    void theOilingPlanEndsWhenTheSquadStartsAndCarriesCautions() throws IOException {
        sheets(ONE_PAIR);

        Document sheet = html("oiling.html");
        assertThat(sheet.select("#plan-1 tbody tr").eachText())
                .containsExactly("1 1 17:56:55 17:58:25", "2 1 17:58:30 18:00:00");
        assertThat(sheet.select("#oilings tbody tr").text())
                .isEqualTo("evening cleaned and oiled 17:56:55 18:00 18:00");
        assertThat(sheet.text()).contains("Trained staff only.", "cut its power", "39 ft, 23 mL, 4:1");
    }

    /** Fresh oil: the first start is the natural line of the sheet, as `lines` tells it. */
    @Test
    void everyBowlerHasACardWithAllGames() throws IOException {
        sheets(ONE_PAIR);

        Document sheet = html("cards.html");
        assertThat(sheet.select(".card")).hasSize(2);
        assertThat(sheet.select(".card h2").eachText()).containsExactly("Anchor", "Leadoff");
        assertThat(sheet.select("#card-1 tbody tr")).hasSize(6);
        assertThat(sheet.select("#card-1 tbody tr").get(0).text())
                .matches("1 18:\\d\\d 1-2 \\d+ \\d+-\\d+ \\d+ \\d+-\\d+");
        assertThat(sheet.select(".card").get(0).text())
                .contains("Practice from 18:00 on 1-2; you start on lane 1.", "With Leadoff.");
        assertThat(sheet.select(".card").get(1).text()).contains("you start on lane 2.", "With Anchor.");
        assertThat(sheet.text()).contains("not a lane inspection and not a ruling");
    }

    @Test
    void theCalendarPassesAnotherProgramsReader() throws IOException, ParserException {
        sheets(Scenarios.FOLDER.resolve("championship.yaml"), "--first-day", "2027-03-06");

        Calendar calendar = calendar();
        calendar.validate();
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        assertThat(events).hasSize(4);
        assertThat(events.get(0).getSummary().getValue())
                .isEqualTo("Three squads on one oiling: lanes cleaned and oiled before squad A");
        assertThat(start(events.get(0))).isEqualTo(LocalDateTime.of(2027, 3, 6, 7, 22));
        assertThat(start(events.get(2))).isEqualTo(LocalDateTime.of(2027, 3, 6, 13, 30));
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameIsTextEverywhere(String name) throws IOException, ParserException {
        Path scenario = folder.resolve("hostile.yaml");
        String quoted = Scenarios.quoted(name);
        Files.writeString(
                scenario,
                Files.readString(ONE_PAIR)
                        .replace("name: Two bowlers on one pair", "name: " + quoted)
                        .replace("id: Anchor", "id: " + quoted));

        Program.Outcome outcome = sheets(scenario, "--first-day", "2027-03-06");

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        for (String file : List.of("assignments.html", "oiling.html", "cards.html")) {
            Document sheet = html(file);
            assertThat(sheet.selectFirst(".event").text()).isEqualTo(name);
            assertThat(sheet.select("script, img, iframe")).isEmpty();
        }
        assertThat(html("cards.html").selectFirst(".card h2").text()).isEqualTo(name);
        String cell = table("assignments.csv").get(0).get("bowler");
        assertThat(cell).endsWith(name).doesNotMatch("(?s)^\\s*[=+@\\-].*");
        assertThat(calendar()
                        .<VEvent>getComponents(Component.VEVENT)
                        .get(0)
                        .getSummary()
                        .getValue())
                .startsWith(name);
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldAndNothingIsLeft() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");

        Program.Outcome taken = Program.run("sheets", ONE_PAIR, "--into", file);
        Program.Outcome missing = Program.run("sheets", ONE_PAIR, "--into", folder.resolve("no/where"));

        assertThat(taken.exitCode()).isEqualTo(3);
        assertThat(taken.err()).contains("which is a file").hasLineCount(1);
        assertThat(missing.exitCode()).isEqualTo(3);
        assertThat(missing.err()).contains("there is no folder").hasLineCount(1);
        assertThat(file).hasContent("mine");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--paper a5|must be one of [a4, letter]",
                "--first-day 6.3.2027|must be a date such as 2027-03-06",
                "--format csv|leave --format out"
            })
    void wrongOptionsAreToldWhatToWrite(String options, String advice) {
        Program.Outcome outcome = sheets(ONE_PAIR, (Object[]) options.split(" ", -1));

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains(advice).hasLineCount(1);
    }

    private Program.Outcome sheets(Path scenario, Object... options) {
        return Program.runWith(List.of("sheets", scenario, "--into", into, "--replications", 1), options);
    }

    private Document html(String name) throws IOException {
        return Jsoup.parse(into.resolve(name).toFile());
    }

    private List<CSVRecord> table(String name) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                Files.readString(into.resolve(name)),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }

    private Calendar calendar() throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(Files.readString(into.resolve("calendar.ics"))));
    }

    private static LocalDateTime start(VEvent event) {
        return event.<LocalDateTime>getDateTimeStart().getDate();
    }
}
