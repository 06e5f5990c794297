package lanetide.cli.scenario.value;

/** What a text and a name in a scenario may be. */
public final class TextRule {
    /** Most characters of a text. */
    public static final int LONGEST_TEXT = 200;

    private static final int LONGEST_NAME = 24;

    /** What a name must be, to follow the name. */
    public static final String NAME_IN_WORDS =
            "; a name must start with a letter or a digit and have at most " + LONGEST_NAME + " characters.";

    private TextRule() {}

    public static boolean isText(String text) {
        return text.length() <= LONGEST_TEXT && isPrintable(text) && !text.isBlank();
    }

    /** Whether a text can be a name: short enough for a table, and no table takes it for a formula. */
    public static boolean isName(String text) {
        return text.length() <= LONGEST_NAME && Character.isLetterOrDigit(text.codePointAt(0)) && isPrintable(text);
    }

    private static boolean isPrintable(String text) {
        return text.codePoints().noneMatch(TextRule::isUnprintable);
    }

    private static boolean isUnprintable(int character) {
        int type = Character.getType(character);
        return Character.isISOControl(character) || type == Character.FORMAT || type == Character.SURROGATE;
    }
}
