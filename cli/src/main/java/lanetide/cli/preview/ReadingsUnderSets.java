package lanetide.cli.preview;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.study.Playing;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;

/** Readings of lanes under each set of values of a study, worked out when the first of a set is wanted. */
final class ReadingsUnderSets {
    private final Scenario scenario;
    private final Collection<Kind> kinds;
    private final Map<Integer, LaneReadings> ready = new ConcurrentHashMap<>();

    /**
     * Nothing worked out yet.
     *
     * @param scenario the scenario
     * @param kinds the kinds of bowlers for whom lanes will be read
     */
    ReadingsUnderSets(Scenario scenario, Collection<Kind> kinds) {
        this.scenario = scenario;
        this.kinds = kinds;
    }

    /** Those under the usual values, from which boards are told. */
    LaneReadings usual() {
        return ready(Playing.DEFAULT_SET, Optional.empty());
    }

    /** Those under a set, by its number, or {@link Playing#DEFAULT_SET}. */
    LaneReadings under(int set) {
        return set == Playing.DEFAULT_SET ? usual() : ready(set, Optional.of(usual()));
    }

    private LaneReadings ready(int set, Optional<LaneReadings> usual) {
        return ready.computeIfAbsent(
                set,
                number -> new LaneReadings(
                        scenario,
                        new PlayModel(scenario.event(), ValueSets.of(scenario.event(), number)),
                        kinds,
                        usual));
    }
}
