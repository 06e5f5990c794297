package lanetide.squads.result;

/**
 * A playing in which something happened that never may: oil that is nowhere, a score that no game has, two games on a
 * pair. It is a fault of the program, whatever was asked of it; nothing of the answer can be trusted.
 */
public final class BrokenRuleException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * A broken rule.
     *
     * @param what what happened and what may not, in a sentence without its stop
     */
    public BrokenRuleException(String what) {
        super(what);
    }

    private BrokenRuleException(String what, Throwable cause) {
        super(what, cause);
    }

    /**
     * The same, found in a playing of a study.
     *
     * @param playing what tells that playing from others
     * @return an exception whose message names it
     */
    public BrokenRuleException in(String playing) {
        return new BrokenRuleException(getMessage() + " (" + playing + ")", this);
    }
}
