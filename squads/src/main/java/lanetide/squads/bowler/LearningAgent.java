package lanetide.squads.bowler;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Reckoning;

/**
 * A bowler who learns from his own balls, from those of others on his pair, and from what he is told. He knows no more
 * than a bowler can: the line he meant to play, how far his ball missed it at the arrows by his release alone, how his
 * balls scatter on the lines he knows, and, with an error, where each met the pins.
 *
 * <p>When the miss he believes in exceeds his dead band, and he has watched the lane long enough since his last move,
 * he moves as many boards with the feet as he believes he misses, half as many at the arrows (common practice, no
 * source). Inside the dead band a move would gain less than his scatter lets him notice.
 */
public final class LearningAgent implements BowlerAgent {
    private static final int LANES_OF_A_PAIR = 2;

    private final Adaptation adaptation;
    private final Reckoning reckoning;
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
        this.reckoning = adaptation.reckoning();
        this.belief = new PairBelief(reckoning.driftBoards(), reckoning.deeperBoards());
        this.lines = new PlayedLines(bag.inHand().start());
    }

    /**
     * On lanes that are new to him he expects his line to be off the more, and is the less sure of it, the more games
     * they have had than those it was made on. He hears what those say who bowled there before, and moves at once if
     * that is reason enough.
     */
    @Override
    public void stepUp(int lane, int gamesOnOil, OptionalDouble told) {
        if (lanes.isEmpty()) {
            int more = gamesOnOil - gamesKnown;
            belief.reckonWith(reckoning.deeperBoards() * more, reckoning.driftBoards() * Math.abs(more));
        }
        gamesKnown = gamesOnOil;
        if (!lanes.contains(lane)) {
            firstLook(lane, told);
        }
    }

    private void firstLook(int lane, OptionalDouble told) {
        int side = side(lane);
        if (reckoning.listens() && told.isPresent()) {
            double variance = reckoning.toldBoards() * reckoning.toldBoards();
            belief.hear(side, told.getAsDouble() - movedBoards(lane), variance);
        }
        moveIfOff(lane, side);
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
    public Optional<LaneRead> learn(int lane, Sight sight) {
        int side = side(lane);
        LineFeel feel = bag.inHand().feel();
        double miss = feel.missOfLine(sight.arrivalBoard() - PinCarry.POCKET_BOARD, sight.missAtArrowsBoards());
        double sees = adaptation.seesBoards();
        double variance = sees * sees + feel.unexplainedBoards() * feel.unexplainedBoards();
        LaneRead read = new LaneRead(movedBoards(lane) + miss, variance);
        belief.see(side, miss, variance);
        bag.watch(sight.arrivalBoard() - PinCarry.POCKET_BOARD, sight.entryRad());
        shotsSinceMove[side]++;
        if (shotsSinceMove[side] >= adaptation.patienceShots()) {
            moveIfOff(lane, side);
        }
        if (bag.shouldChange()) {
            changeBall();
        }
        return Optional.of(read);
    }

    /** He moves by it only after his own next ball there. */
    @Override
    public void watch(int lane, LaneRead read, double unlike) {
        if (reckoning.looks() && lanes.contains(lane)) {
            double off = unlike * reckoning.othersBoards();
            belief.watch(lanes.indexOf(lane), read.moveBoards() - movedBoards(lane), read.variance() + off * off);
        }
    }

    @Override
    public OptionalDouble moved(int lane) {
        return OptionalDouble.of(movedBoards(lane));
    }

    /** Against the line that he brought for the ball in hand. */
    private double movedBoards(int lane) {
        return lines.on(lane).laydownBoard() - bag.inHand().start().laydownBoard();
    }

    private void moveIfOff(int lane, int side) {
        if (Math.abs(belief.miss(side)) > adaptation.deadBandBoards()) {
            move(lane, side);
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
