package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.AcrossShape;
import lanetide.oilflow.film.AlongShape;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.LaneGeometry;

/** Reads a pattern by what its sheet states. */
final class SheetReader {
    private static final double MIN_RISE_BOARDS = 0.5;

    /** Shorter, and the buffed part is lost between two rows of the film. */
    private static final double MIN_BUFF_M = LaneGeometry.FOOT_M;

    private SheetReader() {}

    static Optional<OilPattern> read(Section section) {
        // Without tapes the sheet must state them.
        section.require(PatternKeys.VOLUME);
        section.require(PatternKeys.RATIO);
        Optional<Double> ratio = section.find(PatternKeys.RATIO);
        Optional<Double> from = section.find(PatternKeys.TAPER_FROM);
        Optional<Double> to = section.find(PatternKeys.TAPER_TO);
        Optional<AcrossShape> right = across(
                section, List.of(PatternKeys.RATIO, PatternKeys.TAPER_FROM, PatternKeys.TAPER_TO), ratio, from, to);
        Optional<AcrossShape> left = section.has(PatternKeys.LEFT_HALF)
                ? section.block(PatternKeys.LEFT_HALF).flatMap(half -> left(half, ratio, from, to))
                : right;
        Optional<AlongShape> along = along(section);
        return section.build(() -> new SheetPattern(
                section.get(PatternKeys.NAME),
                section.get(PatternKeys.LENGTH),
                section.get(PatternKeys.VOLUME),
                right.orElseThrow(),
                left.orElseThrow(),
                along.orElseThrow()));
    }

    /** The left half; what it does not say is as on the right. */
    private static Optional<AcrossShape> left(
            Section half, Optional<Double> ratio, Optional<Double> from, Optional<Double> to) {
        return across(
                half,
                List.of(PatternKeys.LEFT_RATIO, PatternKeys.LEFT_TAPER_FROM, PatternKeys.LEFT_TAPER_TO),
                half.has(PatternKeys.LEFT_RATIO) ? half.find(PatternKeys.LEFT_RATIO) : ratio,
                half.has(PatternKeys.LEFT_TAPER_FROM) ? half.find(PatternKeys.LEFT_TAPER_FROM) : from,
                half.has(PatternKeys.LEFT_TAPER_TO) ? half.find(PatternKeys.LEFT_TAPER_TO) : to);
    }

    /** One half, of the section's keys for ratio and both ends of the taper. */
    private static Optional<AcrossShape> across(
            Section section,
            List<Key<Double>> keys,
            Optional<Double> ratio,
            Optional<Double> from,
            Optional<Double> to) {
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (to.get() < from.get() + MIN_RISE_BOARDS) {
            firstOf(section, List.of(keys.get(2), keys.get(1)))
                    .ifPresent(value -> taperBackwards(value, from.get(), to.get()));
            return Optional.empty();
        }
        try {
            return ratio.map(stated -> new AcrossShape(stated, from.get(), to.get()));
        } catch (IllegalArgumentException e) {
            firstOf(section, keys)
                    .ifPresent(value -> value.refuse(
                            NoticeCode.TAPER_CANNOT_GIVE_RATIO,
                            ", and ratio and taper do not go together: " + e.getMessage() + "."));
            return Optional.empty();
        }
    }

    private static Optional<AlongShape> along(Section section) {
        Optional<Double> lengthM = section.find(PatternKeys.LENGTH);
        Optional<Double> decay = section.find(PatternKeys.DECAY);
        Optional<Double> floor = section.find(PatternKeys.FLOOR);
        if (!section.has(PatternKeys.BUFF_FROM)) {
            section.value(PatternKeys.BUFF_TO).ifPresent(SheetReader::buffWithoutStart);
            return section.build(
                    () -> AlongShape.unbuffed(decay.orElseThrow(), floor.orElseThrow(), lengthM.orElseThrow()));
        }
        Optional<Double> fromM = section.find(PatternKeys.BUFF_FROM);
        Optional<Double> to = section.find(PatternKeys.BUFF_TO);
        if (fromM.isPresent() && lengthM.isPresent() && fromM.get() > lengthM.get() - MIN_BUFF_M) {
            section.value(PatternKeys.BUFF_FROM).ifPresent(value -> buffTooLate(value, lengthM.get()));
        }
        if (to.isPresent() && floor.isPresent() && to.get() > floor.get()) {
            firstOf(section, List.of(PatternKeys.BUFF_TO, PatternKeys.FLOOR))
                    .ifPresent(value -> buffRises(value, floor.get(), to.get()));
        }
        return section.build(
                () -> new AlongShape(decay.orElseThrow(), floor.orElseThrow(), fromM.orElseThrow(), to.orElseThrow()));
    }

    private static Optional<Value> firstOf(Section section, List<Key<Double>> keys) {
        return keys.stream().flatMap(key -> section.value(key).stream()).findFirst();
    }

    private static void taperBackwards(Value value, double from, double to) {
        value.refuse(
                NoticeCode.IMPOSSIBLE_COMBINATION,
                "; taperTo (" + Range.round(to) + ") must lie at least half a board above taperFrom ("
                        + Range.round(from) + "). Typical: 5 boards and 14 boards.");
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
