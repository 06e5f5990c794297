package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;
import lanetide.squads.model.Event;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.qualifying.TeamsPlayed;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;

/**
 * What many playings of an event with independent luck say together, under sets of values in turn, with one of them
 * under the usual values as the example.
 */
public final class EventStudy {
    private static final double LEVEL = 0.95;
    private static final int EXAMPLE = 0;

    private final PossibleEvents events;
    private final long seed;
    private final Observers ofExample;
    /** Who watch in place of those who look how far lines go. */
    private final Optional<IntFunction<Observers>> watching;

    private final WindowStudy windows;
    private final AtomicReference<EventResult> example = new AtomicReference<>();

    private EventStudy(
            PossibleEvents events, long seed, Observers ofExample, Optional<IntFunction<Observers>> watching) {
        this.events = events;
        this.seed = seed;
        this.ofExample = ofExample;
        this.watching = watching;
        this.windows = new WindowStudy(events);
    }

    /**
     * Plays an event a fixed number of times with the usual values, and nobody watches.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @param replications how often it is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return statistics, with the first playing as the example
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static StudyResult run(Event event, long seed, int replications, int threads, IntConsumer onDone) {
        PossibleEvents usual = new PossibleEvents(event, 1);
        return run(usual, seed, Playings.fixed(replications), Execution.on(threads), onDone, Observers.NONE);
    }

    /**
     * Plays an event a fixed number of times while somebody watches, and nobody looks how far lines go.
     *
     * @param events the event under its sets; with more than one, the example is a playing of its own
     * @param seed master seed of all chance
     * @param replications how often it is played, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @param watching who watch the playing of a number, from 0, on the thread that plays it
     * @return statistics, with the example
     * @throws IllegalArgumentException if {@code replications < 1} or {@code threads < 1}
     */
    public static StudyResult watched(
            PossibleEvents events,
            long seed,
            int replications,
            int threads,
            IntConsumer onDone,
            IntFunction<Observers> watching) {
        return new EventStudy(events, seed, Observers.NONE, Optional.of(watching))
                .run(Playings.fixed(replications), Execution.on(threads), onDone);
    }

    /**
     * Plays an event as often as it takes; the result does not depend on the execution.
     *
     * @param events the event under its sets; with more than one, the example is a playing of its own, of which nothing
     *     else is taken, and somebody looks how far lines go
     * @param seed master seed of all chance
     * @param playings how often it is played; until scores are known well enough only with the usual values, since what
     *     is not known does not shrink
     * @param execution how, as the next study of its run
     * @param onDone told the number of playings done so far
     * @param ofExample who watch the example, which is always played
     * @return statistics, with the example
     * @throws IllegalArgumentException if playings go on until scores are known well enough under more than one set
     * @throws PartPlayedException as {@link Study#play(Part, Execution, Class, IntFunction, IntConsumer)} does
     */
    public static StudyResult run(
            PossibleEvents events,
            long seed,
            Playings playings,
            Execution execution,
            IntConsumer onDone,
            Observers ofExample) {
        if (events.sets() > 1 && playings.halfWidthPins().isPresent()) {
            throw new IllegalArgumentException("a half-width is reached with the usual values alone");
        }
        return new EventStudy(events, seed, ofExample, Optional.empty()).run(playings, execution, onDone);
    }

    private StudyResult run(Playings playings, Execution execution, IntConsumer onDone) {
        Study study = new Study(Repeated.of(events, seed));
        if (playings.halfWidthPins().isEmpty()) {
            Part all = Part.first(playings.most());
            return result(study.play(all, execution, Kept.class, this::watch, onDone), Optional.empty());
        }
        double wantedPins = playings.halfWidthPins().getAsDouble();
        StoppingRule rule = new StoppingRule(wantedPins, LEVEL, Playings.MIN_UNTIL, playings.most());
        StoppedRun<Kept> run = study.playUntil(rule, execution, Kept.class, this::watch, Kept::meanScores, onDone);
        Precision precision = new Precision(wantedPins, run.halfWidth(), run.isNarrowEnough(), run.projected());
        return result(run.results(), Optional.of(precision));
    }

    private Watch<Kept> watch(int number) {
        if (events.sets() == 1 && number == EXAMPLE) {
            return watchExample(watching.map(who -> who.apply(number)).orElse(ofExample));
        }
        if (watching.isPresent()) {
            return Watch.by(
                    watching.get().apply(number), summary -> Kept.of(events.event(), summary, Optional.empty()));
        }
        Optional<WindowEye> eye = windows.watching(number);
        return Watch.by(
                eye.map(Observers::of).orElse(Observers.NONE),
                summary -> Kept.of(events.event(), summary, eye.map(WindowEye::seen)));
    }

    private Watch<Kept> watchExample(Observers observers) {
        return new Watch<>(observers, LaneRecords.WINDOWS, summary -> {
            example.set(summary.result());
            return Kept.of(events.event(), summary, Optional.empty());
        });
    }

