package lanetide.cli.preview;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.model.Event;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;

/**
 * Asks in the first playings of a study what every bowler would start with on the lanes he meets, with his own ball.
 */
public final class StartsStudy {
    private final Event event;
    private final List<Seating> seatings;
    private final int sets;
    private final ReadingsUnderSets shared;
    private final AtomicReferenceArray<StartsMet> met;

    /**
     * Nothing asked yet.
     *
     * @param scenario the scenario
     * @param playings how many playings are watched, at least 1
     * @param sets sets of values that the study goes through in turn; 1 if all values are as usual
     */
    public StartsStudy(Scenario scenario, int playings, int sets) {
        this.sets = sets;
        this.event = scenario.event();
        this.seatings = Seating.of(event);
        this.shared = new ReadingsUnderSets(
                scenario,
                seatings.stream().map(seating -> Kind.of(seating.bowler())).toList());
        this.met = new AtomicReferenceArray<>(playings);
    }

    /**
     * Who watches a playing for the bowlers.
     *
     * @param number number of the playing, from 0
     * @return an observer of its own in the first playings, nobody in the others
     */
    public Observers observers(int number) {
        if (number >= met.length()) {
            return Observers.NONE;
        }
        StartsMet starts = startsMet(ValueSets.ofRound(number, sets));
        met.set(number, starts);
        return Observers.of(starts);
    }

    /**
     * What the watched playings tell every bowler; they must be over.
     *
     * @return each bowler's games in the order of {@link Seating#of}; other balls are not compared
     */
    public Map<Seating, List<GameForecast>> forecasts() {
        List<StartsMet> watched = IntStream.range(0, met.length())
                .mapToObj(number -> Objects.requireNonNull(met.get(number), "a playing that was not watched"))
                .toList();
        Map<Seating, List<GameForecast>> forecasts = new LinkedHashMap<>();
        Map<LaneReadings, Map<Kind, GameForecast>> fresh = new HashMap<>();
        for (Seating seating : seatings) {
            Kind kind = Kind.of(seating.bowler());
            Summary summary = new Summary(event, seating.place());
            Place place = seating.place();
            LaneReadings readings =
                    shared.usual(place.squad(), place.pair(event, 0).left());
            GameForecast sheet = fresh.computeIfAbsent(readings, each -> new HashMap<>())
                    .computeIfAbsent(
                            kind, each -> summary.fresh(readings.of(each).fresh()));
            forecasts.put(
                    seating,
                    summary.games(
                            sheet,
                            watched.stream()
                                    .map(starts -> starts.playing(event, seating))
                                    .toList()));
        }
        return forecasts;
    }

    /** Reads lanes in one playing, with one reading for each kind: a reading serves one thread. */
    private StartsMet startsMet(int set) {
        Map<LaneReadings, Map<Kind, LaneReading>> readings = new HashMap<>();
        return new StartsMet(event, seatings, (squad, lane, kind) -> {
            LaneReadings ofLane = shared.under(set, squad, lane);
            return readings.computeIfAbsent(ofLane, of -> new HashMap<>()).computeIfAbsent(kind, ofLane::of);
        });
    }
}
