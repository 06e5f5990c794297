package lanetide.squads.score;

/**
 * A game scored frame by frame: a strike counts 30, a spare 10 and the pins of its own first ball, an open frame its
 * pins; no frame waits for another, and the tenth has no further balls. Ten strikes make 300. Source: World Bowling's
 * current-frame scoring, from memory.
 */
public final class CurrentFrameScore extends ScoreCard {
    private static final int STRIKE = 30;

    /** A card before the first ball. */
    public CurrentFrameScore() {}

    @Override
    boolean hasEnded(int first, int bowled, boolean cleared, boolean last) {
        return bowled == 2 || cleared;
    }

    @Override
    boolean isDecided(int first) {
        return true;
    }

    @Override
    int scoreSoFar(int first) {
        if (pins(first) == PINS) {
            return STRIKE;
        }
        boolean second = first + 1 < ballCount();
        int both = pins(first) + (second ? pins(first + 1) : 0);
        return both == PINS ? PINS + pins(first) : both;
    }
}
