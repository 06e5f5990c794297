package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.play.LaneTurns.Turn;
import lanetide.squads.result.WaitCause;
import lanetide.squads.score.TenpinScore;

/**
 * A game on one pair.
 *
 * <p>The first half of a group (rounded up) starts on the left lane, the rest on the right, and everybody changes lanes
 * after each frame. A lane serves its turns in order, one bowler at a time, and waits for a bowler who still plays his
 * last frame on the other lane. The lane is free again when the pins stand; a bowler shoots again when he has his ball
 * back.
 *
 * <p>Turns stand in rounds, which on each lane do not decrease, and a bowler's next turn is in a later round on the
 * other lane. So the turn of the lowest round can always be taken, also when others join a game that is going on.
 */
final class PairGame {
    private final Day day;
    private final PaceOfPlay pace;
    private final PairLanes lanes;
    private final Stopwatch stopwatch;
    private final Watcher watcher;
    private final LaneTurns left;
    private final LaneTurns right;
    private final List<BowlerInGame> players = new ArrayList<>();
    private Mates mates = new Mates(List.of());
    private final long startMs;
    private Consumer<List<BowlerInGame>> whenStopped;
    private int expected;
    private boolean over;

    /** Is told what happens in the game. */
    interface Watcher {
        /** A ball has been thrown. */
        void thrown(BowlerInGame player, LaneInPlay lane, int frame, int ball, int standing, int left);

        /** A bowler has played his last frame. */
        void finished(BowlerInGame player);

        /** All turns are played. */
        void over(PairGame game);

        /** A turn has come on a lane that is out of order. */
        void laneOut(PairGame game, LaneInPlay lane);
    }

    PairGame(Day day, PairLanes lanes, Stopwatch stopwatch, Watcher watcher) {
        this.day = day;
        this.pace = day.event().pace();
        this.lanes = lanes;
        this.stopwatch = stopwatch;
        this.watcher = watcher;
        this.startMs = day.simulator().nowMs();
        this.left = new LaneTurns(lanes.left(), stopwatch, startMs);
        this.right = new LaneTurns(lanes.right(), stopwatch, startMs);
    }

    PairLanes lanes() {
        return lanes;
    }

    /** Those who play and those who are on their way here. */
    int players() {
        return players.size() + expected;
    }

    /** Whether somebody may still join. */
    boolean isGoingOn() {
        return !over && whenStopped == null;
    }

    /** Plays what the players have still to play. */
    void play(List<BowlerInGame> group) {
        players.addAll(group);
        mates = Mates.of(players);
        for (int frame = 1; frame <= TenpinScore.FRAMES; frame++) {
            for (int i = 0; i < group.size(); i++) {
                BowlerInGame player = group.get(i);
                boolean startsLeft = i < (group.size() + 1) / 2;
                if (frame > player.framesDone()) {
                    (startsLeft == (frame % 2 == 1) ? left : right).add(new Turn(player, frame, frame));
                }
            }
        }
        nextTurns();
    }

    /** A player from another pair is on his way here; the game does not end before he has come. */
    void expect() {
        expected++;
    }

    /** Lets an expected player play what he has still to play, a frame a round from the next round on. */
    void join(BowlerInGame player) {
        expected--;
        players.add(player);
        mates = Mates.of(players);
        int round = Math.max(left.round(), right.round()) + 1;
        LaneTurns side = left.turnsLeft() <= right.turnsLeft() ? left : right;
        for (int frame = player.framesDone() + 1; frame <= TenpinScore.FRAMES; frame++) {
            side.insert(new Turn(player, frame, round++));
            side = other(side);
        }
        nextTurnsUnlessStopping();
    }

    /** Ends the game as soon as no frame is being played; {@code whenStopped} is then told who has frames left. */
    void stop(Consumer<List<BowlerInGame>> then) {
        whenStopped = then;
        stopIfIdle();
    }

    private void nextTurns() {
        begin(left);
        begin(right);
        if (left.isFinished() && right.isFinished() && expected == 0 && !over) {
            end();
            watcher.over(this);
        }
    }

    private void begin(LaneTurns side) {
        if (!side.isReady()) {
            return;
        }
        if (day.faults().isOut(side.lane())) {
            awaitRepair(side);
            return;
        }
        long nowMs = day.simulator().nowMs();
        side.begin(nowMs, players.size() == 1);
        Member member = side.next().player().member();
        long untilBallMs = Math.max(0, member.ballBackMs() - nowMs);
        shoot(side, side.next(), 1, untilBallMs, member.times().firstShotMs());
    }

    private void awaitRepair(LaneTurns side) {
        side.awaitRepair(day.simulator().nowMs());
        day.faults().whenBack(side.lane(), () -> {
            if (!over) {
                side.stopWaiting(day.simulator().nowMs());
                nextTurnsUnlessStopping();
            }
        });
        watcher.laneOut(this, side.lane());
    }

    private void shoot(LaneTurns side, Turn turn, int ball, long fromNowMs, long takesMs) {
        day.approaches()
                .shoot(
                        side.lane().number(),
                        fromNowMs,
                        takesMs,
                        waitedMs -> stopwatch.waited(WaitCause.NEIGHBOUR, waitedMs),
                        () -> release(side, turn, ball));
    }

    private void release(LaneTurns side, Turn turn, int ball) {
        Member member = turn.player().member();
        BowlerInPlay bowler = member.bowler();
        long nowMs = day.simulator().nowMs();
        int standing = bowler.standing();
        int pinsLeft = day.balls().throwBall(bowler, mates, side.lane(), nowMs);
        watcher.thrown(turn.player(), side.lane(), turn.frame(), ball, standing, pinsLeft);
        bowler.score(pinsLeft);
        long pinsSetMs = day.balls().travelMs() + pace.pinsetterMs();
        long ballBackMs = day.balls().travelMs() + pace.ballReturnMs();
        member.ballBackAt(nowMs + ballBackMs);
        if (bowler.frameComplete(turn.frame())) {
            day.simulator().schedule(pinsSetMs, Phase.PLAY, "frame done", () -> endFrame(side, turn));
        } else {
            shoot(
                    side,
                    turn,
                    ball + 1,
                    Math.max(pinsSetMs, ballBackMs),
                    member.times().spareShotMs());
        }
    }

    private void endFrame(LaneTurns side, Turn turn) {
        turn.player().frameDone();
        side.end(day.simulator().nowMs());
        day.faults().frameDone(side.lane());
        if (turn.player().isDone()) {
            watcher.finished(turn.player());
        }
        nextTurnsUnlessStopping();
    }

    private void nextTurnsUnlessStopping() {
        if (whenStopped == null) {
            nextTurns();
        } else {
            stopIfIdle();
        }
    }

    private void stopIfIdle() {
        if (over || left.isBusy() || right.isBusy() || expected > 0) {
            return;
        }
        end();
        left.stopWaiting(day.simulator().nowMs());
        right.stopWaiting(day.simulator().nowMs());
        whenStopped.accept(players.stream().filter(player -> !player.isDone()).toList());
    }

    private void end() {
        over = true;
        lanes.both().forEach(lane -> lane.tell(mates.tell(lane)));
        stopwatch.paired(day.simulator().nowMs() - startMs);
    }

    private LaneTurns other(LaneTurns side) {
        return side == left ? right : left;
    }
}
