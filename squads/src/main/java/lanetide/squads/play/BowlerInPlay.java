package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.equipment.Equipment;
import lanetide.squads.luck.Luck;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.score.ScoreCard;
import lanetide.squads.score.Splits;

/** A bowler during the event: his balls, his form, his scores and what he has learnt. */
final class BowlerInPlay {
    private final Bowler bowler;
    private final Player player;
    private final BowlerAgent agent;
    private final Bowling bowling;
    private final Luck luck;
    private final List<BallInPlay> strikeBalls = new ArrayList<>();
    private final BallInPlay spareBall;
    private SpareLines.Known spareLines;
    private SpareLines spareLinesOf;
    private final List<Integer> scores = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();
    private ScoreCard card;
    private int standing = Rack.FULL;
    private boolean newRack = true;
    private double scatter;
    private int ballsAtFullRacks;
    private int frame = 1;

    BowlerInPlay(Bowler bowler, Player player, Equipment equipment, BowlerAgent agent, Bowling bowling, Luck luck) {
        this.bowler = bowler;
        this.player = player;
        this.agent = agent;
        this.bowling = bowling;
        this.luck = luck;
        strikeBalls.add(new BallInPlay(equipment.first()));
        equipment.second().ifPresent(contact -> strikeBalls.add(new BallInPlay(contact)));
        this.spareBall = new BallInPlay(equipment.spare());
        takeCard();
    }

    Bowler bowler() {
        return bowler;
    }

    Player player() {
        return player;
    }

    BowlerAgent agent() {
        return agent;
    }

    Luck luck() {
        return luck;
    }

    /** The ball he throws at a full rack now. */
    BallInPlay strikeBall() {
        return strikeBalls.get(agent.ball());
    }

    BallInPlay spareBall() {
        return spareBall;
    }

    /** His lines for spares, out of those that all bowlers know. */
    SpareLines.Known spareLines(SpareLines all) {
        if (spareLinesOf != all) {
            spareLinesOf = all;
            spareLines = all.of(player.style().release(), spareBall.contact());
        }
        return spareLines;
    }

    /** How much more than usual his releases scatter in this game. */
    double scatter() {
        return scatter;
    }

    /** What is left of his speed. */
    double speedFactor() {
        return bowling.speedFactor(ballsAtFullRacks);
    }

    /** Counts a ball at a full rack, which costs strength. */
    void spendStrength() {
        ballsAtFullRacks++;
    }

    /** Pins that stand before his next ball. */
    int standing() {
        return standing;
    }

    /** Begins the game on his card. */
    void beginGame() {
        beginFrame(1);
    }

    private void beginFrame(int next) {
        frame = next;
        luck.frame(scores.size() + 1, frame);
    }

    /** Scores a ball of the game that leaves some pins, unless he fouled. */
    void score(int left) {
        double foulShare = bowling.scoring().foulShare();
        if (foulShare > 0 && luck.fouls().nextDouble() < foulShare) {
            card.foul();
            rack(Rack.FULL);
        } else {
            count(left);
        }
        if (frame < ScoreCard.FRAMES && card.frameComplete(frame)) {
            beginFrame(frame + 1);
        }
    }

    private void count(int left) {
        int fell = Integer.bitCount(standing) - Integer.bitCount(left);
        boolean enough = newRack && fell >= bowling.scoring().strikePins();
        card.roll(enough ? ScoreCard.PINS : fell);
        if (newRack && !enough && Splits.isSplit(left)) {
            card.markSplit();
        }
        rack(enough ? 0 : left);
    }

    /** The pins for the next ball, when a ball has left some. */
    private void rack(int left) {
        boolean frameOver = card.isComplete() || card.ballInFrame() == 1;
        newRack = frameOver || left == 0;
        standing = newRack ? Rack.FULL : left;
    }

    boolean frameComplete(int frame) {
        return card.frameComplete(frame);
    }

    /** Hands in the card of a finished game and takes a new one. */
    void handInCard() {
        scores.add(card.total());
        sheets.add(card.sheet());
        takeCard();
    }

    private void takeCard() {
        card = bowling.scoring().system().newCard();
        scatter = StrictMath.exp(bowler.level().formShare() * luck.form().sample());
    }

    /** His finished games (pins). */
    List<Integer> scores() {
        return List.copyOf(scores);
    }

    /** What he did, for the results. */
    BowlerResult result(String group, int firstGame) {
        return new BowlerResult(bowler, group, firstGame, scores, sheets, agent.ballChanges());
    }

    /** His balls' part of the oil account. */
    OilAccount account() {
        OilAccount sum = spareBall.oil.account();
        for (BallInPlay ball : strikeBalls) {
            sum = sum.plus(ball.oil.account());
        }
        return sum;
    }

    /** A ball, the oil on it, and when it was last thrown. */
    static final class BallInPlay {
        private final Contact contact;
        private final BallOil oil;
        private long lastMs;

        BallInPlay(Contact contact) {
            this.contact = contact;
            this.oil = contact.cleanBall();
        }

        Contact contact() {
            return contact;
        }

        /** Lets the cover soak and the bowler wipe, up to the moment of the throw. */
        BallOil readyAt(long timeMs) {
            oil.rest((timeMs - lastMs) / 1000.0);
            lastMs = timeMs;
            return oil;
        }
    }
}
