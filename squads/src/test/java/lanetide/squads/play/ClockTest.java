package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.PinsWithoutOil;
import lanetide.squads.study.DayClock;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTest {
    /** A tenth of the study, with its code and its seeds. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(ints = {1, 12, 23, 34, 45, 56})
    void theClockWithoutOilIsWithinThreeMinutesOfTheMeanOfFortyPlayingsWithIt(int number) {
        assertThat(ClockStudy.farthestMinutes(number)).isBetween(-3.0, 3.0);
    }

    /** A quarter of the count by which the file was written. */
    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"elite, 44, 1.5", "scratch, 36, 6", "league, 40, 3", "casual, 40, 10"})
    void pinsFallWithoutOilAsOftenAsInPlayingsWithIt(String level, int feet, double ratio) {
        PatternMeasures pattern = PatternMeasures.of(
                OilFilm.fresh(OilPattern.of("test", feet * LaneGeometry.FOOT_M, 25, ratio), LaneGrid.DEFAULT));
        PinsWithoutOil.Shares told = new PinsWithoutOil().of(Events.level(level), pattern);
        PinsWithoutOilStudy.Shares counted =
                PinsWithoutOilStudy.of(level, feet, ratio, 0, PinsWithoutOilStudy.PLAYINGS / 4);

        assertThat(told.strikes()).isCloseTo(counted.strikes(), within(0.025));
        assertThat(told.ones()).isCloseTo(counted.ones(), within(0.03));
        assertThat(told.cleared()).isCloseTo(counted.cleared(), within(0.03));
    }

    /**
     * Source: the governing body's tournament of 2013 started squads of six bowlers a pair and six games every four
     * hours, oiling included (7:00, 11:00, 15:00, 19:00), so that the play itself takes less.
     */
    @Test
    void aUsualSquadOfSixOnAPairPlaysSixGamesWithinThePublishedFourHours() {
        assertThat(playMs(6, 6)).isBetween(3 * 3_600_000L, 4 * 3_600_000L);
    }

    /** The shortest on lanes where everybody strikes: by hand (10 x 36 s + 2 x 28 s) x 2 / 2 = 416 s a game of two. */
    @ParameterizedTest
    @CsvSource({"2, 1", "2, 3", "4, 2"})
    void theClockTakesLongerThanStrikesAlone(int bowlers, int games) {
        assertThat(playMs(bowlers, games)).isGreaterThan((long) games * bowlers * 208_000L);
    }

    @Test
    void gamesEndInTheirOrderAndTheLastWithTheSquad() {
        DayClock.SquadClock squad = clock(event(4, 3)).squads().get(0);

        assertThat(squad.games())
                .hasSize(3)
                .isSortedAccordingTo((one, other) -> Long.compare(one.meanMs(), other.meanMs()));
        assertThat(squad.games().get(2)).isEqualTo(squad.end());
        assertThat(squad.start().meanMs()).isEqualTo(Events.START_MS);
    }

    @Test
    void theSameSeedTellsTheSameClock() {
        Event event = event(3, 2);
        assertThat(clock(event)).isEqualTo(clock(event));
        assertThat(DayClock.of(event, 2)).isNotEqualTo(clock(event));
    }

    private static long playMs(int bowlers, int games) {
        return clock(event(bowlers, games)).squads().get(0).end().meanMs() - Events.START_MS;
    }

    private static DayClock clock(Event event) {
        return DayClock.of(event, 1);
    }

    private static Event event(int bowlers, int games) {
        List<Group> groups = List.of(new Group(
                "1",
                IntStream.range(0, bowlers)
                        .mapToObj(i -> Events.bowler("b" + i))
                        .toList()));
        return Fixtures.event(
                "test",
                Events.centre(1),
                Events.PATTERN,
                List.of(Fixtures.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, 0, groups)),
                List.of(Events.stay(1, 1, games)),
                PaceOfPlay.USUAL);
    }
}
