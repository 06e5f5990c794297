package lanetide.cli.preview;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Event;

/** Plays an event some times and asks in each what every bowler would start with on the lanes he meets, with his own ball. */
public final class StartsStudy {
    private final Scenario scenario;
    private final Event event;
    private final Physics physics;
    private final List<Seating> seatings;

    private StartsStudy(Scenario scenario) {
        this.scenario = scenario;
        this.event = scenario.event();
        this.physics = Physics.under(event.laws());
        this.seatings = Seating.of(event);
    }

    /**
     * Looks ahead for every bowler.
     *
     * @param scenario the scenario
     * @param playings how often the event is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return each bowler's games in the order of {@link Seating#of}; other balls are not compared. They do not depend on the
     *     number of threads
     * @throws IllegalArgumentException if {@code playings < 1} or {@code threads < 1}
     */
    public static Map<Seating, List<GameForecast>> run(
            Scenario scenario, int playings, int threads, IntConsumer onDone) {
        return new StartsStudy(scenario).run(playings, threads, onDone);
    }

    private Map<Seating, List<GameForecast>> run(int playings, int threads, IntConsumer onDone) {
        List<StartsMet> met = new WatchedPlayings(scenario, physics)
                .run(playings, threads, onDone, this::startsMet, (r, starts) -> starts);
        Map<Seating, List<GameForecast>> forecasts = new LinkedHashMap<>();
        Map<Kind, GameForecast> fresh = new HashMap<>();
        for (Seating seating : seatings) {
            Kind kind = Kind.of(seating.bowler());
            Summary summary = new Summary(event, seating.seat());
            GameForecast sheet = fresh.computeIfAbsent(
                    kind, each -> summary.fresh(new LaneReading(scenario, physics, each).fresh(false)));
            forecasts.put(
                    seating,
                    summary.games(
                            sheet,
                            met.stream()
                                    .map(starts -> starts.playing(event, seating))
                                    .toList()));
        }
        return forecasts;
    }

    /** Reads lanes in one playing, with one reading for each kind: a reading serves one thread. */
    private StartsMet startsMet() {
        Map<Kind, LaneReading> readings = new HashMap<>();
        return new StartsMet(
                event,
                seatings,
                kind -> readings.computeIfAbsent(kind, each -> new LaneReading(scenario, physics, each)));
    }
}
