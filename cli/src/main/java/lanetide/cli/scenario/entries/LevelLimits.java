package lanetide.cli.scenario.entries;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;

/**
 * The level that an average tells.
 *
 * @param fromPins each level by the smallest average (pins) it is told from; who is below all is of the lowest
 * @param source where the limits come from
 */
public record LevelLimits(NavigableMap<Integer, Level> fromPins, String source) {
    private static final String PUBLISHED = "O'Keefe, US Bowler, July 2012";

    /** Copies the map. */
    public LevelLimits {
        fromPins = Collections.unmodifiableNavigableMap(new TreeMap<>(fromPins));
    }

    /** The scenario's own limits, or the published ones where it has none or, with notices, has them wrong. */
    public static LevelLimits read(Section scenario, Names names) {
        return scenario.value(EventKeys.BOWLERS)
                .filter(Value::isBlock)
                .flatMap(bowlers -> bowlers.child(BowlerKeys.LEVEL_FROM))
                .flatMap(written -> own(written, names))
                .orElseGet(() -> published(names));
    }

    private static LevelLimits published(Names names) {
        NavigableMap<Integer, Level> fromPins = new TreeMap<>();
        Levels.idsFromAverage()
                .forEach((pins, id) -> fromPins.put(pins, names.levels().get(id)));
        return new LevelLimits(fromPins, PUBLISHED);
    }

    private static Optional<LevelLimits> own(Value written, Names names) {
        Optional<Map<String, NamedValue>> named = written.named();
        if (named.isEmpty()) {
            return Optional.empty();
        }
        NavigableMap<Integer, Level> fromPins = new TreeMap<>();
        for (NamedValue each : named.get().values()) {
            Optional<Level> level = each.oneOf(names.levels(), "level");
            Optional<Integer> pins = each.value().read(BowlerKeys.AVERAGE.form());
            if (level.isPresent() && pins.isPresent() && fromPins.putIfAbsent(pins.get(), level.get()) != null) {
                each.value()
                        .refuse(
                                NoticeCode.IMPOSSIBLE_COMBINATION,
                                ", from which another level is told too; each level must begin at an average of its own.");
            }
        }
        if (named.get().isEmpty()) {
            written.refuse(
                    NoticeCode.EMPTY_VALUE,
                    " without a level; there must be at least one. Typical: " + BowlerKeys.LEVEL_FROM.typical() + ".");
        }
        return Optional.of(fromPins).filter(all -> !all.isEmpty()).map(all -> new LevelLimits(all, "the scenario"));
    }

    /** The level of a bowler with an average (pins). */
    Level of(int pins) {
        return Optional.ofNullable(fromPins.floorEntry(pins))
                .orElseGet(fromPins::firstEntry)
                .getValue();
    }

    /** The limits, highest first, such as {@code elite from 220 pins, scratch from 200 pins, else league}. */
    String inWords() {
        String above = fromPins.tailMap(fromPins.firstKey(), false).descendingMap().entrySet().stream()
                .map(limit -> limit.getValue().id() + " from " + limit.getKey() + " pins, ")
                .collect(Collectors.joining());
        return above
                + (above.isEmpty() ? "" : "else ")
                + fromPins.firstEntry().getValue().id();
    }
}
