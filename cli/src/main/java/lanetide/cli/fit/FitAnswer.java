package lanetide.cli.fit;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fit.FitResult;

/**
 * What a fit was made of, and what came of it.
 *
 * @param reading the scenario that was named, with all that was measured
 * @param days the scenarios of all days, in the order in which they were fitted
 * @param result what came of it
 * @param changes what it changes in what is said of the scenario that was named; empty if nobody asked
 */
public record FitAnswer(Reading reading, List<Scenario> days, FitResult result, Optional<FitChanges> changes) {
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
