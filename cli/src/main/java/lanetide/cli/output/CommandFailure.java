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

    /**
     * What to tell the shell.
     *
     * @return 2 or 3
     */
    public int exitCode() {
        return exitCode;
    }
}
