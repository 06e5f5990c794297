package lanetide.cli.output;

/** Why a command stops: one plain sentence and an exit code. */
public final class CommandFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int exitCode;

    private CommandFailure(int exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    public static CommandFailure wrongUse(String message) {
        return new CommandFailure(ExitCode.CANNOT_RUN, message);
    }

    public static CommandFailure fileTrouble(String message) {
        return new CommandFailure(ExitCode.FILE_TROUBLE, message);
    }

    /** A run of one share has done what it should, and others must follow before there is an answer. */
    public static CommandFailure nothingYet(String message) {
        return new CommandFailure(ExitCode.DONE, message);
    }

    public static CommandFailure interrupted(String message) {
        return new CommandFailure(ExitCode.INTERRUPTED, message);
    }

    /**
     * What to tell the shell.
     *
     * @return one of {@link ExitCode}
     */
    public int exitCode() {
        return exitCode;
    }
}
