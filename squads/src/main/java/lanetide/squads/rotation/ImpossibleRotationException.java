package lanetide.squads.rotation;

/** A rotation that cannot exist was asked for; says what is wrong, its value, the limit and what to try. */
public final class ImpossibleRotationException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String what;
    private final String value;
    private final String limit;
    private final String advice;

    /**
     * A refusal.
     *
     * @param what the quantity that is wrong, such as "number of groups"
     * @param value its value
     * @param limit what the value must be, worded to follow "must be"
     * @param advice one sentence on what to try
     */
    public ImpossibleRotationException(String what, Object value, String limit, String advice) {
        super("The " + what + " (" + value + ") must be " + limit + ". " + advice);
        this.what = what;
        this.value = String.valueOf(value);
        this.limit = limit;
        this.advice = advice;
    }

    /**
     * The quantity that is wrong.
     *
     * @return such as "number of groups"
     */
    public String what() {
        return what;
    }

    /**
     * The value that was asked for.
     *
     * @return the value as text
     */
    public String value() {
        return value;
    }

    /**
     * What the value must be.
     *
     * @return words that follow "must be"
     */
    public String limit() {
        return limit;
    }

    /**
     * What to try instead.
     *
     * @return one sentence
     */
    public String advice() {
        return advice;
    }
}
