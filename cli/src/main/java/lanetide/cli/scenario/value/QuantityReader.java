package lanetide.cli.scenario.value;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.key.Unit;
import lanetide.cli.scenario.notice.NoticeCode;

/** Reads a number with its unit. Whatever is wrong is said in the unit it was written in. */
public final class QuantityReader {
    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final Pattern PARTS = Pattern.compile("(?:" + NUMBER + "\\s*[a-z]+\\s+)+" + NUMBER + "\\s*[a-z]+");
    private static final Pattern PART = Pattern.compile("(" + NUMBER + ")\\s*([a-z]+)");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?\\.?(?:nan|inf|infinity|\u221e)\\b.*");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+(?:\\D.*)?");

    /** No quantity is longer, and a pattern match on a long text would take long. */
    private static final int LONGEST = 60;

    private final Value value;
    private final Measure measure;
    private final Range range;

    public QuantityReader(Value value, Measure measure, Range range) {
        this.value = value;
        this.measure = measure;
        this.range = range;
    }

    /** The quantity in its base unit. */
    public OptionalDouble read(String text) {
        if (text.length() > LONGEST) {
            return refuse(NoticeCode.NOT_A_NUMBER, "; it must be a number" + withUnit() + ".");
        }
        if (NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            return refuse(NoticeCode.NOT_FINITE, "; it must be a finite number.");
        }
        if (measure == Measure.TIME && PARTS.matcher(text).matches()) {
            return parts(text);
        }
        Matcher matcher = QUANTITY.matcher(text);
        if (DECIMAL_COMMA.matcher(text).matches()) {
            return refuse(NoticeCode.NOT_A_NUMBER, "; a decimal must be written with a point, such as 39.5.");
        }
        if (!matcher.matches()) {
            return refuse(NoticeCode.NOT_A_NUMBER, "; it must be a number" + withUnit() + ".");
        }
        Optional<Unit> unit = unit(matcher.group(2));
        return unit.isEmpty() ? OptionalDouble.empty() : limited(Double.parseDouble(matcher.group(1)), unit.get());
    }

    /** The parts of a time, such as {@code 2 h 30 min}; limits are told in the unit of the last part. */
    private OptionalDouble parts(String text) {
        double sum = 0;
        Unit last = measure.usualUnit();
        Matcher part = PART.matcher(text);
        while (part.find()) {
            Optional<Unit> unit = unit(part.group(2));
            if (unit.isEmpty()) {
                return OptionalDouble.empty();
            }
            last = unit.get();
            sum += Double.parseDouble(part.group(1)) * last.toBase();
        }
        return limited(sum / last.toBase(), last);
    }

    private Optional<Unit> unit(String spelling) {
        Optional<Unit> unit = measure.unit(spelling.replaceAll("^:\\s+", ":"));
        if (unit.isEmpty() && spelling.isEmpty()) {
            refuse(NoticeCode.UNIT_MISSING, " without a unit; it must be a number" + withUnit() + ".");
        } else if (unit.isEmpty()) {
            refuse(NoticeCode.WRONG_UNIT, "; it must be a number" + withUnit() + ".");
        }
        return unit;
    }

    private OptionalDouble limited(double number, Unit unit) {
        double base = number * unit.toBase();
        String limits = "; it must be " + range.inWords(unit) + ".";
        if (Double.isInfinite(number)) {
            return refuse(NoticeCode.NOT_FINITE, limits);
        }
        if (range.contains(base)) {
            return OptionalDouble.of(base);
        }
        boolean negative = number < 0 && range.low() >= 0;
        return refuse(
                negative ? NoticeCode.NEGATIVE_VALUE : number == 0 ? NoticeCode.ZERO_VALUE : NoticeCode.OUT_OF_RANGE,
                limits);
    }

    private String withUnit() {
        if (measure == Measure.RATIO) {
            return " to one (n:1)";
        }
        return measure.hasUnit() ? " with its unit (" + measure.unitsInWords() + ")" : " without a unit";
    }

    private OptionalDouble refuse(NoticeCode code, String problem) {
        value.refuse(code, problem + value.advice());
        return OptionalDouble.empty();
    }
}
