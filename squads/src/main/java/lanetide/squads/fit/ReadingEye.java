package lanetide.squads.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Bowler;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.study.Playable;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Reads in one playing what was measured on the day: on that lane, after those balls. */
final class ReadingEye implements LaneObserver {
    /** Spread of a bowler's own speed and revs about those of his style (shares, assumption). */
    private static final double SPEED_SHARE = 0.04;

    private static final double SPIN_SHARE = 0.1;

    private final List<Reading> readings;
    private final Playable playable;
    private final LineFinder finder;
    private final RandomStreams streams;
    private final double[] said;
    private final Map<Integer, Integer> played = new HashMap<>();

    /** For readings of a day in an event under a set, with the luck of a playing. */
    ReadingEye(List<Reading> readings, Playable playable, RandomStreams streams) {
        this.readings = readings;
        this.playable = playable;
        this.streams = streams;
        this.finder = new LineFinder(
                new RowMarch(playable.physics().grid()), playable.physics().carry());
        this.said = new double[readings.size()];
    }

    /**
     * Games are counted as they are played on the lane: a pair may be left out of some. Where a fault kept a game from
     * a lane, it is as it was seen last.
     */
    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        int games = moment.afterGame() == 0 ? 0 : 1 + played.getOrDefault(moment.lane(), 0);
        played.put(moment.lane(), games);
        for (int i = 0; i < said.length; i++) {
            if (readings.get(i) instanceof Reading.Worn worn
                    && isOf(worn.tape().lane(), worn.tape().when(), moment, games)) {
                TapeTaken tape = worn.tape();
                said[i] = FilmTapes.units(film, tape.board(), tape.distanceM());
            } else if (readings.get(i) instanceof Reading.Met met
                    && isOf(met.ball().lane(), met.ball().when(), moment, games)) {
                said[i] = met(met.ball(), film);
            }
        }
    }

    private static long endMs(EventResult result, GameEnded game) {
        return result.timetable().stream()
                .filter(entry -> entry.what() == TimetableEntry.Activity.GAME
                        && entry.game() == game.game()
                        && entry.squad().equals(game.squad()))
                .mapToLong(TimetableEntry::endMs)
                .findFirst()
                .orElse(game.endedMs());
    }

    private static boolean isOf(int lane, When when, LaneMoment moment, int games) {
        return lane == moment.lane() && when.squad().equals(moment.squad()) && games <= when.afterGame();
    }

    private double met(BallThrown ball, OilFilm film) {
        Bowler bowler = bowler(ball.when().squad(), ball.bowler());
        Player usual = StartingLines.player(bowler, playable.event(), playable.physics());
        Release release = usual.style().release();
        String stream = "fit/squad/" + ball.when().squad() + "/bowler/" + ball.bowler();
        Release own = release.scaled(
                factor(ball.speedMps(), release.speedMps(), SPEED_SHARE, stream + "/speed"),
                factor(ball.spinRadps(), release.spinRadps(), SPIN_SHARE, stream + "/spin"));
        PlayingStyle style = new PlayingStyle(
                usual.style().id(),
                own,
                usual.style().naturalLaunchRad(),
                usual.style().source());
        Line line = Line.through(ball.laydownBoard(), ball.arrowsBoard());
        return finder.arrivalBoard(new Player(style, usual.spread(), usual.hand(), usual.contact()), film, line);
    }

    private Bowler bowler(String squad, String name) {
        return playable.event().squads().stream()
                .filter(one -> one.id().equals(squad))
                .flatMap(one -> one.everybody().stream())
                .filter(one -> one.id().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Where bowlers of his kind play on the fresh pattern of his squad. */
    private double played(Reading.Played reading) {
        Bowler bowler = bowler(reading.squad(), reading.bowler());
        return playable.lines()
                .on(playable.event()
                        .plans()
                        .get(playable.event().squad(reading.squad()))
                        .patterns()
                        .usual())
                .of(StartingLines.player(bowler, playable.event(), playable.physics()))
                .arrowsBoard();
    }

    /** By what his release is scaled: to what was measured, or by a draw of what is not known of him. */
    private double factor(OptionalDouble measured, double usual, double share, String stream) {
        if (measured.isPresent()) {
            return usual == 0 ? 1 : measured.getAsDouble() / usual;
        }
        return 1
                + share
                        * ZigguratSampler.NormalizedGaussian.of(streams.stream(stream))
                                .sample();
    }

    /** What the playing says of each reading; 0 of those on fresh oil. The playing must be over. */
    double[] said(EventResult result) {
        for (int i = 0; i < said.length; i++) {
            if (readings.get(i) instanceof Reading.Game game) {
                said[i] = ScoresByGame.said(result, game);
            } else if (readings.get(i) instanceof Reading.Played played) {
                said[i] = played(played);
            } else if (readings.get(i) instanceof Reading.Ended ended) {
                said[i] = ended.minutes(endMs(result, ended.game()));
            }
        }
        return said.clone();
    }
}
