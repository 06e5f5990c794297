package lanetide.cli.preview;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.PlayedLine;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Event;
import lanetide.squads.play.Observers;
import lanetide.squads.study.Part;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;

/** Plays an event many times and asks in each what a bowler would start with on the lanes he meets. */
public final class PreviewStudy {
    /** Playings in which a change of ball is looked for, which takes long. */
    private static final int PLAYINGS_WITH_BALLS = 4;

    private final Scenario scenario;
    private final Event event;
    private final Place place;
    private final Kind kind;
    private final Physics physics;

    private PreviewStudy(Scenario scenario, Place place, Kind kind) {
        this.scenario = scenario;
        this.event = scenario.event();
        this.place = place;
        this.kind = kind;
        this.physics = Physics.under(event.laws());
    }

    /**
     * Looks ahead for a bowler.
     *
     * @param scenario the scenario
     * @param place where he sits
     * @param kind how he plays
     * @param replications how often the event is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return the forecast; it does not depend on the number of threads
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static Preview run(
            Scenario scenario, Place place, Kind kind, int replications, int threads, IntConsumer onDone) {
        return new PreviewStudy(scenario, place, kind).run(replications, threads, onDone);
    }

    /** What one playing tells of one lane before one game; whether balls were compared there too. */
    record Met(Optional<PlayedLine> line, Optional<BallChange> change, boolean compared) {}

    /** What one playing tells: by game, both lanes; and where the first line would lead on other films, as signs. */
    record PlayingMet(List<List<Met>> games, List<Preview.Sign> signs) {}

    private Preview run(int replications, int threads, IntConsumer onDone) {
        List<PlayingMet> playings = new Study(Repeated.of(event, scenario.seed()))
                .play(Part.first(replications), threads, this::watch, onDone);
        Summary summary = new Summary(event, place);
        GameForecast sheet = summary.fresh(reading().fresh(true));
        return new Preview(place, kind, sheet, summary.games(sheet, playings), summary.signs(playings), replications);
    }

    private Watch<PlayingMet> watch(int number) {
        MetFilms films = new MetFilms(event, place);
        return Watch.by(
                Observers.of(films), summary -> reading().playing(films.byGame(), number < PLAYINGS_WITH_BALLS));
    }

    /** For who is named, among the balls he brings; else among all. */
    private LaneReading reading() {
        return new LaneReading(scenario, physics, kind, place.bag(event));
    }
}
