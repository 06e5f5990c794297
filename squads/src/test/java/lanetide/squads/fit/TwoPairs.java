package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.play.Events;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.study.Playable;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Two pairs, two squads of eight on one oiling, four games each; what is measured there, by a stated plan: on each lane
 * five distances and three boards, fresh and after squad A, and the scores of squad A; and what is held out.
 */
final class TwoPairs {
    /** What is held out. */
    static final List<String> QUANTITIES = List.of(
            "a tape after squad B, mid-lane (units)",
            "a tape after squad B, 2 ft past the end (units)",
            "exit board of the tweener after squad B",
            "head film left on the most worn board after squad B (units)",
            "advantage of squad B (pins a game)");

    static final int GAMES = 4;
    static final int TAPES = 2;

    private static final double[] FEET = {6, 15, 25, 36, 42};
    private static final int[] BOARDS = {8, 13, 20};
    private static final int[] HELD_OUT_BOARDS = {10, 15};
    private static final double[] HELD_OUT_FEET = {20, 42};
    static final double ERROR_UNITS = 1;

    /** The event. */
    static final Event EVENT = event();

    private TwoPairs() {}

    private static Event event() {
        OilPattern pattern = OilPattern.of("test", 40 * LaneGeometry.FOOT_M, 25, 4);
        Rotation stay = Events.stay(2, 2, GAMES);
        return Fixtures.event(
                "test",
                Fixtures.centre(2, Fixtures.machines(1, 45_000, 45_000)),
                pattern,
                List.of(
                        Fixtures.squad("A", 8 * 3_600_000L, Conditioning.STRIP_AND_OIL, 600_000, groups()),
                        Fixtures.squad("B", 12 * 3_600_000L, Conditioning.NONE, 600_000, groups())),
                List.of(stay, stay),
                PaceOfPlay.USUAL);
    }

    private static List<Group> groups() {
        return List.of(group("1"), group("2"));
    }

