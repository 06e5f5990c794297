package lanetide.squads.unknown;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.play.Events;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.study.Part;
import lanetide.squads.study.Playable;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Repeated;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;

/** One pair, two squads of the same four kinds of bowlers on one oiling, four games each; and what is asked of it. */
final class SmallEvent {
    /** What is asked of a playing. */
    static final List<String> QUANTITIES = List.of(
            "advantage of the second squad (pins a game)",
            "exit board of the tweener after the last game",
            "head film left on the most worn board (units)",
            "mean of the field (pins a game)");

    private static final int GAMES = 4;
    private static final long SEED = 17;

    /** The event. */
    static final Event EVENT = event();

    private SmallEvent() {}

    private static Event event() {
        OilPattern pattern = OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 25, 4);
        Rotation stay = Events.stay(1, 1, GAMES);
        return Fixtures.event(
                "test",
                Fixtures.centre(1, Fixtures.machines(1, 45_000, 45_000)),
                pattern,
                List.of(
                        Fixtures.squad("A", 8 * 3_600_000L, Conditioning.STRIP_AND_OIL, 600_000, groups()),
                        Fixtures.squad("B", 12 * 3_600_000L, Conditioning.NONE, 600_000, groups())),
                List.of(stay, stay),
                PaceOfPlay.USUAL);
    }

    private static List<Group> groups() {
        List<Bowler> bowlers = List.of(
                Events.bowler("1", Hand.RIGHT, "straight", Events.level("league"), "weak-reactive"),
                Events.bowler("2", Hand.RIGHT, "stroker", Events.level("scratch"), "medium-reactive"),
                Events.bowler("3", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
                Events.bowler("4", Hand.RIGHT, "power", Events.level("elite"), "strong-reactive"));
        return List.of(new Group("1", bowlers));
    }

    /** What some playings say, by playing, then by quantity. */
    static List<double[]> play(Event event, int from, int count) {
        PossibleEvents events = new PossibleEvents(event, 1);
        Playable playable = events.under(0);
        return new Study(Repeated.of(events, SEED))
                .play(
                        new Part(from, from + count),
                        1,
                        number -> {
                            LastExit exit = new LastExit(playable);
                            return Watch.by(Observers.of(exit), summary -> quantities(summary.result(), exit));
                        },
                        done -> {});
    }

    private static double[] quantities(EventResult result, LastExit exit) {
        double first = result.squads().get(0).meanScore();
        double second = result.squads().get(1).meanScore();
        return new double[] {(second - first) / 2, exit.board, exit.headUnits, (first + second) / 2};
    }

    /** Looks at the first lane after each game of the last squad; the last look counts. */
    private static final class LastExit implements LaneObserver {
        private final Playable playable;
        private final LineFinder finder;
        private double board;
        private double headUnits;

        LastExit(Playable playable) {
            this.playable = playable;
            this.finder = new LineFinder(
                    new RowMarch(playable.physics().grid()), playable.physics().carry());
        }

        @Override
        public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
            if (moment.lane() != 1 || !moment.squad().equals("B") || moment.afterGame() < GAMES) {
                return;
            }
            Event event = playable.event();
            Bowler tweener = event.squads().get(1).groups().get(0).bowlers().get(2);
            var player = StartingLines.player(tweener, event, playable.physics());
            var start = playable.lines().on(event.pattern()).of(player);
            Optional<ExitWindow> window =
                    finder.movedWindow(player, film, start, event.pattern().lengthM());
            board = window.map(ExitWindow::exitBoard)
                    .orElseGet(() -> finder.exitBoard(
                            player, film, start, event.pattern().lengthM()));
            headUnits = IntStream.rangeClosed(5, 20)
                    .mapToDouble(b -> film.meanOnBoardUm(b, 0, 15 * LaneGeometry.FOOT_M) / OilFilm.UNIT_UM)
                    .min()
                    .orElseThrow();
        }
    }
}
