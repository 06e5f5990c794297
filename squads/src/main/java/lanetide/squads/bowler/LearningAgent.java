package lanetide.squads.bowler;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;

/**
 * A bowler who learns from his own balls. He knows no more than a bowler can: the line he meant to play, how far his
 * ball missed it at the arrows by his release alone, how his balls scatter on the lines he knows, and, with an error,
 * where each met the pins.
 *
 * <p>When the miss he believes in exceeds his dead band, and he has watched the lane long enough since his last move,
 * he moves as many boards with the feet as he believes he misses, half as many at the arrows (common practice, no
 * source). Inside the dead band a move would gain less than his scatter lets him notice.
 */
public final class LearningAgent implements BowlerAgent {
    private static final int LANES_OF_A_PAIR = 2;

    private final Adaptation adaptation;
    private final Bag bag;
    private final PairBelief belief;
    private final PlayedLines lines;
    private final List<Integer> lanes = new ArrayList<>(LANES_OF_A_PAIR);
    private final int[] shotsSinceMove = new int[LANES_OF_A_PAIR];
    /** Games on the oil that the line he plays was made for: none for the one he brings. */
    private int gamesKnown;

    /**
     * A bowler who has thrown no ball yet.
     *
     * @param adaptation how he sees and moves
     * @param balls his one or two balls for full racks, the one he begins with first
     */
    public LearningAgent(Adaptation adaptation, List<KnownBall> balls) {
        this.adaptation = adaptation;
        this.bag = new Bag(balls, adaptation.seesBoards());
        this.belief = new PairBelief(adaptation.driftBoards());
        this.lines = new PlayedLines(bag.inHand().start());
    }

    /**
     * On lanes that are new to him he is the less sure of his line, the more games they have had than those it was made
     * on.
     */
    @Override
    public void stepUp(int gamesOnOil) {
        if (lanes.isEmpty()) {
            belief.reckonWith(adaptation.driftBoards() * Math.abs(gamesOnOil - gamesKnown));
        }
        gamesKnown = gamesOnOil;
    }

    @Override
    public Line line(int lane) {
        return lines.on(lane);
    }

    @Override
    public int ball() {
        return bag.index();
    }

    @Override
    public int ballChanges() {
        return bag.changes();
    }

    @Override
    public void learn(int lane, Sight sight) {
        int side = side(lane);
        LineFeel feel = bag.inHand().feel();
        double miss = feel.missOfLine(sight.arrivalBoard() - PinCarry.POCKET_BOARD, sight.missAtArrowsBoards());
        double sees = adaptation.seesBoards();
        belief.see(side, miss, sees * sees + feel.unexplainedBoards() * feel.unexplainedBoards());
        bag.watch(sight.arrivalBoard() - PinCarry.POCKET_BOARD, sight.entryRad());
        shotsSinceMove[side]++;
        boolean patient = shotsSinceMove[side] >= adaptation.patienceShots();
        if (patient && Math.abs(belief.miss(side)) > adaptation.deadBandBoards()) {
            move(lane, side);
        }
        if (bag.shouldChange()) {
            changeBall();
        }
    }

    @Override
    public void moveOn() {
        lines.moveOn();
        belief.moveOn();
        forgetLanes();
    }

    private void forgetLanes() {
        lanes.clear();
        shotsSinceMove[0] = 0;
        shotsSinceMove[1] = 0;
    }

    /** Moves by whole and half boards, as far as the lane lets him, and expects the miss to shrink by as much. */
    private void move(int lane, int side) {
        double feet = Math.rint(adaptation.gain() * belief.miss(side) * 2) / 2;
        Line moved = lines.on(lane).moved(feet);
        if (feet == 0) {
            return;
        }
        if (PlayedLines.isPlayable(moved)) {
            lines.play(lane, moved);
            belief.moved(side, feet);
            shotsSinceMove[side] = 0;
        } else {
            bag.outOfRoom(feet > 0);
        }
    }

    /**
     * He goes over by as much as his lines with the two balls differ on the fresh pattern, and is no longer sure of
     * anything.
     */
    private void changeBall() {
        Line before = bag.inHand().start();
        bag.change();
        lines.shift(before, bag.inHand().start());
        belief.otherBall();
        shotsSinceMove[0] = 0;
        shotsSinceMove[1] = 0;
    }

    /** 0 for the lane he came to first, 1 for the other; a third lane means another pair. */
    private int side(int lane) {
        if (!lanes.contains(lane)) {
            if (lanes.size() == LANES_OF_A_PAIR) {
                moveOn();
            }
            lanes.add(lane);
        }
        return lanes.indexOf(lane);
    }
}
