package lanetide.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what an answer rests on and the scenario does not state. */
final class Assumptions {
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    void add(String name, Default taken) {
        add(name, taken.text(), taken.source());
    }

    void add(String name, String value, String source) {
        assumptions.add(new Assumption(name, value, source));
    }

    List<Assumption> list() {
        return new ArrayList<>(assumptions);
    }
}
