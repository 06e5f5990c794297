package lanetide.cli.preview;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.study.Playing;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;

/**
 * Readings of lanes under each set of values of a study, for each pattern that lies there, worked out when the first of
 * them is wanted.
 */
final class ReadingsUnderSets {
    private final Scenario scenario;
    private final Collection<Kind> kinds;
    private final List<OilPattern> patterns;
    private final Map<Integer, PlayModel> models = new ConcurrentHashMap<>();
    private final Map<Key, LaneReadings> ready = new ConcurrentHashMap<>();

    private record Key(int set, int pattern) {}

    /**
     * Nothing worked out yet.
     *
     * @param scenario the scenario
     * @param kinds the kinds of bowlers for whom lanes will be read
     */
    ReadingsUnderSets(Scenario scenario, Collection<Kind> kinds) {
        this.scenario = scenario;
        this.kinds = kinds;
        this.patterns = scenario.event().patterns();
    }

    /** Those of a squad's lane under the usual values, from which boards are told. */
    LaneReadings usual(int squad, int lane) {
        return ready(Playing.DEFAULT_SET, squad, lane, Optional.empty());
    }

    /** Those of a squad's lane under a set, by its number, or {@link Playing#DEFAULT_SET}. */
    LaneReadings under(int set, int squad, int lane) {
        return set == Playing.DEFAULT_SET
                ? usual(squad, lane)
                : ready(set, squad, lane, Optional.of(usual(squad, lane)));
    }

    private LaneReadings ready(int set, int squad, int lane, Optional<LaneReadings> usual) {
        PlayModel model = models.computeIfAbsent(
                set, number -> new PlayModel(scenario.event(), ValueSets.of(scenario.event(), number)));
        int pattern = patterns.indexOf(scenario.event().pattern(squad, lane));
        return ready.computeIfAbsent(
                new Key(set, pattern), key -> new LaneReadings(scenario, model, squad, lane, kinds, usual));
    }
}
