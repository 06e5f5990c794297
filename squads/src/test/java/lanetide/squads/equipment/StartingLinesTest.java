package lanetide.squads.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.AcrossShape;
import lanetide.oilflow.film.AlongShape;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.play.Events;
import org.junit.jupiter.api.Test;

class StartingLinesTest {
    private static final AcrossShape MUCH_OUTSIDE = new AcrossShape(1.5, 5, 14);
    private static final AcrossShape LITTLE_OUTSIDE = new AcrossShape(6, 5, 14);

    @Test
    void bothHandsShareALineOnAPatternThatIsItsOwnMirrorImage() {
        assertThat(line(Hand.LEFT, Events.PATTERN)).isEqualTo(line(Hand.RIGHT, Events.PATTERN));
    }

    @Test
    void eachHandHasItsOwnLineWhereTheHalvesDiffer() {
        OilPattern skew = pattern(MUCH_OUTSIDE, LITTLE_OUTSIDE);

        assertThat(line(Hand.RIGHT, skew).laydownBoard())
                .isNotCloseTo(line(Hand.LEFT, skew).laydownBoard(), within(0.1));
    }

    @Test
    void aLeftHandersLineIsTheMirrorImageOfARightHandersOnThePatternTurnedRound() {
        Line left = line(Hand.LEFT, pattern(MUCH_OUTSIDE, LITTLE_OUTSIDE));
        Line right = line(Hand.RIGHT, pattern(LITTLE_OUTSIDE, MUCH_OUTSIDE));

        assertThat(left.launchRad()).isEqualTo(right.launchRad());
        assertThat(left.laydownBoard()).isCloseTo(right.laydownBoard(), within(1e-6));
    }

    /** A style's commonest kind may be known for one hand alone, and windows are reported for both. */
    @Test
    void windowsOfBothHandsAreReportedWhereTheHalvesDiffer() {
        Event event = on(
                pattern(MUCH_OUTSIDE, LITTLE_OUTSIDE),
                Events.bowler("a", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
                Events.bowler("b", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
                Events.bowler("c", Hand.LEFT, "tweener", Events.level("league"), "urethane"));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);

        var typical = TypicalPlayer.of(event, Events.PHYSICS, lines);

        assertThat(typical).extracting(TypicalPlayer::hand).containsExactly(Hand.RIGHT, Hand.LEFT);
        assertThat(typical.get(0).start()).isNotEqualTo(typical.get(1).start());
    }

    @Test
    void bowlersBringLinesForThePatternOfTheirSquad() {
        OilPattern shorter = OilPattern.of("shorter", 11, 25, 3);
        Bowler bowler = Events.bowler("a");
        Event alike = Events.event(
                Events.centre(1),
                Events.stay(1, 1, 1),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.oneGroup(bowler)),
                Events.squad("B", 2 * Events.START_MS, Conditioning.STRIP_AND_OIL, Events.oneGroup(bowler)));
        SquadPlan plan = alike.plans().get(0);
        Event event = alike.withSquads(
                alike.squads(), List.of(plan, new SquadPlan(plan.rotation(), LanePatterns.everywhere(shorter))));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        Player player = StartingLines.player(bowler, event, Events.PHYSICS);

        assertThat(lines.on(shorter).of(player))
                .isNotEqualTo(lines.on(Events.PATTERN).of(player));
        assertThat(lines.on(shorter).of(player))
                .isEqualTo(new StartingLines(Fixtures.withPattern(alike, shorter), Events.PHYSICS)
                        .on(shorter)
                        .of(player));
        StartingLines first = new StartingLines(alike, Events.PHYSICS);
        assertThat(first.broughtTo(event).on(Events.PATTERN)).isSameAs(first.on(Events.PATTERN));
        assertThat(first.broughtTo(event).on(shorter).of(player))
                .isEqualTo(lines.on(shorter).of(player));
        assertThatIllegalArgumentException().isThrownBy(() -> first.on(shorter));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lines.on(OilPattern.of("other", 12, 20, 3)))
                .withMessage("no squad of the event plays on pattern other");
    }

    private static OilPattern pattern(AcrossShape right, AcrossShape left) {
        return new SheetPattern("skew", 12.2, 25, right, left, AlongShape.unbuffed(1.2, 0.25, 12.2));
    }

    private static Line line(Hand hand, OilPattern pattern) {
        Bowler bowler = Events.bowler("a", hand, "tweener", Events.level("scratch"), "medium-reactive");
        Event event = on(pattern, bowler);
        return new StartingLines(event, Events.PHYSICS)
                .on(pattern)
                .of(StartingLines.player(bowler, event, Events.PHYSICS));
    }

    private static Event on(OilPattern pattern, Bowler... bowlers) {
        Event usual = Events.onePair(1, bowlers);
        return Fixtures.withPattern(usual, pattern);
    }
}
