package lanetide.cli.scenario.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Severity;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Event;
import lanetide.squads.study.DayClock;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of measurements as people keep them, and what is said of those that cannot be read. */
class MeasuredReaderTest {
    /** Two squads on three pairs; squad B has one group, which bowls a game on each pair in turn. */
    private static final Event EVENT = event(Scenarios.SOUND
                    .substring(0, Scenarios.SOUND.indexOf("field:"))
                    .replace("1 to 4", "1 to 6")
                    .replace("rotation: stay", "rotation: right")
                    .replace("oil: fresh}\n", "oil: fresh}\n  - {id: Late, start: \"21:30\", oil: fresh}\n")
            + """
            entries:
              - {id: Anchor, squad: A, group: 1, hand: right, style: stroker, level: league, cover: urethane}
              - {id: Lead off, squad: A, group: 2, hand: left, style: tweener, level: scratch, cover: plastic}
              - {id: Third, squad: A, group: 3, hand: right, style: tweener, level: scratch, cover: plastic}
              - {id: Jörg, squad: Late, group: 1, hand: right, style: stroker, level: league, cover: urethane}
              - {id: Third, squad: Late, group: 1, hand: right, style: tweener, level: scratch, cover: plastic}
              - {id: TWIN, squad: Late, group: 1, hand: right, style: stroker, level: league, cover: urethane}
              - {id: Twin, squad: Late, group: 1, hand: right, style: stroker, level: league, cover: urethane}
            """);

    /** The sound scenario: one squad of eight on two pairs for three games. */
    private static final Event ONE_SQUAD = event(Scenarios.SOUND);

    private final Notices notices = new Notices("event.yaml");

    private static Event event(String scenario) {
        Reading reading = Scenarios.read(scenario);
        return reading.scenario()
                .orElseThrow(() -> new IllegalStateException(reading.notices().toString()))
                .event();
    }

    @Test
    void tapesAreReadWithWhereAndWhenTheyWereTaken() {
        List<TapeTaken> tapes = read("""
                Lane,Squad,After,Distance (ft),Board,Units,Error
                5,A,2,22,10,31.5,3
                """).tapes();

        assertThat(tapes)
                .containsExactly(
                        new TapeTaken(5, new When("A", 2), 22 * LaneGeometry.FOOT_M, 10, 31.5, 3, "lanes.csv line 2"));
    }

    @Test
    void ballsAreReadWithWhoThrewThem() {
        List<BallThrown> balls = read("""
                lane,squad,after,bowler,laydown,arrows,met the pins,speed,revs,error
                2,Late,0,Jörg,14,10.5,17.5,17 mph,300,0.25
                """).balls();

        assertThat(balls).singleElement().satisfies(ball -> {
            assertThat(ball)
                    .isEqualTo(new BallThrown(
                            OptionalInt.of(2),
                            new When("Late", 0),
                            Optional.of("Jörg"),
                            new BallSeen(
                                    OptionalDouble.of(14),
                                    OptionalDouble.of(10.5),
                                    Optional.empty(),
                                    OptionalDouble.of(17.5),
                                    0.25),
                            ball.speedMps(),
                            ball.spinRadps(),
                            "lanes.csv line 2"));
            // 1 mph = 1609.344 m / 3600 s; a revolution is 2 pi.
            assertThat(ball.speedMps().orElseThrow()).isEqualTo(17 * 1609.344 / 3600, within(1e-9));
            assertThat(ball.spinRadps().orElseThrow()).isEqualTo(300 * 2 * Math.PI / 60, within(1e-9));
        });
    }

