package lanetide.cli.scenario.key;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What the value of a key may be: its kind, its units and its limits. Readers, notices, the table of keys and the
 * schema all take them from here.
 *
 * @param <T> what a value becomes when it is read
 */
public sealed interface Form<T> {
    /**
     * Unit or form in words.
     *
     * @return for example {@code ft or m}
     */
    String inWords();

    /**
     * The limits in words.
     *
     * @return for example {@code from 19.7 ft to 58 ft}; empty if there are none beside the form
     */
    default String limits() {
        return "";
    }

    /**
     * Writes a value as a scenario would.
     *
     * @param value a value of this form
     * @return for example {@code 22 s}
     */
    default String write(T value) {
        return String.valueOf(value);
    }

    /**
     * A number with its unit.
     *
     * @param measure kind of quantity
     * @param inWords units it is usually written in, the first of them for limits and defaults
     * @param range limits in the measure's base unit
     * @param isWhole whether fractions make no sense
     * @param as makes the value from a number in the base unit
     */
    record Quantity<T extends Number>(
            Measure measure, String inWords, Range range, boolean isWhole, DoubleFunction<T> as) implements Form<T> {
        /**
         * The unit for limits and defaults.
         *
         * @return the first one named
         */
        public Unit unit() {
            return measure.unit(inWords.split("[ ,]", 2)[0].replace("n:", ":")).orElse(measure.usualUnit());
        }

        @Override
        public String limits() {
            return range.inWords(unit());
        }

        @Override
        public String write(T value) {
            return unit().write(Range.round(value.doubleValue() / unit().toBase()));
        }

        /**
         * The same quantity with limits that hang on other values.
         *
         * @param other its limits
         * @return the quantity
         */
        public Quantity<T> within(Range other) {
            return new Quantity<>(measure, inWords, other, isWhole, as);
        }
    }

    /** A quantity, or the word {@code none}. */
    record OrNone<T extends Number>(Quantity<T> quantity) implements Form<Optional<T>> {
        /** What stands for no quantity. */
        public static final String WORD = "none";

        @Override
        public String inWords() {
            return quantity.inWords() + ", or " + WORD;
        }

        @Override
        public String limits() {
            return quantity.limits() + ", or " + WORD;
        }
    }

    /**
     * A text.
     *
     * @param isName whether something refers to it, so that it must be short and plain
     */
    record Text(boolean isName) implements Form<String> {
        @Override
        public String inWords() {
            return "text";
        }

        @Override
        public String limits() {
            return "at most " + (isName ? TextRule.MAX_NAME : TextRule.MAX_TEXT) + " characters";
        }
    }

    /**
     * A name that always means the same.
     *
     * @param kind what it names
     * @param known what there is to choose from, in the order it is told in
     */
    record Choice<T>(String kind, Map<String, T> known) implements Form<T> {
        @Override
        public String inWords() {
            return "name";
        }

        @Override
        public String limits() {
            return String.join(", ", known.keySet());
        }

        @Override
        public String write(T value) {
            return known.keySet().stream()
                    .filter(name -> known.get(name).equals(value))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * A name of something that a scenario may define itself.
     *
     * @param kind what it names
     * @param limits the names there are in any scenario; empty if that hangs on it
     */
    record Name(String kind, String limits) implements Form<String> {
        @Override
        public String inWords() {
            return "name";
        }
    }

    /** A time of day, in milliseconds from midnight before the first day. */
    record Clock() implements Form<Long> {
        @Override
        public String inWords() {
            return "time of day";
        }
    }

    /**
     * A list.
     *
     * @param inWords the list in words
     * @param item what stands in it
     */
    record Each<T>(String inWords, Form<T> item) implements Form<List<T>> {
        @Override
        public String limits() {
            return item.limits();
        }
    }

    /** A quantity for each of some names. */
    record Shares<T>(Form<T> item) implements Form<Map<String, T>> {
        @Override
        public String inWords() {
            return item.inWords();
        }

        @Override
        public String limits() {
            return item.limits();
        }
    }

    /** What has a reader of its own. */
    enum Structure implements Form<Void> {
        /** Keys under a key. */
        BLOCK("block"),
        /** Blocks one below the other. */
        LIST("list"),
        /** A name alone, or a block. */
        NAME_OR_BLOCK("name or block"),
        /** A list, the name of a file that has it, or a block that names it. */
        LIST_OR_FILE("list, file name or block"),
        /** The name of a file, or a list of such names. */
        FILES("file name or list of them"),
        /** The name of a file. */
        FILE("file name"),
        /** The first and the last lane. */
        LANES("lane range"),
        /** Pairs of lanes. */
        PAIRS("list of pairs"),
        /** Some of the pairs of a centre. */
        SOME_PAIRS("lane range or list of pairs"),
        /** Some of the lanes of a centre. */
        SOME_LANES("lane range, list of lanes and pairs, or words"),
        /** Matches in rows, one row a round. */
        MATCHES("list of lists of matches"),
        /** Pairs of lanes in rows. */
        TABLE("list of lists");

        private final String inWords;

        Structure(String inWords) {
            this.inWords = inWords;
        }

        @Override
        public String inWords() {
            return inWords;
        }
    }

    /** A number with a unit between two limits in the measure's base unit. */
    static Quantity<Double> quantity(Measure measure, String units, Range range) {
        return new Quantity<>(measure, units, range, false, Double::valueOf);
    }

    /** A number without a unit. */
    static Quantity<Double> number(double low, double high) {
        return quantity(Measure.NUMBER, "number", Range.between(low, high));
    }

    /** A share. */
    static Quantity<Double> share(double low, double high) {
        return quantity(Measure.SHARE, "%", Range.between(low, high));
    }

    /** A length. */
    static Quantity<Double> length(String units, double lowM, double highM) {
        return quantity(Measure.LENGTH, units, Range.between(lowM, highM));
    }

    /** Boards. */
    static Quantity<Double> boards(double low, double high) {
        return quantity(Measure.BOARDS, "boards", Range.between(low, high));
    }

    /** A duration in whole milliseconds. */
    static Quantity<Long> time(String units, Range rangeMs) {
        return new Quantity<>(Measure.TIME, units, rangeMs, false, Math::round);
    }

    /** A duration in whole milliseconds, from none. */
    static Quantity<Long> time(String units, long highMs) {
        return time(units, Range.between(0, (double) highMs));
    }

    /** A whole number. */
    static Quantity<Integer> whole(int low, int high) {
        return count(Measure.NUMBER, "whole number", low, high);
    }

    /** A whole number of something. */
    static Quantity<Integer> count(Measure measure, String unit, int low, int high) {
        return new Quantity<>(measure, unit, Range.between(low, high), true, number -> (int) number);
    }
}
