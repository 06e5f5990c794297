package lanetide.cli.output;

/** What the program tells the shell. */
public final class ExitCode {
    /** Done. */
    public static final int DONE = 0;

    /** Done, and the asked-for condition does not hold: {@code check} found errors. */
    public static final int CONDITION_FAILS = 1;

    /** Wrong use, or a scenario that cannot be run. */
    public static final int CANNOT_RUN = 2;

    /** A file cannot be read or written. */
    public static final int FILE_TROUBLE = 3;

    /** The program has broken a rule of its own; nothing that it might have answered can be trusted. */
    public static final int BROKEN_RULE = 4;

    /** Interrupted. */
    public static final int INTERRUPTED = 130;

    private ExitCode() {}
}
