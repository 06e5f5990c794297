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
 * @param signShare share of the sets of values in which it has this sign, luck taken out; 1 if all were as usual and
 *     there is a difference
 * @param known whether it is real, and if not, why
 */
public record Difference(
        Compared compared,
        Optional<String> squad,
        double a,
        double b,
        double difference,
        ConfidenceInterval ci95,
        double p,
        double signShare,
        Known known) {
    /** Whether a difference is known to be there. */
    public enum Known {
        /** Its probability if there were none is at most 5 %. */
        REAL,
        /** Luck hides it: more playings could show it. */
        HIDDEN,
        /** It hangs on what is not known: no number of playings would show it. */
        HANGS,
        /** Both events are alike in it, playing by playing. */
        NONE
    }

    /**
     * Whether it is real.
     *
     * @return true if chance alone would show one as large in at most one comparison of twenty
     */
    public boolean isReal() {
        return known == Known.REAL;
    }
}
