package lanetide.cli.preview;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineQuality;
import lanetide.squads.model.Event;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.watch.Observers;

/** Plays an event many times and asks in each what a bowler would start with on the lanes he meets. */
public final class PreviewStudy {
    /** Playings in which a change of ball is looked for, which takes long. */
    private static final int PLAYINGS_WITH_BALLS = 4;

    private final Scenario scenario;
    private final Event event;
    private final List<Asked> asked;
    private final int sets;
    private final ReadingsUnderSets readings;

    private PreviewStudy(Scenario scenario, int sets, List<Asked> asked) {
        this.sets = sets;
        this.scenario = scenario;
        this.event = scenario.event();
        this.asked = asked;
        this.readings = new ReadingsUnderSets(
                scenario, asked.stream().map(Asked::kind).distinct().toList());
    }

    /**
     * Looks ahead for a bowler.
     *
     * @param scenario the scenario
     * @param sets sets of values that the playings go through in turn, at least 1; with 1 all values are as usual
     * @param place where he sits
     * @param kind how he plays
     * @param replications how often the event is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return the forecast; it does not depend on the number of threads
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static Preview run(
            Scenario scenario, int sets, Place place, Kind kind, int replications, int threads, IntConsumer onDone) {
        return new PreviewStudy(scenario, sets, List.of(Asked.of(scenario, place, kind)))
                .run(replications, threads, onDone)
                .get(0);
    }

    /**
     * Looks ahead for all bowlers of a squad, for each as if he alone were asked for.
     *
     * @param scenario the scenario
     * @param sets as above
     * @param squad the squad, counted from zero
     * @param replications as above
     * @param threads as above
     * @param onDone as above
     * @return their forecasts, in the order of {@link Seating#of}
     * @throws IllegalArgumentException as above
     */
    public static List<Preview> ofSquad(
            Scenario scenario, int sets, int squad, int replications, int threads, IntConsumer onDone) {
        List<Asked> asked = Seating.of(scenario.event()).stream()
                .filter(seating -> seating.place().squad() == squad)
                .map(seating -> Asked.of(scenario, seating.place(), Kind.of(seating.bowler())))
                .toList();
        return new PreviewStudy(scenario, sets, asked).run(replications, threads, onDone);
    }

    /** Who is asked for, and with which balls; an empty bag stands for any. */
    private record Asked(Place place, Kind kind, List<Coverstock> bag) {
        /** With the balls of his entry and the one asked for; where no entry tells, any may help. */
        static Asked of(Scenario scenario, Place place, Kind kind) {
            return new Asked(
                    place,
                    kind,
                    scenario.drawn().bowlers() == 0 || place.bowler().isEmpty()
                            ? List.of()
                            : Stream.concat(Stream.of(kind.cover()), place.bag(scenario.event()).stream())
                                    .distinct()
                                    .toList());
        }
    }

    /**
     * What one playing tells of one lane before one game.
     *
     * @param window the line he would start with and its window, as they are told; empty if none meets the pocket
     * @param played that line as the model has it, which the lanes of the playing know
     * @param quality how good that line is, where that is asked for
     * @param change another ball that would help more
     * @param compared whether balls were compared there
     * @param why what wear does to his line of the fresh pattern, where that is asked for and there is one
     */
    record Met(
            Optional<ExitWindow> window,
            Optional<Line> played,
            Optional<LineQuality> quality,
            Optional<BallChange> change,
            boolean compared,
            Optional<ByStretch> why) {}

    /**
     * A shot on a line of one game, on lanes as they are before another.
     *
     * @param line the game; {@link Practice#DEEPER} for the line of the first game moved in
     * @param lanes the other game; 0 for the fresh pattern
     */
    record Trial(int line, int lanes) {}

    /** Where the shot of a trial meets the pins, past the best hit (boards). */
    record Tried(Trial trial, double boardsHigh) {}

    /** What one playing tells: by game, both lanes; and what lines would do on other films. */
    record PlayingMet(List<List<Met>> games, List<Tried> tried) {}

    private List<Preview> run(int replications, int threads, IntConsumer onDone) {
        List<List<PlayingMet>> playings = new Study(
                        Repeated.of(new PossibleEvents(untilTheirSquad(), sets), scenario.seed()))
                .play(Part.first(replications), threads, this::watch, onDone);
        return IntStream.range(0, asked.size())
                .mapToObj(who -> preview(
                        asked.get(who),
                        playings.stream().map(met -> met.get(who)).toList()))
                .toList();
    }

    private Preview preview(Asked who, List<PlayingMet> playings) {
        Summary summary = new Summary(event, who.place());
        GameForecast sheet = summary.fresh(
                readings.usual(who.place().squad(), who.place().pair(event, 0).left())
                        .of(who.kind(), who.bag())
                        .freshTold());
        List<GameForecast> games = summary.games(sheet, playings);
        Trials trials = new Trials(playings);
        return new Preview(
                who.place(),
                who.kind(),
                who.bag(),
                sheet,
                games,
                trials.signs(),
                trials.practice(games),
                playings.size(),
                sets);
    }

    /** The event without the squads after theirs, of which they meet nothing. */
    private Event untilTheirSquad() {
        int squads = asked.get(0).place().squad() + 1;
        return event.withSquads(event.squads().subList(0, squads), event.plans().subList(0, squads));
    }

    private Watch<List<PlayingMet>> watch(int number) {
        Map<Place, MetFilms> films = new HashMap<>();
        asked.forEach(who -> films.computeIfAbsent(who.place().ofGroup(), place -> new MetFilms(event, place)));
        return Watch.by(
                Observers.of(
                        (moment, film, lines) -> films.values().forEach(group -> group.onLane(moment, film, lines))),
                summary -> {
                    int set = summary.playing().set();
                    return asked.stream()
                            .map(who -> new PairReadings(
                                            readingsOf(set, who),
                                            films.get(who.place().ofGroup()).byGame())
                                    .playing(number < PLAYINGS_WITH_BALLS))
                            .toList();
                });
    }

    private IntFunction<LaneReading> readingsOf(int set, Asked who) {
        Map<LaneReadings, LaneReading> byPattern = new HashMap<>();
        return lane -> byPattern.computeIfAbsent(
                readings.under(set, who.place().squad(), lane), shared -> shared.of(who.kind(), who.bag()));
    }
}
