package lanetide.squads.play;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import lanetide.des.Simulator;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.Line;
import lanetide.squads.bowler.SteadyAgent;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.model.Level;
import lanetide.squads.model.PinsWithoutOil;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;

/**
 * What playings of an event for its times alone share. They take a small part of the time of others: no ball meets oil,
 * pins fall as often as bowlers of the levels felled them in other playings, and nobody learns. Several threads may use
 * one object.
 */
public final class WithoutOil {
    /** Enough for telling the length and the ratio of a pattern. */
    private static final LaneGrid COARSE = new LaneGrid(1, 1);

    private static final Line NOWHERE = new Line(LaneGeometry.BOARDS / 2.0, 0);

    private final Physics physics;
    private final StartingLines lines;
    private final PinsWithoutOil pins = new PinsWithoutOil();
    private final Map<OilPattern, Map<Level, PinsWithoutOil.Shares>> known = new ConcurrentHashMap<>();

    /**
     * For an event.
     *
     * @param event the event
     */
    public WithoutOil(Event event) {
        this.physics = new Physics(COARSE, event.laws().oilModel(), true);
        this.lines = new StartingLines(event, physics);
    }

    /**
     * What one playing takes.
     *
     * @param event the event, which may be at another pace
     * @param luck source of all chance
     * @return its setup, which writes down no lanes and cannot be watched ball by ball
     */
    public Setup setup(Event event, LuckSource luck) {
        return new Setup(
                event,
                physics,
                lines,
                luck,
                LaneRecords.NONE,
                Observers.NONE,
                (bowler, player, pattern) -> new SteadyAgent(NOWHERE),
                setup -> new BallsWithoutOil(this::shares),
                new Simulator());
    }

    private PinsWithoutOil.Shares shares(OilPattern pattern, Level level) {
        return known.computeIfAbsent(pattern, laid -> new ConcurrentHashMap<>())
                .computeIfAbsent(level, of -> pins.of(of, PatternMeasures.of(OilFilm.fresh(pattern, COARSE))));
    }
}