    private static Group group(String id) {
        return new Group(
                id,
                List.of(
                        Events.bowler(id + "s", Hand.RIGHT, "straight", Events.level("league"), "weak-reactive"),
                        Events.bowler(id + "k", Hand.RIGHT, "stroker", Events.level("scratch"), "medium-reactive"),
                        Events.bowler(id + "t", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
                        Events.bowler(id + "p", Hand.RIGHT, "power", Events.level("elite"), "strong-reactive")));
    }

    /** What is measured on a day. */
    static Measurements measured(Playable truth, RandomStreams luck) {
        Notes notes = new Notes(luck);
        EventResult result = play(truth, luck, notes);
        List<ScoreMade> scores = new ArrayList<>();
        for (BowlerResult bowler : result.squads().get(0).bowlers()) {
            for (int game = 0; game < GAMES; game++) {
                scores.add(new ScoreMade(
                        "A", game + 1, bowler.bowler().id(), bowler.scores().get(game), "study"));
            }
        }
        return new Measurements(notes.tapes, balls(truth, luck), scores, List.of());
    }

    /** Two balls of each bowler on his starting line in practice; his speed is measured, his revs are not. */
    private static List<BallThrown> balls(Playable truth, RandomStreams luck) {
        List<BallThrown> thrown = new ArrayList<>();
        List<Group> groups = truth.event().squads().get(0).groups();
        for (int group = 0; group < groups.size(); group++) {
            for (Bowler bowler : groups.get(group).bowlers()) {
                double habit = Reading.Played.HABIT_BOARDS
                        * ZigguratSampler.NormalizedGaussian.of(luck.stream("habit/" + bowler.id()))
                                .sample();
                Line line = truth.lines()
                        .on(truth.event().pattern())
                        .of(StartingLines.player(bowler, truth.event(), truth.physics()))
                        .moved(2 * habit);
                for (int side = 1; side <= 2; side++) {
                    thrown.add(ball(2 * group + side, bowler, line, PinCarry.POCKET_BOARD));
                }
            }
        }
        List<Reading> blank = thrown.stream().<Reading>map(Reading.Met::new).toList();
        ReadingEye eye = new ReadingEye(blank, truth, luck);
        double[] met = eye.said(play(truth, luck, eye));
        UniformRandomProvider chance = luck.stream("balls");
        List<BallThrown> seen = new ArrayList<>();
        for (int i = 0; i < met.length; i++) {
            BallThrown ball = thrown.get(i);
            double noise = BallSeen.USUAL_ERROR_BOARDS
                    * ZigguratSampler.NormalizedGaussian.of(chance).sample();
            seen.add(with(ball, met[i] + noise));
        }
        return seen;
    }

    private static BallThrown with(BallThrown ball, double met) {
        BallSeen seen = ball.seen();
        return new BallThrown(
                ball.lane(),
                ball.when(),
                ball.bowler(),
                new BallSeen(
                        seen.laydownBoard(),
                        seen.arrowsBoard(),
                        seen.passed(),
                        OptionalDouble.of(met),
                        seen.errorBoards()),
                ball.speedMps(),
                ball.spinRadps(),
                ball.place());
    }

    private static BallThrown ball(int lane, Bowler bowler, Line line, double met) {
        return new BallThrown(
                OptionalInt.of(lane),
                new When("A", 0),
                Optional.of(bowler.id()),
                new BallSeen(
                        OptionalDouble.of(line.laydownBoard()),
                        OptionalDouble.of(line.arrowsBoard()),
                        Optional.empty(),
                        OptionalDouble.of(met),
                        BallSeen.USUAL_ERROR_BOARDS),
                OptionalDouble.of(bowler.style().release().speedMps()),
                OptionalDouble.empty(),
                "study");
    }

    private static EventResult play(Playable playable, RandomStreams luck, LaneObserver observer) {
        return new TournamentSimulation(playable.setup(LuckSource.byBall(luck))
                        .recording(LaneRecords.NONE)
                        .watchedBy(Observers.of(observer)))
                .play();
    }

    /** What is held out, in one playing. */
    static double[] heldOut(Playable playable, RandomStreams luck) {
        LastLook look = new LastLook(playable);
        EventResult result = play(playable, luck, look);
        double first = result.squads().get(0).meanScore();
        double second = result.squads().get(1).meanScore();
        return new double[] {look.units[0], look.units[1], look.exit, look.headUnits, (second - first) / 2};
    }

    /** Takes tapes by the plan, with their errors. */
    private static final class Notes implements LaneObserver {
        private final List<TapeTaken> tapes = new ArrayList<>();
        private final UniformRandomProvider chance;

        Notes(RandomStreams luck) {
            this.chance = luck.stream("tapes");
        }

        @Override
        public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
            if (!moment.squad().equals("A") || (moment.afterGame() != 0 && moment.afterGame() != GAMES)) {
                return;
            }
            for (double feet : FEET) {
                for (int board : BOARDS) {
                    double distanceM = feet * LaneGeometry.FOOT_M;
                    double units = FilmTapes.units(film, board, distanceM)
                            + ERROR_UNITS
                                    * ZigguratSampler.NormalizedGaussian.of(chance)
                                            .sample();
                    tapes.add(new TapeTaken(
                            moment.lane(),
                            new When("A", moment.afterGame()),
                            distanceM,
                            board,
                            Math.max(0, units),
                            ERROR_UNITS,
                            "study"));
                }
            }
        }
    }

    /** Looks at the last lane after the last game. */
    private static final class LastLook implements LaneObserver {
        private final Playable playable;
        private final LineFinder finder;
        private final double[] units = new double[TAPES];
        private double exit;
        private double headUnits;

        LastLook(Playable playable) {
            this.playable = playable;
            this.finder = new LineFinder(
                    new RowMarch(playable.physics().grid()), playable.physics().carry());
        }

        @Override
        public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
            if (moment.lane() != 4 || !moment.squad().equals("B") || moment.afterGame() < GAMES) {
                return;
            }
            for (int i = 0; i < TAPES; i++) {
                units[i] = FilmTapes.units(film, HELD_OUT_BOARDS[i], HELD_OUT_FEET[i] * LaneGeometry.FOOT_M);
            }
            Event event = playable.event();
            Bowler tweener = event.squads().get(1).groups().get(1).bowlers().get(2);
            var player = StartingLines.player(tweener, event, playable.physics());
            var start = playable.lines().on(event.pattern()).of(player);
            Optional<ExitWindow> window =
                    finder.movedWindow(player, film, start, event.pattern().lengthM());
            exit = window.map(ExitWindow::exitBoard)
                    .orElseGet(() -> finder.exitBoard(
                            player, film, start, event.pattern().lengthM()));
            headUnits = IntStream.rangeClosed(5, 20)
                    .mapToDouble(b -> film.meanOnBoardUm(b, 0, 15 * LaneGeometry.FOOT_M) / OilFilm.UNIT_UM)
                    .min()
                    .orElseThrow();
        }
    }
}
