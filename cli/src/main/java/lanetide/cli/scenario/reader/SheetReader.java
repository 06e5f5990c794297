package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.AcrossShape;
import lanetide.oilflow.film.AlongShape;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.LaneGeometry;

/** Reads a pattern by what its sheet states. */
final class SheetReader {
    private static final Range RATIOS = Range.between(1, 14);
    private static final Range STARTS = Range.between(2, 12);
    private static final Range ENDS = Range.between(2.5, 17);
    private static final Range SHARES = Range.between(0, 1);
    private static final double LEAST_RISE_BOARDS = 0.5;

    /** Shorter, and the buffed part is lost between two rows of the film. */
    private static final double LEAST_BUFF_M = LaneGeometry.FOOT_M;

    private final Notices notices;
    private final Assumptions assumptions;

    SheetReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<OilPattern> read(Section section, String name, double lengthM) {
        double volumeMl = section.quantity("volume", Measure.VOLUME, PatternReader.VOLUMES);
        double ratio = section.quantity("ratio", Measure.RATIO, RATIOS);
        double from = optional(section, "taperFrom", Measure.BOARDS, STARTS, Defaults.TAPER_FROM);
        double to = optional(section, "taperTo", Measure.BOARDS, ENDS, Defaults.TAPER_TO);
        Optional<AcrossShape> right = across(section, ratio, from, to);
        Optional<AcrossShape> left = section.has("left")
                ? section.block("left", Block.LEFT).flatMap(block -> left(block, ratio, from, to))
                : right;
        Optional<AlongShape> along = along(section, lengthM);
        return name.isEmpty()
                        || right.isEmpty()
                        || left.isEmpty()
                        || along.isEmpty()
                        || Double.isNaN(lengthM + volumeMl)
                ? Optional.empty()
                : Optional.of(new SheetPattern(name, lengthM, volumeMl, right.get(), left.get(), along.get()));
    }

    /** The left half; what it does not say is as on the right. */
    private Optional<AcrossShape> left(Section block, double ratio, double from, double to) {
        return across(
                block,
                block.has("ratio") ? block.quantity("ratio", Measure.RATIO, RATIOS) : ratio,
                block.has("taperFrom") ? block.quantity("taperFrom", Measure.BOARDS, STARTS) : from,
                block.has("taperTo") ? block.quantity("taperTo", Measure.BOARDS, ENDS) : to);
    }

    private static Optional<AcrossShape> across(Section section, double ratio, double from, double to) {
        if (to < from + LEAST_RISE_BOARDS) {
            taperBackwards(section, from, to);
            return Optional.empty();
        }
        if (Double.isNaN(ratio + from + to)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new AcrossShape(ratio, from, to));
        } catch (IllegalArgumentException e) {
            firstOf(section, "ratio", "taperFrom", "taperTo")
                    .ifPresent(value -> value.refuse(
                            NoticeCode.TAPER_CANNOT_GIVE_RATIO,
                            ", and ratio and taper do not go together: " + e.getMessage() + "."));
            return Optional.empty();
        }
    }

    private Optional<AlongShape> along(Section section, double lengthM) {
        int before = notices.errors();
        double decay = optional(section, "decay", Measure.NUMBER, Range.between(0, 6), Defaults.DECAY);
        double floor = optional(section, "floor", Measure.SHARE, SHARES, Defaults.FLOOR);
        if (!section.has("buffFrom")) {
            section.get("buffTo").ifPresent(SheetReader::buffWithoutStart);
            return notices.errors() > before || Double.isNaN(lengthM)
                    ? Optional.empty()
                    : Optional.of(AlongShape.unbuffed(decay, floor, lengthM));
        }
        double fromM = section.quantity("buffFrom", Measure.LENGTH, Range.between(3, OilPattern.MAX_LENGTH_M));
        double to = optional(section, "buffTo", Measure.SHARE, SHARES, Defaults.BUFF_TO);
        if (fromM > lengthM - LEAST_BUFF_M) {
            section.get("buffFrom").ifPresent(value -> buffTooLate(value, lengthM));
        }
        if (to > floor) {
            firstOf(section, "buffTo", "floor").ifPresent(value -> buffRises(value, floor, to));
        }
        return notices.errors() > before || Double.isNaN(lengthM)
                ? Optional.empty()
                : Optional.of(new AlongShape(decay, floor, fromM, to));
    }

    private double optional(Section section, String key, Measure measure, Range range, Default otherwise) {
        return section.quantity(key, measure, range, otherwise, assumptions);
    }

    private static Optional<Value> firstOf(Section section, String... keys) {
        for (String key : keys) {
            if (section.has(key)) {
                return section.get(key);
            }
        }
        return Optional.empty();
    }

    private static void taperBackwards(Section section, double from, double to) {
        firstOf(section, "taperTo", "taperFrom")
                .ifPresent(value -> value.refuse(
                        NoticeCode.IMPOSSIBLE_COMBINATION,
                        "; taperTo (" + Range.round(to) + ") must lie at least half a board above taperFrom ("
                                + Range.round(from) + "). Typical: 5 boards and 14 boards."));
    }

    private static void buffWithoutStart(Value value) {
        value.refuse(
                NoticeCode.IMPOSSIBLE_COMBINATION,
                ", but nothing says where the buffed part begins. Add `buffFrom:`, or remove this line.");
    }

    private static void buffTooLate(Value value, double lengthM) {
        value.refuse(
                NoticeCode.IMPOSSIBLE_COMBINATION,
                "; the buffed part must begin at least 1 ft before the pattern ends at "
                        + Range.round(lengthM / LaneGeometry.FOOT_M) + " ft. Leave it out if nothing is buffed.");
    }

    private static void buffRises(Value value, double floor, double to) {
        value.refuse(
                NoticeCode.IMPOSSIBLE_COMBINATION,
                "; buffed oil cannot grow thicker, so buffTo (" + Range.round(100 * to) + " %) must be at most floor ("
                        + Range.round(100 * floor) + " %).");
    }
}
