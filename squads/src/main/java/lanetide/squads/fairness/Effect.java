package lanetide.squads.fairness;

import lanetide.des.stats.ConfidenceInterval;

/**
 * What one class of seats or bowlers gains.
 *
 * @param kind what the advantage goes with
 * @param id name of the class: {@code A}, {@code 7-8}, {@code A/3}, {@code left}, {@code power}
 * @param bowlers bowlers of the class in a playing
 * @param advantagePins expected advantage over the field (pins a game); the advantages of a kind add up to zero over
 *     the bowlers
 * @param standardErrorPins standard error of that (pins a game), with luck and what is not known
 * @param ci90 its interval, with luck and what is not known
 * @param luck90 its interval with the luck of play alone
 * @param signShare share of the sets of values in which the advantage has the sign it has here, luck taken out; 1 with
 *     a single set
 * @param unfairP probability of so large an advantage if the true one were just the margin, made larger for the number
 *     of advantages looked at (Holm)
 * @param verdict what may be said
 */
public record Effect(
        EffectKind kind,
        String id,
        int bowlers,
        double advantagePins,
        double standardErrorPins,
        ConfidenceInterval ci90,
        ConfidenceInterval luck90,
        double signShare,
        double unfairP,
        Verdict verdict) {}
