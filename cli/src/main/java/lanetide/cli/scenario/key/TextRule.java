package lanetide.cli.scenario.key;

/** What a text and a name in a scenario may be. */
public final class TextRule {
    /** Most characters of a text. */
    static final int MAX_TEXT = 200;

    /** Most characters of a name. */
    static final int MAX_NAME = 24;

    /** What a text must be. */
    public static final String TEXT_IN_WORDS = "a text of 1 to " + MAX_TEXT + " printable characters";

    /** What a name must be. */
    public static final String NAME_IN_WORDS =
            "a name that starts with a letter or a digit and has at most " + MAX_NAME + " characters";

    private TextRule() {}

    /** Whether a text can be printed: not blank, not too long, no control characters. */
    public static boolean isText(String text) {
        return text.length() <= MAX_TEXT && isPrintable(text) && !text.isBlank();
    }

    /** Whether a text can be a name: short enough for a table, and no table takes it for a formula. */
    public static boolean isName(String text) {
        return text.length() <= MAX_NAME && Character.isLetterOrDigit(text.codePointAt(0)) && isPrintable(text);
    }

    private static boolean isPrintable(String text) {
        return text.codePoints().noneMatch(TextRule::isUnprintable);
    }

    private static boolean isUnprintable(int character) {
        int type = Character.getType(character);
        return Character.isISOControl(character) || type == Character.FORMAT || type == Character.SURROGATE;
    }
}
