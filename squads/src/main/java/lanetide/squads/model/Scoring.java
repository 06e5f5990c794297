package lanetide.squads.model;

import lanetide.oilflow.Require;
import lanetide.squads.score.ScoreCard;
import lanetide.squads.score.ScoringSystem;

/**
 * How an event is scored.
 *
 * @param system what a frame counts
 * @param strikePins pins of a ball at a new rack that count as a strike, 1 to 10; fewer than ten is a no-tap game
 * @param foulShare share of balls that are fouls, 0 to 0.2
 */
public record Scoring(ScoringSystem system, int strikePins, double foulShare) {
    /** By the rules, and nobody steps over the line. */
    public static final Scoring USUAL = new Scoring(ScoringSystem.TRADITIONAL, ScoreCard.PINS, 0);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Scoring {
        Require.inRange(strikePins, "pins that count as a strike", 1, ScoreCard.PINS);
        Require.inRange(foulShare, "share of fouls", 0, 0.2);
    }
}
