package lanetide.cli.scenario.pattern;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
import lanetide.oilflow.film.UsualTaper;
import lanetide.oilflow.lane.LaneGeometry;

/** Reads a pattern by what its sheet states. */
final class SheetReader {
    private static final double MIN_RISE_BOARDS = 0.5;

    /** Shorter, and the buffed part is lost between two rows of the film. */
    private static final double MIN_BUFF_M = LaneGeometry.FOOT_M;

    private static final List<Key<Double>> RIGHT_KEYS =
            List.of(PatternKeys.RATIO, PatternKeys.TAPER_FROM, PatternKeys.TAPER_TO);
    private static final List<Key<Double>> LEFT_KEYS =
            List.of(PatternKeys.LEFT_RATIO, PatternKeys.LEFT_TAPER_FROM, PatternKeys.LEFT_TAPER_TO);

    private SheetReader() {}

    static Optional<OilPattern> read(Section section, String name) {
        // Without tapes the sheet must state them.
        section.require(PatternKeys.VOLUME);
        section.require(PatternKeys.RATIO);
        Optional<Double> lengthM = section.find(PatternKeys.LENGTH);
        Half right = new Half(
                section.find(PatternKeys.RATIO),
                stated(section, PatternKeys.TAPER_FROM),
                stated(section, PatternKeys.TAPER_TO));
        Optional<AcrossShape> acrossRight = across(section, RIGHT_KEYS, right, lengthM);
        Optional<AcrossShape> acrossLeft = section.has(PatternKeys.LEFT_HALF)
                ? section.block(PatternKeys.LEFT_HALF)
                        .flatMap(block -> across(block, LEFT_KEYS, left(block, right), lengthM))
                : acrossRight;
        Optional<AlongShape> along = along(section);
        return section.build(() -> new SheetPattern(
                name,
                section.get(PatternKeys.LENGTH),
                section.get(PatternKeys.VOLUME),
                acrossRight.orElseThrow(),
                acrossLeft.orElseThrow(),
                along.orElseThrow()));
    }

    /** A value that may have been left out, or written and not be understood. */
    private record Stated(boolean isWritten, Optional<Double> value) {}

    /** What a sheet says of one half. */
    private record Half(Optional<Double> ratio, Stated taperFrom, Stated taperTo) {}

    private static Stated stated(Section section, Key<Double> key) {
        return new Stated(section.has(key), section.find(key));
    }

    /** The left half; what it does not say is as on the right. */
    private static Half left(Section block, Half right) {
        Stated from = stated(block, PatternKeys.LEFT_TAPER_FROM);
        Stated to = stated(block, PatternKeys.LEFT_TAPER_TO);
        return new Half(
                block.has(PatternKeys.LEFT_RATIO) ? block.find(PatternKeys.LEFT_RATIO) : right.ratio(),
                from.isWritten() ? from : right.taperFrom(),
                to.isWritten() ? to : right.taperTo());
    }

    /** One half, of the section's keys for ratio and both ends of the taper. */
    private static Optional<AcrossShape> across(
            Section section, List<Key<Double>> keys, Half half, Optional<Double> lengthM) {
        Optional<Double> ratio = half.ratio();
        Optional<Double> from = taper(
                section,
                keys.get(1),
                half.taperFrom(),
                lengthM,
                endM -> ratio.map(stated -> UsualTaper.fromBoard(stated, endM)));
        Optional<Double> to = taper(
                section,
                keys.get(2),
                half.taperTo(),
                from,
                start -> ratio.map(
                        stated -> Math.min(AcrossShape.MAX_TAPER_TO_BOARD, start + UsualTaper.boards(stated))));
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

    /** One end of the taper as it is stated, else as is usual, which answers then say. */
    private static Optional<Double> taper(
            Section section,
            Key<Double> key,
            Stated stated,
            Optional<Double> known,
            Function<Double, Optional<Double>> usual) {
        if (stated.isWritten()) {
            return stated.value();
        }
        Optional<Double> board = known.flatMap(usual);
        board.ifPresent(value -> section.assume(key, key.form().write(value), "by ratio and length"));
        return board;
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
