package lanetide.squads.play;

import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.model.PaceOfPlay;

/**
 * One group's practice on its starting pair: on both lanes at once, each bowler on either in turn, and nobody waits for
 * a neighbour.
 */
final class PairPractice {
    private final Day day;
    private final Simulator simulator;
    private final PaceOfPlay pace;
    private final List<Member> group;
    private final Mates mates;
    private final ShotWatcher watcher;
    private final Runnable whenDone;
    private final long untilMs;
    private final boolean[] bowling;
    private final Side left;
    private final Side right;

    /**
     * Prepares a practice.
     *
     * @param untilMs no ball is released at this time or later
     * @param watcher is told of every ball
     * @param whenDone runs then, or when the last ball is back
     */
    PairPractice(Day day, PairLanes lanes, List<Member> group, long untilMs, ShotWatcher watcher, Runnable whenDone) {
        this.day = day;
        this.simulator = day.simulator();
        this.pace = day.event().pace();
        this.group = group;
        this.mates = new Mates(group.stream().map(Member::bowler).toList());
        this.untilMs = untilMs;
        this.watcher = watcher;
        this.whenDone = whenDone;
        this.bowling = new boolean[group.size()];
        this.left = new Side(lanes.left(), 0);
        this.right = new Side(lanes.right(), (group.size() + 1) / 2 % Math.max(1, group.size()));
    }

    void practise() {
        next(left);
    }

    /** Fills the lanes, the given one first, so that a lone bowler practises on both. */
    private void next(Side first) {
        begin(first);
        begin(first == left ? right : left);
        if (!left.busy && !right.busy) {
            simulator.scheduleAt(Math.max(simulator.nowMs(), untilMs), Phase.MOVE, "practice over", whenDone);
        }
    }

    /** A bowler steps up if there is time, his lane is free and he is not bowling on the other one. */
    private void begin(Side side) {
        if (group.isEmpty() || side.busy || bowling[side.bowler] || day.faults().isOut(side.lane)) {
            return;
        }
        Member member = group.get(side.bowler);
        long releaseMs = Math.max(simulator.nowMs(), member.ballBackMs())
                + member.practiceTimes().spareShotMs();
        if (releaseMs >= untilMs) {
            return;
        }
        side.busy = true;
        bowling[side.bowler] = true;
        simulator.scheduleAt(releaseMs, Phase.PLAY, "practice release", () -> release(side, member));
    }

    private void release(Side side, Member member) {
        long nowMs = simulator.nowMs();
        int standing = member.bowler().standing();
        int pinsLeft = day.balls().throwBall(member.bowler(), mates, side.lane, nowMs);
        watcher.thrown(member.bowler(), side.lane, standing, pinsLeft);
        long travelMs = day.balls().travelMs();
        member.ballBackAt(nowMs + travelMs + pace.ballReturnMs());
        simulator.schedule(travelMs + pace.pinsetterMs(), Phase.PLAY, "practice pins set", () -> {
            bowling[side.bowler] = false;
            side.busy = false;
            side.bowler = (side.bowler + 1) % group.size();
            next(side == left ? right : left);
        });
    }

    /** Is told of a ball: who threw it where, and the pins before and after it. */
    interface ShotWatcher {
        void thrown(BowlerInPlay bowler, LaneInPlay lane, int standing, int left);
    }

    private static final class Side {
        private final LaneInPlay lane;
        private int bowler;
        private boolean busy;

        Side(LaneInPlay lane, int firstBowler) {
            this.lane = lane;
            this.bowler = firstBowler;
        }
    }
}
