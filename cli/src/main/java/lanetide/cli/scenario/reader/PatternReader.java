package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;

/** Reads the oil pattern: by what its sheet states, or by tape readings. */
final class PatternReader {
    static final Range LENGTHS = Range.between(OilPattern.MIN_LENGTH_M, OilPattern.MAX_LENGTH_M);
    static final Range VOLUMES = Range.above(0, OilPattern.MAX_ML);

    private static final List<String> SHEET_KEYS =
            List.of("ratio", "taperFrom", "taperTo", "decay", "floor", "buffFrom", "buffTo", "left");

    private final Notices notices;
    private final Assumptions assumptions;
    private final NamedFiles files;

    PatternReader(Notices notices, Assumptions assumptions, NamedFiles files) {
        this.notices = notices;
        this.assumptions = assumptions;
        this.files = files;
    }

    Optional<OilPattern> read(Section section) {
        int before = notices.errors();
        String name = section.has("name") ? section.text("name") : Defaults.PATTERN_NAME;
        double lengthM = section.quantity("length", Measure.LENGTH, LENGTHS);
        Optional<Value> tapes = section.get("tapes");
        if (tapes.isEmpty()) {
            return new SheetReader(notices, assumptions).read(section, name, lengthM);
        }
        SHEET_KEYS.forEach(key -> section.get(key).ifPresent(PatternReader::besideTapes));
        OptionalDouble volumeMl = section.get("volume")
                .map(value -> value.quantity(Measure.VOLUME, VOLUMES))
                .orElse(OptionalDouble.empty());
        return new TapesReader(notices, assumptions, files)
                .read(tapes.get(), lengthM)
                .filter(table -> notices.errors() == before)
                .flatMap(table -> new TapedPattern(section, name, lengthM, table).build(volumeMl));
    }

    /** The limits that sort patterns into bands and tiers: the scenario's own in place of the published ones. */
    Optional<PatternBands> bands(Section section) {
        return section.has("bands")
                ? section.block("bands", Block.BANDS).flatMap(this::ownBands)
                : Optional.of(PatternBands.PUBLISHED);
    }

    private Optional<PatternBands> ownBands(Section section) {
        int before = notices.errors();
        Range ratios = Range.between(1, 100);
        double shortToM = band(section, "shortTo", Measure.LENGTH, LENGTHS, Defaults.SHORT_TO);
        double longFromM = band(section, "longFrom", Measure.LENGTH, LENGTHS, Defaults.LONG_FROM);
        double lowBelowMl = band(section, "lowBelow", Measure.VOLUME, VOLUMES, Defaults.LOW_BELOW);
        double highAboveMl = band(section, "highAbove", Measure.VOLUME, VOLUMES, Defaults.HIGH_ABOVE);
        double sportTo = band(section, "sportTo", Measure.RATIO, ratios, Defaults.SPORT_TO);
        double houseFrom = band(section, "houseFrom", Measure.RATIO, ratios, Defaults.HOUSE_FROM);
        return section.build(
                before, () -> new PatternBands(shortToM, longFromM, lowBelowMl, highAboveMl, sportTo, houseFrom));
    }

    private double band(Section section, String key, Measure measure, Range range, Default otherwise) {
        return section.quantity(key, measure, range, otherwise, assumptions);
    }

    private static void besideTapes(Value value) {
        value.say(
                NoticeCode.CONFLICTING_KEYS,
                value.plain(),
                value.path() + (value.plain().isEmpty() ? "" : " (" + Notices.quote(value.plain()) + ")")
                        + " stands beside pattern.tapes, and the tapes already say it. Remove one of the two.");
    }
}