    @Test
    void whateverOfABallNobodyNotedMayBeMissing() {
        List<BallThrown> balls = readOne("""
                lane,bowler,after,laydown,arrows,distance (ft),passed,met
                ,A-01,0,14,10,,,17
                1,,0,14,10,,,17
                1,A-01,1,,10,,,17
                1,A-01,1,14,,,,17
                1,A-01,1,14,10,40,8.5,
                1,A-01,0,,10,40,,
                ,,3,,,45,11,
                """).balls();

        assertThat(balls)
                .extracting(
                        ball -> ball.lane().isPresent(),
                        ball -> ball.bowler().isPresent(),
                        ball -> ball.seen().laydownBoard().isPresent(),
                        ball -> ball.seen().arrowsBoard().isPresent(),
                        ball -> ball.seen().passed().isPresent(),
                        ball -> ball.seen().pinsBoard().isPresent())
                .containsExactly(
                        tuple(false, true, true, true, false, true),
                        tuple(true, false, true, true, false, true),
                        tuple(true, true, false, true, false, true),
                        tuple(true, true, true, false, false, true),
                        tuple(true, true, true, true, true, false),
                        tuple(true, true, false, true, false, false),
                        tuple(false, false, false, false, true, false));
        assertThat(balls.get(4).seen().passed()).contains(new BallSeen.Passed(40 * LaneGeometry.FOOT_M, 8.5));
        assertThat(balls.get(6).when()).isEqualTo(new When("A", 3));
    }

    /** Squad Late bowls three games, one of them on each pair. */
    @Test
    void whereNoLaneIsKnownGamesAreThoseOfTheSquad() {
        String titles = "lane,squad,after,bowler,laydown,arrows,met\n";
        assertThat(read(titles + ",Late,all,Jörg,14,10,17\n").balls())
                .extracting(BallThrown::when)
                .containsExactly(new When("Late", 3));
        tables(EVENT, titles + ",Late,4,Jörg,14,10,17\n,Nobody,1,Jörg,14,10,17\n");
        assertThat(told()).containsExactly("OUT_OF_RANGE 2:3 after", "UNKNOWN_NAME 3:2 squad");
        assertThat(messages()).contains("So many games squad Late bowls; count those that were done.");
    }

    @Test
    void aBoardThatABallPassedMustHaveItsDistance() {
        tables(ONE_SQUAD, "lane,bowler,laydown,arrows,distance,passed\n1,A-01,14,10,,8\n1,A-01,14,10,70,8\n");
        tables(ONE_SQUAD, "lane,bowler,laydown,arrows,passed\n1,A-01,14,10,8\n");

        assertThat(told())
                .containsExactlyInAnyOrder(
                        "READINGS_INCOMPLETE 2:6 passed",
                        "OUT_OF_RANGE 3:5 distance",
                        "READINGS_INCOMPLETE 2:5 passed");
    }

    @Test
    void aBallThatTeachesNothingIsKeptAndTold() {
        Measurements found = tables(
                ONE_SQUAD,
                "lane,bowler,after,laydown,arrows,met\n1,A-01,1,14,10,\n1,,0,14,10,\n1,A-01,0,14,,\n1,A-01,0,14,10,\n");

        assertThat(found.balls()).hasSize(4);
        assertThat(told())
                .containsExactly(
                        "VALUE_WITHOUT_EFFECT 2:1 lane",
                        "VALUE_WITHOUT_EFFECT 3:1 lane",
                        "VALUE_WITHOUT_EFFECT 4:1 lane");
        assertThat(notices.list()).allMatch(notice -> notice.severity() == Severity.WARNING);
    }

    /** A misspelt title must not go by in silence: each ball would then be anybody's. */
    @Test
    void aColumnOfBallsThatIsNotThereIsTold() {
        Measurements found = tables(ONE_SQUAD, "lne,arrows,met\n1,10,17\n");

        assertThat(found.balls()).hasSize(1);
        assertThat(told()).containsExactly("COLUMN_LEFT_OUT 1:1", "COLUMN_LEFT_OUT 1:1", "COLUMN_LEFT_OUT 1:1");
        assertThat(messages()).contains("no column `lane`", "no column `bowler`", "no column `laydown`");
    }

    @Test
    void scoresAreReadWithSquadAndGame() {
        assertThat(read("Squad,Game,Bowler,Score\nA,3,Anchor,300\nLate,game 1,Jörg,0 pins\n")
                        .scores())
                .containsExactly(
                        new ScoreMade("A", 3, "Anchor", 300, "lanes.csv line 2"),
                        new ScoreMade("Late", 1, "Jörg", 0, "lanes.csv line 3"));
    }

