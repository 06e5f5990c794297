package lanetide.squads.unknown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.Topography;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Level;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.play.Events;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import org.junit.jupiter.api.Test;

class PlayModelTest {
    private static final ValueSet SET = ValueSets.shipped(3);
    private static final Bowler SHIPPED =
            Events.bowler("shipped", Hand.RIGHT, "power", Events.level("scratch"), "strong-reactive");

    @Test
    void whatShipsChangesWithTheSet() {
        Event event = Events.onePair(3, SHIPPED);
        Event possible = PlayModel.under(event, SET);
        Bowler bowler = possible.squads().get(0).groups().get(0).bowlers().get(0);
        assertThat(bowler.style()).isNotEqualTo(SHIPPED.style());
        assertThat(bowler.level()).isNotEqualTo(SHIPPED.level());
        assertThat(bowler.cover()).isNotEqualTo(SHIPPED.cover());
        assertThat(possible.centre().surface()).isNotEqualTo(event.centre().surface());
        assertThat(possible.pace().firstShotMs()).isNotEqualTo(event.pace().firstShotMs());
        assertThat(possible.pattern()).isNotEqualTo(event.pattern());
        assertThat(bowler.id()).isEqualTo(SHIPPED.id());
        assertThat(possible.rotations()).isEqualTo(event.rotations());
        assertThat(possible.squads().get(0).startMs())
                .isEqualTo(event.squads().get(0).startMs());
    }

    @Test
    void whatAScenarioStatesStaysAsItIs() {
        PlayingStyle style = SHIPPED.style();
        Level level = SHIPPED.level();
        Coverstock cover = SHIPPED.cover();
        Bowler own = new Bowler(
                "own",
                Hand.RIGHT,
                new PlayingStyle("own", style.release(), style.naturalLaunchRad(), "measured"),
                new Level("own", level.spread(), level.adaptation(), level.formShare(), "measured"),
                cover.finished("own", 0.8, "measured"),
                SHIPPED.spareCover(),
                1,
                Optional.empty(),
                0);
        PaceOfPlay usual = PaceOfPlay.USUAL;
        PaceOfPlay pace = new PaceOfPlay(
                20_000,
                usual.spareShotMs(),
                usual.spread(),
                usual.pinsetterMs(),
                usual.ballReturnMs(),
                usual.movePerPairMs(),
                usual.settleMs(),
                usual.courtesy());
        SheetPattern stated = ((SheetPattern) Events.PATTERN).falling(3, 0.2);
        Event onePair = Events.onePair(3, own);
        Event event = Fixtures.event("test", onePair.centre(), stated, onePair.squads(), onePair.rotations(), pace);
        Event possible = PlayModel.under(event, SET);
        Bowler bowler = possible.squads().get(0).groups().get(0).bowlers().get(0);
        assertThat(bowler.style()).isEqualTo(own.style());
        assertThat(bowler.level()).isEqualTo(own.level());
        assertThat(bowler.cover()).isEqualTo(own.cover());
        assertThat(possible.pace().firstShotMs()).isEqualTo(20_000);
        assertThat(possible.pattern()).isEqualTo(stated);
    }

    @Test
    void lanesNobodyMeasuredDifferUnderASetInTheSameWayWheneverItIsPlayed() {
        Event event = Events.onePair(3, SHIPPED);
        Centre possible = PlayModel.under(event, SET).centre();
        assertThat(possible.topography(1)).isNotEqualTo(possible.topography(2));
        assertThat(possible.machines().laid(1)).isNotEqualTo(possible.machines().laid(2));
        assertThat(possible.machines().laid(1).at(0, 1)).isBetween(0.76, 1.24);
        assertThat(PlayModel.under(event, SET).centre()).isEqualTo(possible);
        assertThat(PlayModel.under(event, ValueSets.shipped(4)).centre().machines())
                .isNotEqualTo(possible.machines());
    }

    @Test
    void aLaneThatWasMeasuredIsAsItIsAndMachinesLayMoreOrLessOfEveryPattern() {
        Event onePair = Events.onePair(3, SHIPPED);
        Centre centre = onePair.centre()
                .withLanes(Map.of(2, Topography.FLAT), onePair.centre().machines());
        SquadPlan plan = onePair.plans().get(0);
        LanePatterns patterns = new LanePatterns(
                plan.patterns().usual(), Map.of(2, OilPattern.of("thin", 40 * LaneGeometry.FOOT_M, 20, 3)));
        Event event = new Event(
                "test",
                centre,
                onePair.squads(),
                List.of(new SquadPlan(plan.rotation(), patterns)),
                onePair.pace(),
                onePair.laws(),
                onePair.bowling(),
                onePair.incidents());
        Centre possible = PlayModel.under(event, SET).centre();
        assertThat(possible.topography(1).isFlat()).isFalse();
        assertThat(possible.topography(2).isFlat()).isTrue();
        assertThat(possible.machines().laid()).containsOnlyKeys(1, 2);
    }

    /** Lanes that stay are the control, in which nothing is to be found. */
    @Test
    void lanesThatStayAsTheyAreLaidAreAllAlike() {
        Event event = Events.onePair(3, SHIPPED);
        Event staying = event.withLaws(event.laws().withLanesThatStay());
        Centre possible = PlayModel.under(staying, SET).centre();
        assertThat(possible.topographies()).isEmpty();
        assertThat(possible.machines()).isEqualTo(event.centre().machines());
    }

    @Test
    void aStudyOverSetsInPartsIsTheStudyInOneOnAnyNumberOfThreads() {
        Event event = Events.onePair(2, SHIPPED, Events.bowler("other"));
        List<Double> whole = scores(event, new Part(0, 8), 1);
        List<Double> parts = new ArrayList<>(scores(event, new Part(0, 3), 2));
        parts.addAll(scores(event, new Part(3, 8), 3));
        assertThat(parts).isEqualTo(whole);
        assertThat(whole.get(0)).isNotEqualTo(whole.get(4));
    }

    private static List<Double> scores(Event event, Part part, int threads) {
        return new Study(Repeated.of(new PossibleEvents(event, 4), 5))
                .play(part, threads).stream()
                        .map(playing -> playing.result().squads().get(0).meanScore())
                        .toList();
    }
}
