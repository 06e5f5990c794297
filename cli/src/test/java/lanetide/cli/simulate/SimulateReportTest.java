package lanetide.cli.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenarios;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.TimeSpread;
import lanetide.squads.study.TimetableStatistics;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reports of a result made up by hand, so that every figure is known. */
class SimulateReportTest {
    private static final Reading READING = Scenarios.read(Scenarios.SOUND);
    private static final LaneChoice NONE = new LaneChoice(false, OptionalInt.empty());

    @Test
    void aWindowThatDoesNotExistIsNullInJsonAndADashInText() {
        StudyResult study = study(window(7.126, 10.874, 9), gone());

        JsonNode games = JsonMapper.shared()
                .readTree(SimulateJson.write(READING, study))
                .get("lanes")
                .get(0)
                .get("games");

        assertThat(games.get(0).get("windows").get(0).get("low").asDouble()).isEqualTo(7.13);
        assertThat(games.get(1).get("windows").get(0).get("low").isNull()).isTrue();
        assertThat(games.get(1).get("windows").get(0).get("best").isNull()).isTrue();
        assertThat(text(study)).contains("tweener (right)   7-11       -");
        assertThat(sentences(study)).contains("In the end no line meets the pocket for tweener (right).");
        assertThat(LanesCsv.write(study.first().lanes()))
                .contains("tweener,right,7.13,10.87,9.00\r\n", "tweener,right,,,\r\n");
    }

    @Test
    void aMoveIsToldWithItsDirection() {
        assertThat(sentences(study(window(7, 11, 9), window(9.5, 12.5, 11))))
                .contains("moves toward the middle of the lane (boards): 2.0 for tweener (right).")
                .contains("Its mean width goes from 4.0 to 3.0 boards.");
        assertThat(sentences(study(window(7, 11, 9), window(5, 10, 7))))
                .contains("moves toward the gutter (boards): 1.5 for tweener (right).");
        assertThat(sentences(study(window(7, 11, 9), window(7.2, 11.2, 9))))
                .contains("moves by less than 1 board for every style it is known for.");
    }

    @Test
    void wearIsToldAsAShare() {
        assertThat(sentences(study(window(7, 11, 9), window(7, 11, 9))))
                .contains("finds 80 units of oil on the most worn board of the heads and leaves 60 (25 % less).")
                .contains("lane 1 (60)");
    }

    @Test
    void timesAreWrittenAsAScenarioWritesThem() {
        JsonNode answer =
                JsonMapper.shared().readTree(SimulateJson.write(READING, study(window(7, 11, 9), window(7, 11, 9))));

        assertThat(answer.get("squads").get(0).get("start").asString()).isEqualTo("18:00");
        assertThat(answer.get("squads").get(0).get("end").asString()).isEqualTo("day 2 00:30");
        assertThat(answer.get("timetable").get(0).get("what").asString()).isEqualTo("practice");
        assertThat(answer.get("squads").get(0).get("meanScore").asDouble()).isEqualTo(190.12);
    }

    @Test
    void scoresStandByBowlerWithTheirSheets() {
        StudyResult study = study(window(7, 11, 9), window(7, 11, 9));
        JsonNode result = JsonMapper.shared()
                .readTree(SimulateJson.write(READING, study))
                .get("squads")
                .get(0)
                .get("results")
                .get(0);

        assertThat(result.get("scores").get(0).asInt()).isEqualTo(190);
        assertThat(result.get("sheets").get(0).asString()).isEqualTo("9/9/");
        assertThat(result.get("handicapPins").asInt()).isZero();
        assertThat(sentences(study))
                .contains("First playing, squad A: most pins 190 by "
                        + result.get("id").asString() + ".");
    }

    @Test
    void handicapsAndChangesOfTheBallAreTold() {
        Bowler bowler = Scenarios.oneBowler();
        SquadResult squad = new SquadResult(
                "A",
                0,
                1,
                List.of(
                        new BowlerResult(bowler, "1", 0, List.of(200, 190), List.of("", ""), 1),
                        new BowlerResult(bowler.withHandicap(20), "1", 0, List.of(190, 180), List.of("", ""), 2)),
                PaceKept.NOTHING);

        assertThat(BowlerResults.words(
                        squad, 1, READING.scenario().orElseThrow().event()))
                .contains(
                        "most pins 390 by",
                        "; with handicap most pins 410 by",
                        "; 2 changed the ball, 3 times in all.");
    }

    /** The page with its lines joined, so that a wrapped sentence can be found. */
    private static String sentences(StudyResult study) {
        return text(study).replaceAll("\\s+", " ");
    }

    private static String text(StudyResult study) {
        return SimulateText.write(READING.scenario().orElseThrow(), study, NONE, false);
    }

    private static StyleWindow window(double low, double high, double best) {
        return new StyleWindow("tweener", Hand.RIGHT, Optional.of(new StyleWindow.Boards(low, high, best)));
    }

    private static StyleWindow gone() {
        return new StyleWindow("tweener", Hand.RIGHT, Optional.empty());
    }

    private static TimeSpread sure(long timeMs) {
        return new TimeSpread(timeMs, timeMs, timeMs);
    }

    private static StudyResult study(StyleWindow before, StyleWindow after) {
        long startMs = 18 * 3_600_000L;
        long endMs = startMs + 6 * 3_600_000L + 30 * 60_000L;
        Bowler bowler = Scenarios.oneBowler();
        EventResult first = new EventResult(
                List.of(new SquadResult(
                        "A",
                        startMs,
                        endMs,
                        List.of(new BowlerResult(bowler, "1", 0, List.of(190), List.of("9/9/"), 0)),
                        PaceKept.NOTHING)),
                List.of(new TimetableEntry("A", TimetableEntry.Activity.PRACTICE, 0, startMs, startMs + 600_000)),
                List.of(
                        new LaneState(1, "A", 0, 0, 23, 82, 80, 0, List.of(before)),
                        new LaneState(1, "A", 1, 1, 22, 75, 60, 0.1, List.of(after))),
                new OilAccount(46, 44, 0.5, 0.5, 1, 0),
                17,
                List.of());
        return new StudyResult(
                first,
                List.of(new SquadStatistics(
                        "A",
                        190.123,
                        Optional.empty(),
                        Optional.empty(),
                        List.of(190.123),
                        endMs,
                        endMs,
                        PaceKept.NOTHING)),
                List.of(new TimetableStatistics(
                        "A", TimetableEntry.Activity.PRACTICE, 0, sure(startMs), sure(startMs + 600_000))),
                1,
                1,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
