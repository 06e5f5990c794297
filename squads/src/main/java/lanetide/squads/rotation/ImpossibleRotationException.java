package lanetide.squads.rotation;

/** A rotation that cannot exist was asked for; says what is wrong, its value, the limit and what to try. */
public final class ImpossibleRotationException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

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
    }
}
