package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Event;
import lanetide.squads.play.Events;
import lanetide.squads.study.Playable;
import lanetide.squads.watch.LaneMoment;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Looks at films that are laid here; no ball is played on them. */
class LaneLooksTest {
    private static final int GAMES = 2;
    private static final OilPattern SHORT = pattern(36);
    private static final OilPattern LONG = pattern(44);
    private static final Playable PLAYABLE = Playable.of(event());
    private static final List<TypicalPlayer> PLAYERS =
            TypicalPlayer.of(PLAYABLE.event(), PLAYABLE.physics(), PLAYABLE.lines());

    private LaneLooks eye;

    @BeforeEach
    void opens() {
        eye = new LaneLooks(PLAYABLE.event(), PLAYABLE.physics(), PLAYERS, GAMES);
    }

    private static OilPattern pattern(int feet) {
        return OilPattern.of("house", feet * LaneGeometry.FOOT_M, 22, 6);
    }

    /** Three pairs, of which four lanes are looked at: 1, 2, 3 and 6. */
    private static Event event() {
        return Fixtures.withPattern(
                Events.event(Events.centre(3), Events.stay(1, 3, GAMES), Events.oneGroup(Events.bowler("a"))), SHORT);
    }

    private void shows(int lane, int gamesOnOil, OilPattern pattern) {
        OilFilm film = OilFilm.fresh(pattern, PLAYABLE.physics().grid());
        eye.onLane(new LaneMoment(lane, "A", gamesOnOil, gamesOnOil), film, List.of());
    }

    @Test
    void nothingIsSeenBeforeALaneIsShown() {
        assertThat(eye.looks()).hasDimensions(4, GAMES + 1);
        assertThat(eye.looks()[0][0]).containsOnlyNulls().hasSize(PLAYERS.size());
    }

    @Test
    void aWindowIsSeenWhereItsLaneAndItsAgeBelong() {
        shows(1, 0, SHORT);
        shows(1, GAMES, LONG);

        LaneLooks.Look fresh = eye.looks()[0][0][0];
        LaneLooks.Look later = eye.looks()[0][GAMES][0];
        assertThat(eye.looks()[0][1]).containsOnlyNulls();
        assertThat(eye.looks()[1][0]).containsOnlyNulls();
        assertThat(fresh.widthBoards()).isBetween(0.2, 5.0);
        assertThat(fresh.pocketShare()).isBetween(0.2, 1.0);
        assertThat(later.bestBoard().orElseThrow())
                .isNotCloseTo(fresh.bestBoard().orElseThrow(), within(0.2));
    }

    @Test
    void whatIsSeenFirstAtAnAgeStays() {
        shows(1, 0, SHORT);
        LaneLooks.Look first = eye.looks()[0][0][0];

        shows(1, 0, LONG);

        assertThat(eye.looks()[0][0][0]).isSameAs(first);
    }

    @Test
    void otherLanesAndOlderOilAreNotLookedAt() {
        shows(4, 0, SHORT);
        shows(1, GAMES + 1, SHORT);

        assertThat(Arrays.stream(eye.looks()).flatMap(Arrays::stream).flatMap(Arrays::stream))
                .containsOnlyNulls();
    }

    /** A ball does not hook into the pocket through oil from end to end, nor is a window found in it. */
    @Test
    void whereThereIsNoLineThereIsNoBoardAndNoWidth() {
        shows(1, 0, OilPattern.of("flood", 58 * LaneGeometry.FOOT_M, 60, 1.1));

        LaneLooks.Look look = eye.looks()[0][0][0];
        assertThat(look.bestBoard()).isEmpty();
        assertThat(look.widthBoards()).isZero();
        assertThat(look.pocketShare()).isZero();
    }
}
