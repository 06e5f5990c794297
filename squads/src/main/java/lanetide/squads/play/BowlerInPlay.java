package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.model.Bowler;
import lanetide.squads.score.TenpinScore;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** A bowler during the event: his balls, his luck, his scores and what he has learnt. */
final class BowlerInPlay {
    private final Bowler bowler;
    private final Player player;
    private final BowlerAgent agent;
    private final BallInPlay strikeBall;
    private final BallInPlay spareBall;
    private final NormalizedGaussianSampler releaseLuck;
    private final NormalizedGaussianSampler sightLuck;
    private final UniformRandomProvider pinLuck;
    private final List<Integer> scores = new ArrayList<>();
    private TenpinScore card = new TenpinScore();
    private int standing = Rack.FULL;

    BowlerInPlay(Bowler bowler, Player player, Contact spareContact, Line start, String key, RandomStreams streams) {
        this.bowler = bowler;
        this.player = player;
        this.agent = new BowlerAgent(bowler.level().adaptation(), start);
        this.strikeBall = new BallInPlay(player.contact());
        this.spareBall = new BallInPlay(spareContact);
        this.releaseLuck = ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/release"));
        this.sightLuck = ZigguratSampler.NormalizedGaussian.of(streams.stream(key + "/sight"));
        this.pinLuck = streams.stream(key + "/pins");
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

    BallInPlay strikeBall() {
        return strikeBall;
    }

    BallInPlay spareBall() {
        return spareBall;
    }

    NormalizedGaussianSampler releaseLuck() {
        return releaseLuck;
    }

    NormalizedGaussianSampler sightLuck() {
        return sightLuck;
    }

    UniformRandomProvider pinLuck() {
        return pinLuck;
    }

    /** Pins that stand before his next ball. */
    int standing() {
        return standing;
    }

    /** Scores a ball of the game. */
    void score(int left) {
        card.roll(Integer.bitCount(standing) - Integer.bitCount(left));
        boolean freshRack = card.isComplete() || card.pinsStanding() == TenpinScore.PINS;
        standing = freshRack ? Rack.FULL : left;
    }

    boolean frameComplete(int frame) {
        return card.frameComplete(frame);
    }

    /** Hands in the card of a finished game and takes a new one. */
    void handInCard() {
        scores.add(card.total());
        card = new TenpinScore();
    }

    List<Integer> scores() {
        return scores;
    }

    /** His balls' part of the oil account. */
    OilAccount account() {
        return strikeBall.oil.account().plus(spareBall.oil.account());
    }

    /** A ball, the oil on it, and when it was last thrown. */
    static final class BallInPlay {
        private final Contact contact;
        private final BallOil oil;
        private long lastMs;

        BallInPlay(Contact contact) {
            this.contact = contact;
            this.oil = new BallOil(contact.ball().cover(), BallOil.USUAL_WIPED_SHARE);
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
