package lanetide.cli.options;

import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.output.CommandFailure;
import lanetide.squads.rotation.design.SearchObjective;

/** The weights of an objective by their names. */
public final class Weights {
    private static final double MAX = 1_000_000;

    private Weights() {}

    /** The usual weights, with those that are given in their place. */
    public static SearchObjective objective(Map<String, Double> given) {
        Map<String, Double> weights = usual();
        given.forEach((name, weight) -> {
            NamedOption.of("--weights", name, weights);
            if (!(weight >= 0 && weight <= MAX)) {
                throw CommandFailure.wrongUse("--weights has " + name + "=" + weight
                        + "; a weight must be from 0 to 1000000." + " Write 0 for what does not matter.");
            }
            weights.put(name, weight);
        });
        return new SearchObjective(
                weights.get("repeats"), weights.get("carry-over"), weights.get("wear"), weights.get("walking"));
    }

    private static Map<String, Double> usual() {
        SearchObjective usual = SearchObjective.DEFAULT;
        Map<String, Double> weights = new LinkedHashMap<>();
        weights.put("repeats", usual.repeat());
        weights.put("carry-over", usual.carryOver());
        weights.put("wear", usual.wear());
        weights.put("walking", usual.walk());
        return weights;
    }
}
