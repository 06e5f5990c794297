package lanetide.cli.scenario.reader;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.pattern.LanePatternsReader;
import lanetide.cli.scenario.pattern.NamedPatterns;
import lanetide.cli.scenario.value.Section;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LanePatterns;

/**
 * Reads which pattern each squad finds on which of its lanes: its own, else the event's; and where nothing is oiled
 * before it, what was laid there last.
 */
final class SquadPatterns {
    private final NamedPatterns patterns;
    private final Optional<OilPattern> first;
    private final Map<Integer, OilPattern> ofEvent;
    private final Map<Integer, OilPattern> laid = new HashMap<>();

    /**
     * What all squads have in common.
     *
     * @param scenario the whole file
     * @param lanes the lanes of the centre
     * @param patterns the patterns there are
     * @param first the first of them; empty if it is wrong
     */
    SquadPatterns(Section scenario, Lanes lanes, NamedPatterns patterns, Optional<OilPattern> first) {
        this.patterns = patterns;
        this.first = first;
        this.ofEvent = new LanePatternsReader(patterns, lanes, "the lanes of the centre")
                .read(scenario, EventKeys.LANE_PATTERNS);
    }

    /** What the squads find, in their order; empty where something is wrong. */
    List<Optional<LanePatterns>> read(List<SquadDraft> squads) {
        return squads.stream().map(this::read).toList();
    }

    private Optional<LanePatterns> read(SquadDraft squad) {
        Section section = squad.section();
        boolean isOiled = squad.conditioning().map(Conditioning::laysOil).orElse(true);
        if (!isOiled) {
            refuse(section, EventKeys.SQUAD_PATTERN);
            refuse(section, EventKeys.SQUAD_LANE_PATTERNS);
        }
        Optional<OilPattern> base =
                section.has(EventKeys.SQUAD_PATTERN) ? patterns.find(section, EventKeys.SQUAD_PATTERN) : first;
        Map<Integer, OilPattern> others = others(squad);
        List<Integer> lanes = squad.lanes().pairs().stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .toList();
        if (isOiled && base.isPresent()) {
            lanes.forEach(lane -> laid.put(lane, others.getOrDefault(lane, base.get())));
            patterns.laid(lanes.stream().map(laid::get).distinct().toList());
        }
        return lanes.isEmpty() || !laid.keySet().containsAll(lanes)
                ? Optional.empty()
                : Optional.of(LanePatterns.of(lanes.stream().collect(Collectors.toMap(lane -> lane, laid::get))));
    }

    /** Its own, or the event's, which a pattern of its own for all lanes replaces. */
    private Map<Integer, OilPattern> others(SquadDraft squad) {
        Section section = squad.section();
        if (section.has(EventKeys.SQUAD_LANE_PATTERNS)) {
            return new LanePatternsReader(patterns, squad.lanes(), "the lanes of squad " + squad.called())
                    .read(section, EventKeys.SQUAD_LANE_PATTERNS);
        }
        return section.has(EventKeys.SQUAD_PATTERN) ? Map.of() : ofEvent;
    }

    private static void refuse(Section section, Key<?> key) {
        section.refuse(
                key,
                NoticeCode.PATTERN_NEVER_LAID,
                ", but nothing is oiled before this squad, so that the pattern is never laid. Write `oil: fresh` or `oil:"
                        + " over`, or remove `" + key.name() + "`.");
    }
}
