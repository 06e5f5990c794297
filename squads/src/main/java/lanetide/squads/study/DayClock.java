package lanetide.squads.study;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Event;
import lanetide.squads.model.Incidents;
import lanetide.squads.play.WithoutOil;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.score.TenpinScore;
import lanetide.squads.unknown.ValueSets;

/**
 * When squads begin and are done, foreseen by playings without oil, which take a hundredth of the time of those with
 * it: shots, neighbours, walks, breaks, lane machines and failing lanes are as in play, and pins fall as often as
 * bowlers of the levels fell them.
 *
 * @param squads squad by squad
 * @param playings over so many playings
 */
public record DayClock(List<SquadClock> squads, int playings) {
    /** Sets of values that forty playings go through, which the means here are held against. */
    private static final int SETS = ValueSets.inStudy(40);

    /** First balls of all playings together that are enough. */
    private static final int ENOUGH_FRAMES = 40_000;

    private static final int FEWEST = 4;

    private static final int MOST = 10;

    /** Failing lanes spread the ends widely. */
    private static final int MOST_WITH_INCIDENTS = 2 * SETS;

    /** Copies the list. */
    public DayClock {
        squads = List.copyOf(squads);
    }

    /**
     * When a squad comes and goes.
     *
     * @param squad its name
     * @param start when its practice starts
     * @param end when its last ball is scored
     * @param games when each game is done on its last pair, in order of the games
     */
    public record SquadClock(String squad, TimeSpread start, TimeSpread end, List<TimeSpread> games) {
        /** Copies the list. */
        public SquadClock {
            games = List.copyOf(games);
        }
    }

    /** What is kept of a playing. */
    private record Times(List<SquadResult> squads, List<TimetableEntry> timetable) {}

    /**
     * Plays an event's times.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @return its clock, the same on any number of threads
     */
    public static DayClock of(Event event, long seed) {
        int playings = playings(event);
        List<Times> times = new Study(new ClockDesign(
                        event, new WithoutOil(event), SETS, Math.min(SETS, playings), new RandomStreams(seed)))
                .play(Part.first(playings), 1, number -> Watch.ofPlay(DayClock::times), done -> {});
        return new DayClock(
                IntStream.range(0, event.squads().size())
                        .mapToObj(s -> squad(event, times, s))
                        .toList(),
                playings);
    }

    private static int playings(Event event) {
        long frames = 0;
        for (int s = 0; s < event.squads().size(); s++) {
            frames += (long) event.squads().get(s).everybody().size() * event.games(s) * TenpinScore.FRAMES;
        }
        int most = event.incidents().equals(Incidents.NONE) ? MOST : MOST_WITH_INCIDENTS;
        long affordable = Math.max(FEWEST, Math.min(most, ENOUGH_FRAMES / Math.max(1, frames)));
        return IntStream.rangeClosed(1, MOST_WITH_INCIDENTS)
                .filter(number -> (SETS % number == 0 || number % SETS == 0) && number <= affordable)
                .max()
                .orElseThrow();
    }

    private static Times times(PlayingSummary summary) {
        return new Times(summary.result().squads(), summary.result().timetable());
    }

    private static SquadClock squad(Event event, List<Times> times, int squad) {
        String id = event.squads().get(squad).id();
        return new SquadClock(
                id,
                TimeSpread.of(times.stream()
                        .mapToDouble(one -> one.squads().get(squad).startMs())
                        .toArray()),
                TimeSpread.of(times.stream()
                        .mapToDouble(one -> one.squads().get(squad).endMs())
                        .toArray()),
                IntStream.rangeClosed(1, event.games(squad))
                        .mapToObj(game -> TimeSpread.of(times.stream()
                                .flatMap(one -> one.timetable().stream())
                                .filter(entry -> entry.squad().equals(id)
                                        && entry.what() == TimetableEntry.Activity.GAME
                                        && entry.game() == game)
                                .mapToDouble(TimetableEntry::endMs)
                                .toArray()))
                        .toList());
    }
}
