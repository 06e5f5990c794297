package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanetide.cli.lines.Kind;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/** Reads every lane in one playing as the next bowlers find it, for each kind among them. */
final class StartsMet implements LaneObserver {
    private final Reader readings;
    private final Map<Time, List<Visit>> visits = new HashMap<>();
    private final Map<Start, List<PreviewStudy.Met>> met = new HashMap<>();

    /** Reads a squad's lane for a kind. */
    interface Reader {
        LaneReading of(int squad, int lane, Kind kind);
    }

    private record Time(int lane, String squad, int afterGame) {}

    /** A group that plays its next game there, counted from zero, and the kinds in it. */
    private record Visit(int squad, int group, int game, Set<Kind> kinds) {}

    private record Start(int squad, int group, int game, Kind kind) {}

    /**
     * Looks for the lanes of some bowlers.
     *
     * @param event the event
     * @param seatings the bowlers
     * @param readings reads lanes
     */
    StartsMet(Event event, List<Seating> seatings, Reader readings) {
        this.readings = readings;
        Map<Place, Set<Kind>> groups = new HashMap<>();
        for (Seating seating : seatings) {
            groups.computeIfAbsent(seating.place().ofGroup(), place -> new LinkedHashSet<>())
                    .add(Kind.of(seating.bowler()));
        }
        groups.forEach((place, kinds) -> {
            for (int game = 0; game < place.rotation(event).games(); game++) {
                Visit visit = new Visit(place.squad(), place.group(), game, kinds);
                String squad = event.squads().get(place.squad()).id();
                LanePair pair = place.pair(event, game);
                for (int lane : List.of(pair.left(), pair.right())) {
                    visits.computeIfAbsent(
                                    new Time(lane, squad, place.lastPlayed(event, game)), time -> new ArrayList<>())
                            .add(visit);
                }
            }
        });
    }

    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        Map<Kind, PreviewStudy.Met> read = new HashMap<>();
        for (Visit visit :
                visits.getOrDefault(new Time(moment.lane(), moment.squad(), moment.afterGame()), List.of())) {
            for (Kind kind : visit.kinds()) {
                met.computeIfAbsent(
                                new Start(visit.squad(), visit.group(), visit.game(), kind), start -> new ArrayList<>())
                        .add(read.computeIfAbsent(
                                kind,
                                each -> readings.of(visit.squad(), moment.lane(), each)
                                        .met(film)));
            }
        }
    }

    /** What this playing tells one of the bowlers. */
    PreviewStudy.PlayingMet playing(Event event, Seating seating) {
        Place place = seating.place();
        List<List<PreviewStudy.Met>> games = new ArrayList<>();
        for (int game = 0; game < place.rotation(event).games(); game++) {
            games.add(met.getOrDefault(
                    new Start(place.squad(), place.group(), game, Kind.of(seating.bowler())), List.of()));
        }
        return new PreviewStudy.PlayingMet(games, List.of());
    }
}
