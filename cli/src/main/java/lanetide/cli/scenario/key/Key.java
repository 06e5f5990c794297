package lanetide.cli.scenario.key;

/**
 * One key of a scenario, as the reader knows it and the documents describe it.
 *
 * @param name the key
 * @param unit unit or form of its value
 * @param meaning what it says
 * @param typical usual values, offered where a value is wrong
 * @param otherwise what holds where the key is left out; {@code required} if it must not be
 */
public record Key(String name, String unit, String meaning, String typical, String otherwise) {
    private static final String REQUIRED = "required";

    /**
     * Whether the key must be there.
     *
     * @return true if a block without it is faulty
     */
    public boolean isRequired() {
        return otherwise.equals(REQUIRED);
    }

    /** A key that must be there. */
    public static Key required(String name, String unit, String meaning, String typical) {
        return new Key(name, unit, meaning, typical, REQUIRED);
    }

    /** A key that may be left out. */
    public static Key optional(String name, String unit, String meaning, String typical, String otherwise) {
        return new Key(name, unit, meaning, typical, otherwise);
    }

    /** A key for which a value holds where it is left out. */
    public static Key optional(String name, String unit, String meaning, String typical, Default otherwise) {
        return optional(name, unit, meaning, typical, otherwise.text());
    }

    /** A key that is left out by most, as the value that then holds is also the typical one. */
    public static Key usual(String name, String unit, String meaning, Default value) {
        return usual(name, unit, meaning, value.text());
    }

    /** A key that is left out by most, as what then holds is also typical. */
    public static Key usual(String name, String unit, String meaning, String value) {
        return optional(name, unit, meaning, value, value);
    }
}