    /** The example; with the usual values it is the first of all playings, unless that was known already. */
    private EventResult example() {
        if (example.get() == null) {
            new Study(Repeated.of(events.amongFirst(1), seed))
                    .play(Part.first(1), 1, number -> watchExample(ofExample), done -> {});
        }
        return example.get();
    }

    /**
     * What is kept of one playing; the lanes and the bowlers of all would need too much memory.
     *
     * @param squads squad by squad
     * @param timetable what happened when
     * @param cut what came of the cut and the finals
     * @param teams how teams stand
     * @param windows how far lines have gone, where somebody looked
     */
    private record Kept(
            List<SquadKept> squads,
            List<TimetableEntry> timetable,
            Optional<CutStatistics.Kept> cut,
            TeamsPlayed teams,
            Optional<WindowStudy.Seen> windows) {
        static Kept of(Event event, PlayingSummary summary, Optional<WindowStudy.Seen> windows) {
            EventResult result = summary.result();
            return new Kept(
                    result.squads().stream().map(SquadKept::of).toList(),
                    result.timetable(),
                    CutStatistics.Kept.of(event, result),
                    new Teams(event).standing(result.squads()),
                    windows);
        }

        /** The mean scores of the squads (pins a game). */
        double[] meanScores() {
            return squads.stream().mapToDouble(SquadKept::meanScore).toArray();
        }
    }

    /**
     * What is kept of one squad.
     *
     * @param meanScore mean over bowlers and games (pins)
     * @param byGame mean over bowlers, by game (pins)
     * @param endMs when its last ball was scored (ms)
     * @param pace how its time was spent
     */
    private record SquadKept(double meanScore, List<Double> byGame, long endMs, PaceKept pace) {
        static SquadKept of(SquadResult squad) {
            return new SquadKept(
                    squad.meanScore(),
                    IntStream.range(0, squad.games()).mapToObj(squad::meanScore).toList(),
                    squad.endMs(),
                    squad.pace());
        }
    }

    private StudyResult result(List<Kept> playings, Optional<Precision> precision) {
        EventResult first = example();
        List<SquadStatistics> squads = new ArrayList<>();
        for (int s = 0; s < first.squads().size(); s++) {
            squads.add(statistics(first.squads().get(s).squad(), playings, s, events.sets()));
        }
        List<TimetableStatistics> timetable = first.timetable().stream()
                .map(entry -> statistics(entry, playings))
                .toList();
        return new StudyResult(
                first,
                squads,
                timetable,
                playings.size(),
                events.sets(),
                precision,
                windows.moves(playings.stream()
                        .flatMap(playing -> playing.windows().stream())
                        .toList()),
                cut(playings, events.sets()),
                TeamStatistics.of(
                        events.event(), playings.stream().map(Kept::teams).toList(), events.sets()));
    }

    private static Optional<CutStatistics> cut(List<Kept> playings, int sets) {
        List<CutStatistics.Kept> all =
                playings.stream().flatMap(playing -> playing.cut().stream()).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(CutStatistics.of(all, sets));
    }

    private static SquadStatistics statistics(String id, List<Kept> playings, int squad, int sets) {
        List<SquadKept> all =
                playings.stream().map(playing -> playing.squads().get(squad)).toList();
        Tally end = new Tally();
        PaceKept pace = PaceKept.NOTHING;
        for (SquadKept one : all) {
            end.add((double) one.endMs());
            pace = pace.plus(one.pace());
        }
        double[] scores = all.stream().mapToDouble(SquadKept::meanScore).toArray();
        Optional<NestedMean> mean = scores.length < 2 ? Optional.empty() : Optional.of(NestedMean.of(scores, sets));
        return new SquadStatistics(
                id,
                mean.map(NestedMean::mean).orElse(scores[0]),
                mean.map(found -> found.truth().interval(LEVEL)),
                mean.map(found -> found.luck().interval(LEVEL)),
                byGame(all),
                (long) end.min(),
                (long) end.max(),
                pace);
    }

    private static List<Double> byGame(List<SquadKept> all) {
        List<Double> byGame = new ArrayList<>();
        for (int game = 0; game < all.get(0).byGame().size(); game++) {
            Tally scores = new Tally();
            for (SquadKept one : all) {
                scores.add(one.byGame().get(game));
            }
            byGame.add(scores.mean());
        }
        return byGame;
    }

    private static TimetableStatistics statistics(TimetableEntry entry, List<Kept> playings) {
        List<TimetableEntry> same = playings.stream()
                .flatMap(playing -> playing.timetable().stream())
                .filter(other -> other.squad().equals(entry.squad())
                        && other.what() == entry.what()
                        && other.game() == entry.game())
                .toList();
        return new TimetableStatistics(
                entry.squad(),
                entry.what(),
                entry.game(),
                TimeSpread.of(same.stream().mapToDouble(TimetableEntry::startMs).toArray()),
                TimeSpread.of(same.stream().mapToDouble(TimetableEntry::endMs).toArray()));
    }
}
