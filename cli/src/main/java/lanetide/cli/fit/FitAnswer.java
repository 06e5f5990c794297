package lanetide.cli.fit;

import java.util.List;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fit.FitResult;

/**
 * What a fit was made of, and what came of it.
 *
 * @param reading the scenario that was named, with all that was measured
 * @param days the scenarios of all days, in the order in which they were fitted
 * @param result what came of it
 */
public record FitAnswer(Reading reading, List<Scenario> days, FitResult result) {
    /** Copies the list. */
    public FitAnswer {
        days = List.copyOf(days);
    }

    /**
     * The scenario that was named.
     *
     * @return the scenario
     */
    public Scenario scenario() {
        return reading.scenario().orElseThrow();
    }
}
