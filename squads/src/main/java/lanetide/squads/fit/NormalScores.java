package lanetide.squads.fit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.unknown.PlayModel;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Values told by how far through their ranges they lie, as a standard normal law counts it, so that none leaves its
 * range.
 */
final class NormalScores {
    /** The unknown that names the law of friction, which is one or the other and cannot be moved. */
    static final String LAW = "friction-law";

    /** All others. */
    static final List<Unknown> MOVED = Stream.concat(
                    OilModel.UNKNOWNS.all().stream(), PlayModel.UNKNOWNS.all().stream())
            .filter(unknown -> !unknown.id().equals(LAW))
            .toList();

    /** Nearest to an end of the range that a value starts from (share of the range). */
    private static final double EDGE = 0.002;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private NormalScores() {}

    static double[] of(ValueSet set) {
        return MOVED.stream()
                .mapToDouble(unknown -> NORMAL.inverseCumulativeProbability(
                        Math.max(EDGE, Math.min(1 - EDGE, unknown.shareOf(set.of(unknown))))))
                .toArray();
    }

    /** A set with other values; its law, and what is drawn in it, stay. */
    static ValueSet moved(ValueSet set, double[] scores) {
        Map<String, Double> values = new TreeMap<>(set.values());
        for (int u = 0; u < scores.length; u++) {
            values.put(MOVED.get(u).id(), MOVED.get(u).at(NORMAL.cumulativeProbability(scores[u])));
        }
        return set.withValues(values);
    }

    static boolean hasOtherLaw(ValueSet set) {
        return set.values().getOrDefault(LAW, 0.0) >= 0.5;
    }
}
