package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.result.WaitCause;

/** The turns on one lane of a game, in rounds that do not decrease, and what the lane does at present. */
final class LaneTurns {
    private final LaneInPlay lane;
    private final Stopwatch stopwatch;
    private final List<Turn> turns = new ArrayList<>();
    private int next;
    private boolean busy;
    private boolean waitsForRepair;
    private long idleSinceMs;

    LaneTurns(LaneInPlay lane, Stopwatch stopwatch, long nowMs) {
        this.lane = lane;
        this.stopwatch = stopwatch;
        this.idleSinceMs = nowMs;
    }

    /**
     * A bowler's turn.
     *
     * @param frame his frame, from 1
     * @param round when it comes: turns of lower rounds come before it
     */
    record Turn(BowlerInGame player, int frame, int round) {}

    LaneInPlay lane() {
        return lane;
    }

    boolean isBusy() {
        return busy;
    }

    boolean isFinished() {
        return next == turns.size();
    }

    /**
     * Whether a turn could begin: the lane is idle, in order as far as one knows, and the bowler is not on the other
     * lane.
     */
    boolean isReady() {
        return !busy && !waitsForRepair && !isFinished() && next().player().framesDone() >= next().frame() - 1;
    }

    Turn next() {
        return turns.get(next);
    }

    int turnsLeft() {
        return turns.size() - next;
    }

    /** Round of the last turn that was begun; 0 for none. */
    int round() {
        int begun = busy ? next : next - 1;
        return begun < 0 ? 0 : turns.get(begun).round();
    }

    void add(Turn turn) {
        turns.add(turn);
    }

    /** Behind the turns of the same round that are still to come. */
    void insert(Turn turn) {
        int at = busy ? next + 1 : next;
        while (at < turns.size() && turns.get(at).round() <= turn.round()) {
            at++;
        }
        turns.add(at, turn);
    }

    /** The next turn begins; the lane may have been idle for the bowler's sake. */
    void begin(long nowMs, boolean alone) {
        busy = true;
        if (!alone) {
            stopwatch.waited(WaitCause.PARTNER, nowMs - idleSinceMs);
        }
    }

    /** The turn is over, and the pins stand. */
    void end(long nowMs) {
        busy = false;
        idleSinceMs = nowMs;
        next++;
    }

    /** A turn has come while the lane is out of order. */
    void awaitRepair(long nowMs) {
        waitsForRepair = true;
        idleSinceMs = nowMs;
    }

    /** The lane is in order again, or nobody waits for it any more. */
    void stopWaiting(long nowMs) {
        if (waitsForRepair) {
            stopwatch.waited(WaitCause.FAULT, nowMs - idleSinceMs);
            waitsForRepair = false;
            idleSinceMs = nowMs;
        }
    }
}
