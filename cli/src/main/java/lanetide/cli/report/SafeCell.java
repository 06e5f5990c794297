package lanetide.cli.report;

import java.util.regex.Pattern;

/** Text that a spreadsheet must not take for a formula or a date. */
final class SafeCell {
    /**
     * With these a formula begins (OWASP, CSV Injection); some spreadsheets take the full-width signs of East Asian
     * keyboards for the plain ones.
     */
    private static final String OPENERS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private static final Pattern DATE = Pattern.compile("\\d+[-/.]\\d+([-/.]\\d*)?");

    private SafeCell() {}

    /**
     * The text for a cell of a table that a spreadsheet may open.
     *
     * @param text what somebody wrote, or a number
     * @return the text, with an apostrophe before it if it could begin a formula or be a date; a plain number stays
     */
    static String of(String text) {
        if (NUMBER.matcher(text).matches()) {
            return text;
        }
        boolean taken = opens(text)
                || opens(text.stripLeading())
                || DATE.matcher(text.strip()).matches();
        return taken ? "'" + text : text;
    }

    private static boolean opens(String text) {
        return !text.isEmpty() && OPENERS.indexOf(text.charAt(0)) >= 0;
    }
}
