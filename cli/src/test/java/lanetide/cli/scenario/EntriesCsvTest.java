package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entry lists as people keep them. */
class EntriesCsvTest {
    private static final String SCENARIO =
            Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:")) + "entries: list.csv\n";

    @TempDir
    Path folder;

    @Test
    void headersMayBeWrittenFreelyAndStandInAnyOrder() throws IOException {
        Reading reading = read("""
                LAST NAME,First-Name,ball,Skill,Club,Playing style,HAND,Spare ball
                Arrow,Front,Medium Reactive,League,North,Tweener,R,
                "Row, the",Back,urethane,scratch,South,stroker,Left handed,Urethane

                Gutter,,plastic,casual,South,STRAIGHT,l,plastic
                """);

        assertThat(reading.notices())
                .allSatisfy(notice -> assertThat(notice.severity()).isEqualTo(Severity.INFO))
                .extracting(Notice::value)
                .contains("Club");
        List<Bowler> bowlers = bowlers(reading);
        assertThat(bowlers).extracting(Bowler::id).containsExactly("Front Arrow", "Back Row, the", "Gutter");
        assertThat(bowlers).extracting(Bowler::hand).containsExactly(Hand.RIGHT, Hand.LEFT, Hand.LEFT);
        assertThat(bowlers)
                .extracting(bowler -> bowler.cover().id())
                .containsExactly("medium-reactive", "urethane", "plastic");
        assertThat(bowlers.get(0).spareCover().id()).isEqualTo("plastic");
    }

    @Test
    void averagesTemposAndSecondBallsAreReadWithTheirUnitOrAsNumbersAlone() throws IOException {
        Reading reading =
                read("""
                Name,Hand,Style,Level,Ball,Second ball,Tempo,Average
                Anchor,R,tweener,league,strong reactive,Weak reactive,120,187
                Leadoff,R,stroker,league,urethane,,150 %,190 pins
                Gutter,L,straight,casual,plastic,,,
                """, "scoring: {handicap: {base: 220 pins, share: 90 %, averages: {casual: 140 pins}}}\n");

        List<Bowler> bowlers = bowlers(reading);
        // Nine tenths of 33, 30 and 80 pins, without fractions.
        assertThat(bowlers).extracting(Bowler::handicapPins).containsExactly(29, 27, 72);
        assertThat(bowlers).extracting(Bowler::tempo).containsExactly(1.2, 1.5, 1.0);
        assertThat(bowlers)
                .extracting(
                        bowler -> bowler.secondCover().map(cover -> cover.id()).orElse(""))
                .containsExactly("weak-reactive", "", "");
    }

    @Test
    void anAverageThatIsNoneIsToldWithItsCell() throws IOException {
        Reading reading = read("Name,Hand,Style,Level,Ball,Average\nAnchor,R,tweener,league,urethane,301\n");

        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.OUT_OF_RANGE)
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.line() + ":" + notice.column()).isEqualTo("2:6"));
    }

    @Test
    void everyColumnThatIsMissingIsTold() throws IOException {
        Reading reading = read("Hand,Club\nR,North\n");

        assertThat(reading.notices().stream()
                        .filter(notice -> notice.code() == NoticeCode.COLUMN_MISSING)
                        .map(Notice::message))
                .hasSize(2)
                .allSatisfy(message -> assertThat(message).contains("`Hand,Club`"));
        assertThat(reading.scenario()).isEmpty();
    }

    @Test
    void everyFaultOfATableIsToldWithItsLineAndCell() throws IOException {
        Reading reading = read("""
                Name,Hand,Style,Level,Ball
                Anchor,both,tweener,scratch,urethane
                Leadoff,left,stroker,,urethane
                Anchor,right,stroker,league,urethane,extra
                ,right,stroker,league,urethane
                """);

        assertThat(reading.notices())
                .extracting(notice -> notice.code() + " " + notice.line() + ":" + notice.column())
                .contains("UNKNOWN_NAME 2:2", "MISSING_KEY 3:1", "SYNTAX_ERROR 4:6", "EMPTY_VALUE 5:1");
        assertThat(reading.notices().get(0).file()).endsWith("list.csv");
    }

    @Test
    void aTableWithoutBowlersIsNoEntryList() throws IOException {
        assertThat(read("Name,Hand,Style,Level,Ball\n").notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.SQUAD_WITHOUT_BOWLERS);
    }

    /** A name is text: it may begin as it likes, but it must print and be a name, not a page. */
    @Test
    void aNameMayBeAnyTextOfUpTo200Characters() throws IOException {
        assertThat(bowlers(read("Name,Hand,Style,Level,Ball\n=Anchor,r,tweener,scratch,urethane\n" + "N".repeat(200)
                        + ",r,tweener,scratch,urethane\n")))
                .extracting(Bowler::id)
                .containsExactly("=Anchor", "N".repeat(200));
        assertThat(read("Name,Hand,Style,Level,Ball\n" + "N".repeat(201) + ",r,tweener,scratch,urethane\n")
                        .notices())
                .extracting(Notice::code)
                .contains(NoticeCode.BAD_TEXT);
    }

    /** Nine tenths of what an average lacks of 220, without fractions, worked by hand from the table. */
    @Test
    void theShippedLeagueGivesHandicapByTheAveragesInItsTable() throws IOException {
        Path league = Scenarios.FOLDER.resolve("league-night.yaml");
        Reading reading = new ScenarioReader(OptionalLong.empty()).read(league.toString(), Files.readAllBytes(league));

        List<Bowler> bowlers = bowlers(reading);
        assertThat(bowlers).hasSize(18);
        assertThat(bowlers.stream().collect(Collectors.toMap(Bowler::id, Bowler::handicapPins)))
                .containsEntry("Aster", 39)
                .containsEntry("Fennel", 72)
                .containsEntry("Granite", 8)
                .containsEntry("Ochre", 90);
        assertThat(reading.notices()).noneMatch(notice -> notice.severity() == Severity.WARNING);
    }

    private Reading read(String table) throws IOException {
        return read(table, "");
    }

    private Reading read(String table, String more) throws IOException {
        Files.writeString(folder.resolve("list.csv"), table);
        Path scenario = Files.writeString(folder.resolve("event.yaml"), SCENARIO + more);
        return new ScenarioReader(OptionalLong.empty()).read(scenario.toString(), Files.readAllBytes(scenario));
    }

    private static List<Bowler> bowlers(Reading reading) {
        return reading.scenario().orElseThrow().event().squads().get(0).groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .toList();
    }
}
