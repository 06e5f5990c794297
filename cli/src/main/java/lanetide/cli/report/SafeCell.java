package lanetide.cli.report;

/** Text that a spreadsheet must not take for a formula. */
public final class SafeCell {
    /** With these a formula begins (OWASP, CSV Injection). */
    private static final String OPENERS = "=+-@\t\r\n";

    private SafeCell() {}

    /**
     * The text for a cell of a table that a spreadsheet may open.
     *
     * @param text what somebody wrote
     * @return the text, with an apostrophe before it if it could begin a formula
     */
    public static String of(String text) {
        boolean formula = opens(text) || opens(text.stripLeading());
        return formula ? "'" + text : text;
    }

    private static boolean opens(String text) {
        return !text.isEmpty() && OPENERS.indexOf(text.charAt(0)) >= 0;
    }
}
