package lanetide.des;

import java.util.List;

/**
 * Replications that were run until a {@link StoppingRule} was met or its cap reached.
 *
 * @param results in the order of the replications; the list cannot be changed
 * @param isNarrowEnough whether the rule was met
 * @param halfWidth half the width of the widest interval over these results
 * @param projected how many replications it will roughly take to meet the rule, or the number run if it is met
 */
public record StoppedRun<T>(List<T> results, boolean isNarrowEnough, double halfWidth, long projected) {}
