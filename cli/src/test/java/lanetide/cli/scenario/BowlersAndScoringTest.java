package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Scoring;
import lanetide.squads.score.ScoringSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BowlersAndScoringTest {
    private static final String COVERS = "  covers: {urethane: 25 %, medium-reactive: 75 %}\n";

    @ParameterizedTest
    @EnumSource
    void whatBowlersGoByIsChosenByName(Knowledge knowledge) {
        Reading reading =
                Scenarios.read(Scenarios.SOUND + "bowlers: {knowledge: " + knowledge.id() + ", tiring: 1 %}\n");

        assertThat(reading.notices()).isEmpty();
        assertThat(event(reading).bowling()).isEqualTo(new Bowling(knowledge, 0.01, Scoring.USUAL));
    }

    @Test
    void withoutAWordBowlersAndScoringAreTheUsual() {
        Scenario scenario = Scenarios.read(Scenarios.SOUND).scenario().orElseThrow();

        assertThat(scenario.event().bowling()).isEqualTo(Bowling.USUAL);
        assertThat(scenario.assumptions())
                .extracting(Assumption::name, Assumption::value)
                .contains(tuple("bowlers.knowledge", "seen-and-told"));
    }

    @Test
    void aLevelThatIsNotGivenIsToldByTheAverage() {
        String entries = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:")) + """
                entries:
                  - {id: Anchor, hand: right, style: stroker, cover: urethane, average: 219 pins}
                  - {id: Leadoff, hand: left, style: tweener, cover: plastic, average: 180 pins}
                  - {id: Third, hand: left, style: tweener, level: elite, cover: plastic, average: 140 pins}
                """;

        Reading reading = Scenarios.read(entries);

        assertThat(event(reading).squads().get(0).everybody().stream())
                .extracting(bowler -> bowler.id() + " " + bowler.level().id())
                .contains("Anchor scratch", "Leadoff league", "Third elite");
        assertThat(reading.scenario().orElseThrow().assumptions())
                .extracting(Assumption::name, Assumption::value)
                .contains(tuple(
                        "entries.level",
                        "level of 2 of 3 bowlers by average: elite from 220 pins, scratch from 200 pins, league from 180"
                                + " pins, else casual"));
    }

    @Test
    void withoutAverageALevelMustBeGiven() {
        String entries = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:")) + """
                entries:
                  - {id: Anchor, hand: right, style: stroker, cover: urethane}
                """;

        assertThat(Scenarios.read(entries).notices()).extracting(Notice::field).contains("entries[1].level");
    }

    @Test
    void aStyleIsReadFromALineThatTheBowlerTells() {
        PlayingStyle told = Scenarios.read(Scenarios.SOUND + told(14, 11))
                .scenario()
                .orElseThrow()
                .names()
                .styles()
                .get("mine");

        double acrossM = 3 * LaneGeometry.BOARD_M;
        assertThat(told.naturalLaunchRad()).isCloseTo(StrictMath.atan(acrossM / LaneGeometry.ARROWS_M), within(1e-12));
        assertThat(told.release().axisRotationRad()).isBetween(0.0, StrictMath.PI / 2);
    }

    @Test
    void aLineThatCannotBePlayedSoIsRefused() {
        assertThat(Scenarios.read(Scenarios.SOUND + told(18, 11)).notices())
                .extracting(Notice::field)
                .contains("styles.mine.plays.laydown");
    }

    private static String told(int laydown, int arrows) {
        return """
                styles:
                  mine:
                    speed: 18 mph
                    revRate: 330 rpm
                    plays:
                      laydown: %d boards
                      arrows: %d boards
                      ball: medium-reactive
                      pattern: {length: 40 ft, ratio: 8:1, volume: 23 mL}
                    source: told
                """.replace("laydown: %d", "laydown: " + laydown).replace("arrows: %d", "arrows: " + arrows);
    }

    @Test
    void scoringIsReadAsItIsWritten() {
        Reading reading =
                Scenarios.read(Scenarios.SOUND + "scoring: {system: current-frame, noTap: 9 pins, fouls: 0.5 %}\n");

        assertThat(reading.notices()).isEmpty();
        assertThat(event(reading).bowling().scoring()).isEqualTo(new Scoring(ScoringSystem.CURRENT_FRAME, 9, 0.005));
    }

    /** Nine tenths of 220 less 200 and less 180, worked by hand. */
    @Test
    void aHandicapFollowsTheAverageOfTheLevel() {
        Reading reading = Scenarios.read(
                Scenarios.SOUND
                        + "scoring: {handicap: {base: 220 pins, share: 90 %, averages: {scratch: 200 pins, league: 180 pins}}}\n");

        assertThat(reading.notices()).isEmpty();
        assertThat(bowlers(reading))
                .hasSize(8)
                .allSatisfy(bowler -> assertThat(bowler.handicapPins())
                        .isEqualTo(bowler.level().id().equals("scratch") ? 18 : 36));
    }

    @Test
    void aBowlersOwnAverageComesBeforeThatOfHisLevel() {
        String field = Scenarios.SOUND.substring(Scenarios.SOUND.indexOf("field:"));
        String entries = """
                entries:
                  - {id: Anna, hand: right, style: tweener, level: scratch, cover: urethane, average: 187 pins}
                  - {id: Ben, hand: left, style: tweener, level: scratch, cover: urethane}
                scoring: {handicap: {base: 200 pins, share: 80 %, averages: {scratch: 195 pins}}}
                """;

        Reading reading = Scenarios.readWith(field, entries);

        assertThat(bowlers(reading))
                .extracting(Bowler::id, Bowler::handicapPins)
                .containsExactlyInAnyOrder(tuple("Anna", 10), tuple("Ben", 4));
    }

    @Test
    void aSecondBallIsEverybodysOfAFieldAndOnesOwnOfAnEntry() {
        Reading reading = Scenarios.readWith(COVERS, COVERS + "  secondCover: plastic\n");

        assertThat(bowlers(reading))
                .extracting(bowler -> bowler.secondCover().map(Coverstock::id).orElse("none"))
                .containsOnly("plastic");
        assertThat(bowlers(Scenarios.read(Scenarios.SOUND)))
                .allSatisfy(bowler -> assertThat(bowler.secondCover()).isEmpty());
    }

    private static Event event(Reading reading) {
        return reading.scenario().orElseThrow().event();
    }

    private static List<Bowler> bowlers(Reading reading) {
        return event(reading).squads().get(0).groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .toList();
    }
}
