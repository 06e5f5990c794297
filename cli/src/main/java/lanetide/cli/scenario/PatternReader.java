package lanetide.cli.scenario;

import java.util.Optional;
import lanetide.oilflow.film.OilPattern;

/** Reads the oil pattern. */
final class PatternReader {
    private static final double LEAST_RISE_BOARDS = 0.5;

    private final Notices notices;
    private final Assumptions assumptions;

    PatternReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<OilPattern> read(Section section) {
        int before = notices.errors();
        String name = section.has("name") ? section.text("name") : Defaults.PATTERN_NAME;
        double lengthM = section.quantity("length", Measure.LENGTH, Range.between(6, 17.7));
        double volumeMl = section.quantity("volume", Measure.VOLUME, Range.above(0, 60));
        double ratio = section.quantity("ratio", Measure.RATIO, Range.between(1, 14));
        double from = optional(section, "taperFrom", Measure.BOARDS, Range.between(2, 12), Defaults.TAPER_FROM);
        double to = optional(section, "taperTo", Measure.BOARDS, Range.between(2.5, 17), Defaults.TAPER_TO);
        double decay = optional(section, "decay", Measure.NUMBER, Range.between(0, 6), Defaults.DECAY);
        double floor = optional(section, "floor", Measure.SHARE, Range.between(0, 1), Defaults.FLOOR);
        if (to < from + LEAST_RISE_BOARDS) {
            taperBackwards(section, from, to);
        }
        if (notices.errors() > before) {
            return Optional.empty();
        }
        try {
            return Optional.of(new OilPattern(name, lengthM, volumeMl, ratio, from, to, decay, floor));
        } catch (IllegalArgumentException e) {
            section.get("ratio").ifPresent(value -> impossibleRatio(value, e.getMessage()));
            return Optional.empty();
        }
    }

    private double optional(Section section, String key, Measure measure, Range range, Default otherwise) {
        return section.quantity(key, measure, range, otherwise, assumptions);
    }

    private void taperBackwards(Section section, double from, double to) {
        Optional<Value> at = section.get("taperTo").or(() -> section.get("taperFrom"));
        at.ifPresent(value -> value.refuse(
                NoticeCode.IMPOSSIBLE_COMBINATION,
                "; taperTo (" + Range.round(to) + ") must lie at least half a board above taperFrom ("
                        + Range.round(from) + "). Typical: 5 boards and 14 boards."));
    }

    private static void impossibleRatio(Value ratio, String reason) {
        ratio.refuse(NoticeCode.TAPER_CANNOT_GIVE_RATIO, ", which this taper cannot give: " + reason + ".");
    }
}
