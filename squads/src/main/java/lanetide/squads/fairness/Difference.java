package lanetide.squads.fairness;

import java.util.Optional;
import lanetide.des.stats.ConfidenceInterval;

/**
 * One thing that was compared.
 *
 * @param compared what it is
 * @param squad name of the squad of which it is; empty for the whole event
 * @param a mean in the first event
 * @param b mean in the second
 * @param difference second less first
 * @param ci95 interval of the difference, from playings with the same luck
 * @param p probability of so large a difference if there were none, made larger for the number of things compared
 *     (Holm)
 * @param isReal whether that is at most 5 %
 */
public record Difference(
        Compared compared,
        Optional<String> squad,
        double a,
        double b,
        double difference,
        ConfidenceInterval ci95,
        double p,
        boolean isReal) {}
