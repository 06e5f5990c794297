package lanetide.cli.scenario.value;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.key.Unit;
import lanetide.cli.scenario.notice.NoticeCode;

/** Reads a number with its unit. Whatever is wrong is said in the unit it was written in. */
record QuantityReader<T extends Number>(Value value, Form.Quantity<T> form) {
    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final Pattern PARTS = Pattern.compile("(?:" + NUMBER + "\\s*[a-z]+\\s+)+" + NUMBER + "\\s*[a-z]+");
    private static final Pattern PART = Pattern.compile("(" + NUMBER + ")\\s*([a-z]+)");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?\\.?(?:nan|inf|infinity|\u221e)\\b.*");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+(?:\\D.*)?");

    /** No quantity is longer, and a pattern match on a long text would take long. */
    private static final int MAX_LENGTH = 60;

    Optional<T> read(String text) {
        if (text.length() > MAX_LENGTH) {
            return refuse(NoticeCode.NOT_A_NUMBER, "a number" + withUnit());
        }
        if (NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            return refuse(NoticeCode.NOT_FINITE, "a finite number");
        }
        if (form.measure() == Measure.TIME && PARTS.matcher(text).matches()) {
            return parts(text);
        }
        Matcher matcher = QUANTITY.matcher(text);
        if (DECIMAL_COMMA.matcher(text).matches()) {
            return refuse(NoticeCode.NOT_A_NUMBER, "written with a point, such as 39.5");
        }
        if (!matcher.matches()) {
            return refuse(NoticeCode.NOT_A_NUMBER, "a number" + withUnit());
        }
        Optional<Unit> unit = unit(matcher.group(2));
        return unit.isEmpty() ? Optional.empty() : limited(Double.parseDouble(matcher.group(1)), unit.get());
    }

    /** The parts of a time, such as {@code 2 h 30 min}; limits are told in the unit of the last part. */
    private Optional<T> parts(String text) {
        double sum = 0;
        Unit last = form.measure().usualUnit();
        Matcher part = PART.matcher(text);
        while (part.find()) {
            Optional<Unit> unit = unit(part.group(2));
            if (unit.isEmpty()) {
                return Optional.empty();
            }
            last = unit.get();
            sum += Double.parseDouble(part.group(1)) * last.toBase();
        }
        return limited(sum / last.toBase(), last);
    }

    private Optional<Unit> unit(String spelling) {
        Optional<Unit> unit = form.measure().unit(spelling.replaceAll("^:\\s+", ":"));
        if (unit.isEmpty()) {
            refuse(spelling.isEmpty() ? NoticeCode.UNIT_MISSING : NoticeCode.WRONG_UNIT, "a number" + withUnit());
        }
        return unit;
    }

    private Optional<T> limited(double number, Unit unit) {
        double base = number * unit.toBase();
        Range range = form.range();
        if (Double.isInfinite(number) || !range.contains(base)) {
            return refuse(codeFor(number, range), range.inWords(unit));
        }
        if (form.isWhole() && base != Math.rint(base)) {
            return refuse(NoticeCode.NOT_WHOLE, "a whole number");
        }
        return Optional.of(form.as().apply(base));
    }

    private static NoticeCode codeFor(double number, Range range) {
        if (Double.isInfinite(number)) {
            return NoticeCode.NOT_FINITE;
        }
        if (number < 0 && range.low() >= 0) {
            return NoticeCode.NEGATIVE_VALUE;
        }
        return number == 0 ? NoticeCode.ZERO_VALUE : NoticeCode.OUT_OF_RANGE;
    }

    private String withUnit() {
        if (form.measure() == Measure.RATIO) {
            return " to one (n:1)";
        }
        return form.measure().hasUnit() ? " with its unit (" + form.measure().unitsInWords() + ")" : " without a unit";
    }

    private Optional<T> refuse(NoticeCode code, String limit) {
        value.mustBe(code, limit, value.advice());
        return Optional.empty();
    }
}
