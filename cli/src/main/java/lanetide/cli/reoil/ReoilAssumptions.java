package lanetide.cli.reoil;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;

/** What the answer of {@code reoil} rests on. */
final class ReoilAssumptions {
    private ReoilAssumptions() {}

    /** What things cost, and what the entries do not say. */
    static List<Assumption> of(Scenario scenario) {
        return Stream.concat(scenario.policy().assumptions().stream(), scenario.ofEntries().stream())
                .toList();
    }
}
