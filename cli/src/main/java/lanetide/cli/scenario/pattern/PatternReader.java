package lanetide.cli.scenario.pattern;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;

/**
 * Reads an oil pattern: by what its sheet states, or by tape readings.
 *
 * @param files opens what the scenario names
 */
public record PatternReader(NamedFiles files) {
    private static final List<Key<?>> SHEET_KEYS = List.of(
            PatternKeys.RATIO,
            PatternKeys.TAPER_FROM,
            PatternKeys.TAPER_TO,
            PatternKeys.DECAY,
            PatternKeys.FLOOR,
            PatternKeys.BUFF_FROM,
            PatternKeys.BUFF_TO,
            PatternKeys.LEFT_HALF);

    /** The first pattern, which names itself. */
    public Optional<OilPattern> read(Section section) {
        return section.find(PatternKeys.NAME).flatMap(name -> read(section, name));
    }

    /** A pattern of some name. */
    Optional<OilPattern> read(Section section, String name) {
        if (!section.has(PatternKeys.BY_TAPES)) {
            return SheetReader.read(section, name);
        }
        SHEET_KEYS.forEach(key -> section.value(key).ifPresent(PatternReader::besideTapes));
        return section.block(PatternKeys.BY_TAPES)
                .flatMap(tapes -> new TapesReader(files).read(tapes, section.find(PatternKeys.LENGTH)))
                .filter(table -> !section.notices().hasErrors())
                .flatMap(table -> TapedPattern.build(section, name, table));
    }

    /** The limits that sort patterns into bands and tiers: the scenario's own in place of the published ones. */
    public static Optional<PatternBands> bands(Section section) {
        return section.has(PatternKeys.OWN_BANDS)
                ? section.block(PatternKeys.OWN_BANDS).flatMap(PatternReader::ownBands)
                : Optional.of(PatternBands.PUBLISHED);
    }

    private static Optional<PatternBands> ownBands(Section section) {
        inOrder(section, PatternKeys.SHORT_TO, PatternKeys.LONG_FROM, false);
        inOrder(section, PatternKeys.LOW_BELOW, PatternKeys.HIGH_ABOVE, true);
        inOrder(section, PatternKeys.SPORT_TO, PatternKeys.HOUSE_FROM, false);
        return section.build(() -> new PatternBands(
                section.get(PatternKeys.SHORT_TO),
                section.get(PatternKeys.LONG_FROM),
                section.get(PatternKeys.LOW_BELOW),
                section.get(PatternKeys.HIGH_ABOVE),
                section.get(PatternKeys.SPORT_TO),
                section.get(PatternKeys.HOUSE_FROM)));
    }

    /** Holds two limits to their order, in the units in which they are written. */
    private static void inOrder(Section section, Key<Double> lower, Key<Double> upper, boolean mayBeAlike) {
        Optional<Double> low = section.find(lower);
        Optional<Double> high = section.find(upper);
        boolean wrong =
                low.isPresent() && high.isPresent() && (mayBeAlike ? low.get() > high.get() : low.get() >= high.get());
        if (wrong) {
            Key<Double> at = section.has(lower) ? lower : upper;
            section.refuse(
                    at,
                    NoticeCode.IMPOSSIBLE_COMBINATION,
                    ", and `" + lower.name() + "` (" + written(section, lower, low.get()) + ") must be "
                            + (mayBeAlike ? "at most" : "below") + " `" + upper.name() + "` ("
                            + written(section, upper, high.get()) + "); put the lower one first.");
        }
    }

    private static String written(Section section, Key<Double> key, double value) {
        return section.value(key)
                .map(Value::plain)
                .map(Notices::quote)
                .orElseGet(() -> key.form().write(value));
    }

    private static void besideTapes(Value value) {
        value.say(
                NoticeCode.CONFLICTING_KEYS,
                value.plain(),
                value.path() + (value.plain().isEmpty() ? "" : " (" + Notices.quote(value.plain()) + ")")
                        + " stands beside pattern.tapes, and the tapes already say it. Remove one of the two.");
    }
}
