package lanetide.squads.unknown;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Event;
import lanetide.squads.play.Events;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;

/**
 * What the pins do, and what bowlers of each level average on a house pattern: the bands that the published scatter at
 * the arrows is told for (O'Keefe, US Bowler, July 2012). A level is named after its average, so values under which it
 * scores otherwise are none for that level.
 */
final class PlayFacts {
    private static final int NIGHTS = 12;
    private static final int GAMES = 3;
    private static final long SEED = 31;

    /** The facts; what is said of each by {@link #of} stands in the same order. */
    static final List<Fact> FACTS = List.of(
            average("elite", 230),
            average("scratch", 210),
            average("league", 190),
            average("casual", 170),
            new Fact("strikes among pocket hits at 5 degrees (%)", 75, 5, 0, 1, 0, false));

    private PlayFacts() {}

    private static Fact average(String level, double pins) {
        return new Fact("average of " + level + " bowlers on a house pattern", pins, 10, 2.5, 3, 0, false);
    }

    /** Mean scores by level under some values (pins a game), and the carry (%). */
    static double[] of(ValueSet set) {
        List<Double> means = new ArrayList<>();
        for (String level : List.of("elite", "scratch", "league", "casual")) {
            PossibleEvents event = new PossibleEvents(PlayModel.under(houseNight(level), set), 1);
            means.add(new Study(Repeated.of(event, SEED))
                            .play(
                                    Part.first(NIGHTS),
                                    1,
                                    number -> Watch.ofPlay(summary ->
                                            summary.result().squads().get(0).meanScore()),
                                    done -> {})
                            .stream()
                            .mapToDouble(Double::doubleValue)
                            .average()
                            .orElseThrow());
        }
        means.add(strikesAmongPocketHits(
                new OilModel(FrictionModel.MIXED_LUBRICATION, SplitModel.FORWARD_ROLL, set).carry()));
        return means.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Evenly over the pocket, as in the oil model's validation table: professionals carried 40 of 54 (Thomas). */
    private static double strikesAmongPocketHits(PinCarry carry) {
        return IntStream.rangeClosed(-125, 125)
                .mapToDouble(i -> 100 * carry.strikeChance(PinCarry.POCKET_BOARD + 0.01 * i, Math.toRadians(5)))
                .average()
                .orElseThrow();
    }

    /** Four styles on a pair, fresh oil, three games. */
    private static Event houseNight(String level) {
        OilPattern house = OilPattern.of("house", 40 * LaneGeometry.FOOT_M, 23, 8);
        Event event = Events.onePair(
                GAMES,
                Events.bowler("straight", Hand.RIGHT, "straight", Events.level(level), "weak-reactive"),
                Events.bowler("stroker", Hand.RIGHT, "stroker", Events.level(level), "weak-reactive"),
                Events.bowler("tweener", Hand.RIGHT, "tweener", Events.level(level), "medium-reactive"),
                Events.bowler("power", Hand.RIGHT, "power", Events.level(level), "strong-reactive"));
        return Fixtures.withPattern(event, house);
    }
}
