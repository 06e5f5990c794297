package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.score.TenpinScore;

/**
 * One group's game on one pair.
 *
 * <p>The first half of the group (rounded up) starts on the left lane, the rest on the right, and everybody changes lanes
 * after each frame. A lane serves its turns in order, one bowler at a time, and waits for a bowler who still plays his last
 * frame on the other lane. The lane is free again when the pins stand; a bowler shoots again when he has his ball back.
 */
final class PairGame {
    private final Day day;
    private final PaceOfPlay pace;
    private final List<Member> group;
    private final Stopwatch stopwatch;
    private final Runnable whenDone;
    private final int[] framesDone;
    private final Side left;
    private final Side right;

    PairGame(Day day, PairLanes lanes, List<Member> group, Stopwatch stopwatch, Runnable whenDone) {
        this.day = day;
        this.pace = day.event().pace();
        this.group = group;
        this.stopwatch = stopwatch;
        this.whenDone = whenDone;
        this.framesDone = new int[group.size()];
        this.left = new Side(lanes.left(), day.simulator().nowMs());
        this.right = new Side(lanes.right(), day.simulator().nowMs());
    }

    /** Plays the game; {@code whenDone} runs after its last ball. */
    void play() {
        group.forEach(member -> member.bowler().beginGame());
        for (int frame = 1; frame <= TenpinScore.FRAMES; frame++) {
            for (int b = 0; b < group.size(); b++) {
                boolean startsLeft = b < (group.size() + 1) / 2;
                boolean onLeft = startsLeft == (frame % 2 == 1);
                (onLeft ? left : right).turns.add(new Turn(b, frame));
            }
        }
        nextTurns();
    }

    private void nextTurns() {
        begin(left);
        begin(right);
        if (left.finished() && right.finished()) {
            group.forEach(member -> member.bowler().handInCard());
            whenDone.run();
        }
    }

    private void begin(Side side) {
        if (side.busy || side.finished()) {
            return;
        }
        Turn turn = side.turns.get(side.next);
        if (framesDone[turn.bowler()] < turn.frame() - 1) {
            return;
        }
        side.busy = true;
        long nowMs = day.simulator().nowMs();
        if (group.size() > 1) {
            stopwatch.waited(WaitCause.PARTNER, nowMs - side.freeSinceMs);
        }
        Member member = group.get(turn.bowler());
        long untilBallMs = Math.max(0, member.ballBackMs() - nowMs);
        shoot(side, turn, untilBallMs, member.times().firstShotMs());
    }

    private void shoot(Side side, Turn turn, long fromNowMs, long takesMs) {
        day.approaches()
                .shoot(
                        side.lane.number(),
                        fromNowMs,
                        takesMs,
                        waitedMs -> stopwatch.waited(WaitCause.NEIGHBOUR, waitedMs),
                        () -> release(side, turn));
    }

    private void release(Side side, Turn turn) {
        Member member = group.get(turn.bowler());
        BowlerInPlay bowler = member.bowler();
        long nowMs = day.simulator().nowMs();
        bowler.score(day.shots().throwBall(bowler, side.lane, nowMs));
        long pinsSetMs = day.shots().travelMs() + pace.pinsetterMs();
        long ballBackMs = day.shots().travelMs() + pace.ballReturnMs();
        member.ballBackAt(nowMs + ballBackMs);
        if (bowler.frameComplete(turn.frame())) {
            day.simulator().schedule(pinsSetMs, Phase.PLAY, "frame done", () -> endFrame(side, turn));
        } else {
            long readyMs = Math.max(pinsSetMs, ballBackMs);
            shoot(side, turn, readyMs, member.times().spareShotMs());
        }
    }

    private void endFrame(Side side, Turn turn) {
        framesDone[turn.bowler()]++;
        side.busy = false;
        side.freeSinceMs = day.simulator().nowMs();
        side.next++;
        nextTurns();
    }

    /** A bowler's turn at a frame, from 1. */
    private record Turn(int bowler, int frame) {}

    private static final class Side {
        private final LaneInPlay lane;
        private final List<Turn> turns = new ArrayList<>();
        private int next;
        private boolean busy;
        private long freeSinceMs;

        Side(LaneInPlay lane, long nowMs) {
            this.lane = lane;
            this.freeSinceMs = nowMs;
        }

        boolean finished() {
            return next == turns.size();
        }
    }
}
