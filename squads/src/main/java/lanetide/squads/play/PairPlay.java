package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.score.TenpinScore;

/**
 * One group on one pair: practice or a game.
 *
 * <p>The first half of the group (rounded up) starts on the left lane, the rest on the right, and everybody changes lanes
 * after each frame. A lane serves its turns in order, one bowler at a time, and waits for a bowler who still plays his last
 * frame on the other lane.
 */
final class PairPlay {
    private final Simulator simulator;
    private final PaceOfPlay pace;
    private final ShotMaker shots;
    private final List<BowlerInPlay> group;
    private final Runnable whenDone;
    private final boolean[] bowling;
    private final int[] framesDone;
    private final Side left;
    private final Side right;

    PairPlay(
            Simulator simulator,
            PaceOfPlay pace,
            ShotMaker shots,
            PairLanes lanes,
            List<BowlerInPlay> group,
            Runnable whenDone) {
        this.simulator = simulator;
        this.pace = pace;
        this.shots = shots;
        this.group = group;
        this.whenDone = whenDone;
        this.bowling = new boolean[group.size()];
        this.framesDone = new int[group.size()];
        this.left = new Side(lanes.left());
        this.right = new Side(lanes.right());
    }

    /** Plays a game; {@code whenDone} runs after its last ball. */
    void playGame() {
        for (int frame = 1; frame <= TenpinScore.FRAMES; frame++) {
            for (int b = 0; b < group.size(); b++) {
                boolean startsLeft = b < (group.size() + 1) / 2;
                boolean onLeft = startsLeft == (frame % 2 == 1);
                (onLeft ? left : right).turns.add(new Turn(b, frame));
            }
        }
        nextTurns();
    }

    /**
     * Practises until a time; no ball is released at that time or later. {@code whenDone} runs then, or when the last ball
     * is back.
     */
    void practise(long untilMs) {
        for (int b = 0; b < group.size(); b++) {
            left.turns.add(new Turn(b, 0));
            right.turns.add(new Turn((b + (group.size() + 1) / 2) % group.size(), 0));
        }
        nextPractice(left, untilMs);
    }

    private void nextTurns() {
        begin(left);
        begin(right);
        if (left.finished() && right.finished()) {
            group.forEach(BowlerInPlay::handInCard);
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
        simulator.schedule(pace.firstShotMs(), Phase.PLAY, "release", () -> release(side, turn));
    }

    private void release(Side side, Turn turn) {
        BowlerInPlay bowler = group.get(turn.bowler());
        bowler.score(shots.throwBall(bowler, side.lane, simulator.nowMs()));
        long back = shots.travelMs() + pace.resetMs();
        if (bowler.frameComplete(turn.frame())) {
            simulator.schedule(back, Phase.PLAY, "frame done", () -> endFrame(side, turn));
        } else {
            simulator.schedule(back + pace.spareShotMs(), Phase.PLAY, "release", () -> release(side, turn));
        }
    }

    private void endFrame(Side side, Turn turn) {
        framesDone[turn.bowler()]++;
        side.busy = false;
        side.next++;
        nextTurns();
    }

    /** Fills the lanes, the given one first, so that a lone bowler practises on both. */
    private void nextPractice(Side first, long untilMs) {
        beginPractice(first, untilMs);
        beginPractice(other(first), untilMs);
        if (!left.busy && !right.busy) {
            simulator.scheduleAt(Math.max(simulator.nowMs(), untilMs), Phase.MOVE, "practice over", whenDone);
        }
    }

    /** A bowler steps up if there is time, his lane is free and he is not bowling on the other one. */
    private void beginPractice(Side side, long untilMs) {
        int b = side.turns.get(side.next).bowler();
        boolean tooLate = simulator.nowMs() + pace.spareShotMs() >= untilMs;
        if (tooLate || side.busy || bowling[b]) {
            return;
        }
        side.busy = true;
        bowling[b] = true;
        simulator.schedule(pace.spareShotMs(), Phase.PLAY, "practice release", () -> {
            shots.throwBall(group.get(b), side.lane, simulator.nowMs());
            simulator.schedule(shots.travelMs() + pace.resetMs(), Phase.PLAY, "practice ball back", () -> {
                side.busy = false;
                bowling[b] = false;
                side.next = (side.next + 1) % side.turns.size();
                nextPractice(other(side), untilMs);
            });
        });
    }

    private Side other(Side side) {
        return side == left ? right : left;
    }

    /** A bowler's turn at a frame, from 1; 0 in practice. */
    private record Turn(int bowler, int frame) {}

    private static final class Side {
        private final LaneInPlay lane;
        private final List<Turn> turns = new ArrayList<>();
        private int next;
        private boolean busy;

        Side(LaneInPlay lane) {
            this.lane = lane;
        }

        boolean finished() {
            return next == turns.size();
        }
    }
}
