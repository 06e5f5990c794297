package lanetide.squads.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
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

/** Reads in one playing what was measured on the day: on that lane, after those balls. */
final class ReadingEye implements LaneObserver {
    private final List<Reading> readings;
    private final Playable playable;
    private final BallDraws balls;
    private final double[] said;
    private final Map<Integer, Integer> played = new HashMap<>();

    /** For readings of a day in an event under a set, with the luck of a playing. */
    ReadingEye(List<Reading> readings, Playable playable, RandomStreams streams) {
        this.readings = readings;
        this.playable = playable;
        this.balls = new BallDraws(playable, streams);
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
            } else if (readings.get(i) instanceof Reading.OfBall of && isOf(of.ball(), moment, games)) {
                said[i] = said(of, film);
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

    /** Where no lane was noted, the games are those of the squad. */
    private boolean isOf(BallThrown ball, LaneMoment moment, int games) {
        return isOf(balls.lane(ball), ball.when(), moment, ball.lane().isPresent() ? games : moment.afterGame());
    }

    private double said(Reading.OfBall reading, OilFilm film) {
        return reading instanceof Reading.Passed passed
                ? balls.passed(passed.ball(), film, passed.at().distanceM())
                : balls.met(reading.ball(), film);
    }

    private static boolean isOf(int lane, When when, LaneMoment moment, int games) {
        return lane == moment.lane() && when.squad().equals(moment.squad()) && games <= when.afterGame();
    }

    /** Where bowlers of his kind play on the fresh pattern of his squad. */
    private double played(Reading.Played reading) {
        int squad = playable.event().squad(reading.squad());
        Bowler bowler =
                playable.event().squads().get(squad).bowler(reading.bowler()).orElseThrow();
        return playable.lines()
                .on(playable.event().plans().get(squad).patterns().usual())
                .of(StartingLines.player(bowler, playable.event(), playable.physics()))
                .arrowsBoard();
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