    @Test
    void whatIsLeftOutIsAsUsual() {
        Measurements tape = readOne("lane,distance,board,units,error\n1,22,10,31,\n");
        Measurements ball = readOne("lane,bowler,laydown,arrows,met,speed,revs\n1,A-01,14,10,17,,\n");

        assertThat(tape.tapes().get(0).errorUnits()).isEqualTo(TapeTaken.USUAL_ERROR_UNITS);
        assertThat(tape.tapes().get(0).when()).isEqualTo(new When("A", 0));
        assertThat(ball.balls().get(0).seen().errorBoards()).isEqualTo(BallSeen.USUAL_ERROR_BOARDS);
        assertThat(ball.balls().get(0).speedMps()).isEmpty();
        assertThat(ball.balls().get(0).spinRadps()).isEmpty();
        assertThat(ball.balls().get(0).when()).isEqualTo(new When("A", 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|0",
                "''|0",
                "fresh|0",
                "Before|0",
                "1|1",
                "game 2|2",
                "after game 2|2",
                "3 games|3",
                "all|3",
                "END|3",
                "after the last|-1",
                "after last game|3"
            })
    void whenIsWrittenByGamesOrInAWord(String written, int games) {
        List<TapeTaken> tapes = tables(ONE_SQUAD, "lane,after,distance,board,units\n1," + written + ",22,10,31\n")
                .tapes();

        assertThat(tapes).extracting(tape -> tape.when().afterGame()).isEqualTo(games < 0 ? List.of() : List.of(games));
    }

    @Test
    void theLastGameIsTheLastOfTheSquadOnThePair() {
        assertThat(read("lane,squad,after,distance,board,units\n1,A,end,22,10,31\n1,late,end,22,10,31\n")
                        .tapes())
                .extracting(TapeTaken::when)
                .containsExactly(new When("A", 3), new When("Late", 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "LANE,Distance,Board,Oil",
                "Lane no.,Distance from foul line (ft),Board number,Units of oil",
                "lane #,ft,on board,reading",
                " lane , DISTANCE IN FEET ,board,film (units)",
                "Lane,at,BOARD,Unit"
            })
    void titlesOfTapesMayBeWrittenFreely(String titles) {
        assertThat(readOne(titles + "\nLane 3,22,10,31\n").tapes())
                .extracting(TapeTaken::lane, TapeTaken::board, TapeTaken::units)
                .containsExactly(tuple(3, 10, 31.0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lane,bowler,laydown,arrows,pins",
                "Lane,Name,Laid down on board,Board at the arrows,Board at the pins",
                "lane,player,Foul line,Target,Entry board",
                "LANE,WHO,Lay-down (boards),Arrow,Met (boards)"
            })
    void titlesOfBallsMayBeWrittenFreely(String titles) {
        assertThat(readOne(titles + "\n3,a-02,14,10,17\n").balls())
                .extracting(BallThrown::bowler, MeasuredReaderTest::boards)
                .containsExactly(tuple(Optional.of("A-02"), List.of(14.0, 10.0, 17.0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"game,bowler,score", "Game no.,Name,Pinfall", "Game,Bowler,Pins", "game,who,Scratch score"})
    void titlesOfScoresMayBeWrittenFreely(String titles) {
        assertThat(readOne(titles + "\n2,A-03,187\n").scores())
                .containsExactly(new ScoreMade("A", 2, "A-03", 187, "lanes.csv line 2"));
    }

    @Test
    void unitsStandInTitlesOrCells() {
        TapeTaken tape = readOne("lane,distance (m),board,oil (µm)\n1,6.7056,10,3\n")
                .tapes()
                .get(0);
        TapeTaken other =
                readOne("lane,distance,board,oil\n1,6.7056 m,10,3 um\n").tapes().get(0);

        assertThat(tape).isEqualTo(other);
        assertThat(tape.distanceM()).isEqualTo(22 * LaneGeometry.FOOT_M, within(1e-12));
        assertThat(tape.units() * OilFilm.UNIT_UM).isEqualTo(3, within(1e-12));
        assertThat(readOne("lane,bowler,laydown,arrows,met,speed (km/h)\n1,A-01,14,10,17,27\n")
                        .balls()
                        .get(0)
                        .speedMps()
                        .orElseThrow())
                .isEqualTo(7.5, within(1e-12));
    }

    @Test
    void endsOfGamesAreReadOnTheDayOfTheirSquad() {
        assertThat(read("squad,game,ended\nA,2,19:05\nLate,3,00:20\n").ends())
                .extracting(GameEnded::squad, GameEnded::game, GameEnded::endedMs)
                .containsExactly(tuple("A", 2, (19 * 60 + 5) * 60_000L), tuple("Late", 3, (24 * 60 + 20) * 60_000L));
        tables(EVENT, "squad,game,ended\nA,1,18:30\nA,1,18:31\nLate,1,11:00\nA,4,nine\n");
        assertThat(told())
                .containsExactly(
                        "READING_TWICE 3:3 ended",
                        "OUT_OF_RANGE 4:3 ended",
                        "OUT_OF_RANGE 5:2 game",
                        "BAD_TIME 5:3 ended");
    }

    /** Squad Late has one group, which bowls a game on each pair in turn; its lanes are oiled before 21:30. */
    @ParameterizedTest
    @CsvSource({
        "1, 17:30, A, 0",
        "1, 18:45, A, 1",
        "1, 20:45, A, 3",
        "1, 21:29, Late, 0",
        "3, 23:59, Late, 1",
        "5, 21:40, Late, 0"
    })
    void aTimeOfDayCountsTheGamesThatWereDoneOnTheLane(int lane, String time, String squad, int done) {
        String ends = "squad,game,ended\nA,1,18:44\nA,2,19:20\nA,3,20:40\nLate,1,21:55\nLate,2,22:20\nLate,3,22:45\n";
        MeasuredReader reader = new MeasuredReader(EVENT, () -> DayClock.of(EVENT, 1), Measurements.NONE);
        String tape = "lane,time,distance,board,units\n" + lane + "," + time + ",22 ft,10,31\n";
        reader.read("lanes.csv", tape.getBytes(StandardCharsets.UTF_8), notices);
        reader.read("ends.csv", ends.getBytes(StandardCharsets.UTF_8), notices);

        assertThat(sound(reader.measurements()).tapes())
                .extracting(TapeTaken::when)
                .containsExactly(new When(squad, done));
    }

    /** The clock of the day without oil ends three games of four bowlers on a pair between 19:10 and 19:40. */
    @Test
    void whereNobodyNotedTheTimesTheClockOfTheDayTellsThem() {
        assertThat(readOne("lane,time,distance,board,units\n1,17:50,22 ft,10,31\n1,19:50,22 ft,10,31\n")
                        .tapes())
                .extracting(TapeTaken::when)
                .containsExactly(new When("A", 0), new When("A", 3));
        tables(ONE_SQUAD, "lane,time,after,distance,board,units\n1,19:50,2,22 ft,10,31\n1,26:50,,22 ft,10,31\n");
        assertThat(told()).containsExactly("IMPOSSIBLE_COMBINATION 2:3 after", "BAD_TIME 3:2 time");
    }

    @Test
    void aSpreadsheetOfAnyCountryIsRead() {
        String table = "Lane;Squad;Bowler;Laydown;Arrows;Pins\n\n2;late;jörg;14,5;10;17,25\n;;;;;\n";
        for (byte[] bytes : List.of(
                table.getBytes(StandardCharsets.UTF_8),
                ("\uFEFF" + table).getBytes(StandardCharsets.UTF_8),
                table.getBytes(StandardCharsets.ISO_8859_1),
                table.replace(';', '\t').getBytes(Charset.forName("windows-1252")))) {
            MeasuredReader reader = new MeasuredReader(EVENT, () -> DayClock.of(EVENT, 1), Measurements.NONE);
            reader.read("lanes.csv", bytes, notices);

            assertThat(notices.list()).isEmpty();
            assertThat(reader.measurements().balls())
                    .extracting(BallThrown::bowler, MeasuredReaderTest::boards, BallThrown::place)
                    .containsExactly(tuple(Optional.of("Jörg"), List.of(14.5, 10.0, 17.25), "lanes.csv line 3"));
        }
    }

    @Test
    void namesMayDifferInCapitalsAndSpacesButNeverMeanTwo() {
        assertThat(read("squad,game,bowler,score\nsquad a,1,LEADOFF,200\nlate,1,Twin,150\nLATE,1,TWIN,160\n")
                        .scores())
                .extracting(ScoreMade::bowler, ScoreMade::pins)
                .containsExactly(tuple("Lead off", 200), tuple("Twin", 150), tuple("TWIN", 160));
        tables(EVENT, "squad,game,bowler,score\nLate,1,twin,150\n");
        assertThat(told()).containsExactly("UNKNOWN_NAME 2:3 bowler");
    }

    @Test
    void whoBowlsAgainIsFoundInEachSquadByHisNameAlone() {
        assertThat(read("squad,game,bowler,score\nA,1,third,200\nLate,1,Third,210\nLate,2,Third (late),220\n")
                        .scores())
                .extracting(ScoreMade::squad, ScoreMade::bowler, ScoreMade::pins)
                .containsExactly(
                        tuple("A", "Third", 200),
                        tuple("Late", "Third (Late)", 210),
                        tuple("Late", "Third (Late)", 220));
    }

    @Test
    void everyFaultOfARowIsToldWithItsCellValueAndLimit() {
        tables(EVENT, """
                lane,squad,after,distance,board,units,error
                7,B,x,70,40,-1,0
                1,A,4,22 ft,,31,
                2,late,2,22,10.5,abc,
                """);

        assertThat(told())
                .containsExactly(
                        "UNKNOWN_LANE 2:1 lane",
                        "UNKNOWN_NAME 2:2 squad",
                        "NOT_A_NUMBER 2:3 after",
                        "OUT_OF_RANGE 2:4 distance",
                        "OUT_OF_RANGE 2:5 board",
                        "NEGATIVE_VALUE 2:6 units",
                        "ZERO_VALUE 2:7 error",
                        "OUT_OF_RANGE 3:3 after",
                        "EMPTY_VALUE 3:5 board",
                        "OUT_OF_RANGE 4:3 after",
                        "NOT_WHOLE 4:5 board",
                        "NOT_A_NUMBER 4:6 units");
        assertThat(notices.list()).allSatisfy(notice -> {
            assertThat(notice.file()).isEqualTo("lanes.csv");
            assertThat(notice.message()).contains(notice.value()).endsWith(".");
        });
        assertThat(notices.list())
                .extracting(Notice::limit)
                .contains("from 0 ft to 60 ft", "from 1 to 39", "at most 3", "at most 1");
        assertThat(messages())
                .contains("the nearest is 6", "squad Late bowls on pair 1-2", "which is not a squad of the event");
    }

    @Test
    void theNearestNameIsOfferedAndTheSquadInWhichABowlerDoesBowl() {
        tables(EVENT, "squad,game,bowler,score\nLat,1,Jörg,150\nA,1,Ancor,150\nA,1,jörg,150\n");

        assertThat(messages())
                .contains(
                        "Did you mean `Late`?",
                        "Did you mean `Anchor`?",
                        "who does not bowl in squad A, but in squad Late");
    }

    @Test
    void boardsOfABallAndScoresHaveTheirLimits() {
        tables(ONE_SQUAD, "lane,bowler,laydown,arrows,met,speed,revs\n1,A-01,0,39.5,40,50,900\n");
        tables(ONE_SQUAD, "game,bowler,score\n4,A-01,301\n0,A-02,-1\n");

        assertThat(told())
                .containsExactlyInAnyOrder(
                        "ZERO_VALUE 2:3 laydown",
                        "OUT_OF_RANGE 2:4 arrows",
                        "OUT_OF_RANGE 2:5 met",
                        "OUT_OF_RANGE 2:6 speed",
                        "OUT_OF_RANGE 2:7 revs",
                        "OUT_OF_RANGE 2:1 game",
                        "OUT_OF_RANGE 2:3 score",
                        "ZERO_VALUE 3:1 game",
                        "NEGATIVE_VALUE 3:3 score");
    }

    @Test
    void aPlaceIsReadOnceAtATimeInAllTablesTogether() {
        MeasuredReader reader = new MeasuredReader(
                ONE_SQUAD, () -> DayClock.of(ONE_SQUAD, 1), readOne("lane,distance,board,units\n1,22 ft,10,31\n"));
        String rows = "lane,after,distance,board,units\n1,0,6.7056 m,10,30\n1,1,22 ft,10,30\n2,0,22 ft,10,30\n";
        reader.read("more.csv", rows.getBytes(StandardCharsets.UTF_8), notices);
        reader.read(
                "again.csv",
                "lane,after,distance,board,units\n1,1,22 ft,10,3\n".getBytes(StandardCharsets.UTF_8),
                notices);

        assertThat(reader.measurements().tapes()).hasSize(3);
        assertThat(told()).containsExactly("READING_TWICE 2:4 board", "READING_TWICE 2:4 board");
        assertThat(messages()).contains("lanes.csv line 2 has a reading of lane 1 at 22 ft", "more.csv line 3");
    }

    @Test
    void aBowlerScoresOnceInAGame() {
        Measurements found = tables(ONE_SQUAD, "game,bowler,score\n1,A-01,187\n2,A-01,187\n1,a-01,190\n");

        assertThat(told()).containsExactly("SCORE_TWICE 4:2 bowler");
        assertThat(messages()).contains("a score of game 1 in squad A already, in lanes.csv line 2");
        assertThat(found.scores()).hasSize(2);
    }

    @Test
    void theSameBallMayBeThrownTwice() {
        assertThat(readOne("lane,bowler,laydown,arrows,met\n1,A-01,14,10,17\n1,A-01,14,10,17\n")
                        .balls())
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lane,distance,board|TABLE_KIND_UNKNOWN 1:1 ",
                "''|TABLE_KIND_UNKNOWN 1:1 ",
                "1,22,10,31|TABLE_KIND_UNKNOWN 1:1 ",
                "lane,distance,board,units,score|TABLE_OF_TWO_KINDS 1:5 ",
                "lane,bowler,laydown,arrows,met,score|TABLE_OF_TWO_KINDS 1:6 ",
                "lane,distance,units|COLUMN_MISSING 1:1 ",
                "bowler,score|COLUMN_MISSING 1:1 ",
                "lane,game,distance,board,units|COLUMN_MISSING 1:1 "
            })
    void aTableOfNoKindOfTwoOrWithoutAColumnIsRefused(String header, String expected) {
        tables(ONE_SQUAD, header + "\n");

        assertThat(told()).containsExactly(expected.strip());
        assertThat(messages()).contains("`" + header + "`");
    }

    @Test
    void aSquadMustBeNamedWhereThereAreSeveral() {
        tables(EVENT, "lane,distance,board,units\n1,22,10,31\n");
        tables(EVENT, "lane,squad,distance,board,units\n1,,22,10,31\n");

        assertThat(told()).containsExactlyInAnyOrder("COLUMN_MISSING 1:1", "EMPTY_VALUE 2:2 squad");
    }

    @Test
    void aFurtherColumnIsPassedOverAndTold() {
        tables(ONE_SQUAD, "lane,distance,board,units,weather\n1,22,10,31,fair\n");

        assertThat(notices.list()).singleElement().satisfies(notice -> {
            assertThat(notice.severity()).isEqualTo(Severity.INFO);
            assertThat(notice.message()).contains("`weather` is not read; lane, distance, board, units, squad");
        });
    }

    /** Whatever is written, the answer is notices and never an exception. */
    @Test
    void tablesSpoiltAtRandomAreToldAndNothingEscapes() {
        UniformRandomProvider random = new RandomStreams(7).stream("spoilt tables");
        List<String> pieces = List.of(
                ",",
                ";",
                "\t",
                "\n",
                "\"",
                " ",
                "-",
                "0",
                "1e309",
                ".nan",
                "9999999999",
                "all",
                "lane",
                "pins",
                "µ",
                "\u0000");
        List<String> sound = List.of(
                "lane,squad,after,distance (ft),board,units,error\n5,A,2,22,10,31.5,3\n1,late,all,8,20,40,\n",
                "lane,squad,after,bowler,laydown,arrows,met\n2,Late,0,Jörg,14,10.5,17.5\n",
                "Squad;Game;Bowler;Score\nA;3;Anchor;300\nLate;game 1;Jörg;0 pins\n");
        int told = 0;
        for (int i = 0; i < 2000; i++) {
            StringBuilder table = new StringBuilder(sound.get(i % sound.size()));
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                int from = random.nextInt(table.length());
                int to = Math.min(table.length(), from + random.nextInt(4));
                table.replace(from, to, pieces.get(random.nextInt(pieces.size())));
            }
            MeasuredReader reader = new MeasuredReader(EVENT, () -> DayClock.of(EVENT, 1), Measurements.NONE);
            Notices found = new Notices("event.yaml");
            reader.read("lanes.csv", table.toString().getBytes(StandardCharsets.UTF_8), found);
            assertThat(found.list())
                    .allSatisfy(notice -> assertThat(notice.message()).endsWith("."));
            told += found.hasErrors() ? 1 : 0;
        }
        assertThat(told).isBetween(1000, 1999);
    }

    @ParameterizedTest
    @EnumSource
    void noTitleStandsForTwoColumnsOfOneKind(Kind kind) {
        Map<Column, Map<String, String>> titles = kind.units();

        assertThat(kind.columns())
                .hasSize(titles.values().stream().mapToInt(Map::size).sum());
        assertThat(kind.columns().keySet())
                .allMatch(title -> CsvTable.plain(title).equals(title));
    }

    @Test
    void pinsAloneAreTheOnlyTitleThatTellsOfTwoKinds() {
        Map<String, Long> kinds = Arrays.stream(Kind.values())
                .flatMap(kind -> kind.columns().keySet().stream().filter(kind::isToldBy))
                .collect(Collectors.groupingBy(title -> title, Collectors.counting()));

        assertThat(kinds.keySet()).filteredOn(title -> kinds.get(title) > 1).containsExactly("pins");
    }

    @Test
    void aTableOfTenThousandReadingsIsReadAtOnce() {
        String rows = IntStream.range(0, 10_000)
                .mapToObj(i -> "1,A-0" + (1 + i % 8) + ",14,10," + (10 + i % 20) + "\n")
                .collect(Collectors.joining());

        assertThat(readOne("lane,bowler,laydown,arrows,met\n" + rows).balls()).hasSize(10_000);
    }

    /** Reads a table of the event with two squads in which nothing is wrong. */
    private Measurements read(String table) {
        return sound(tables(EVENT, table));
    }

    /** Reads a table of the event with one squad in which nothing is wrong. */
    private Measurements readOne(String table) {
        return sound(tables(ONE_SQUAD, table));
    }

    private Measurements sound(Measurements found) {
        assertThat(notices.list()).isEmpty();
        return found;
    }

    private Measurements tables(Event event, String table) {
        MeasuredReader reader = new MeasuredReader(event, () -> DayClock.of(event, 1), Measurements.NONE);
        reader.read("lanes.csv", table.getBytes(StandardCharsets.UTF_8), notices);
        return reader.measurements();
    }

    private static List<Double> boards(BallThrown ball) {
        return Stream.of(
                        ball.seen().laydownBoard(),
                        ball.seen().arrowsBoard(),
                        ball.seen().pinsBoard())
                .map(OptionalDouble::orElseThrow)
                .toList();
    }

    private List<String> told() {
        return notices.list().stream()
                .filter(notice -> notice.code() != NoticeCode.COLUMN_IGNORED)
                .map(notice ->
                        (notice.code() + " " + notice.line() + ":" + notice.column() + " " + notice.field()).strip())
                .toList();
    }

    private String messages() {
        return notices.list().stream().map(Notice::message).collect(Collectors.joining("\n"));
    }
}
