package lanetide.cli.command;

import lanetide.cli.output.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What the help of several commands says in the same words. */
public final class HelpText {
    /** Where a command writes what. */
    public static final String WHERE =
            "The answer goes to standard output, or to FILE with --out. Progress, warnings and failures go to standard"
                    + " error.";

    /** How boards are counted in an answer. */
    public static final String BOARDS = "Boards are counted from the bowler's own gutter.";

    /** Exit code of a run that did what it should. */
    public static final String DONE = ExitCode.DONE + ":done";

    /** Exit code of a command line that is not understood. */
    public static final String WRONG_USE = ExitCode.CANNOT_RUN + ":wrong use";

    /** The same, and of a scenario that cannot be played. */
    public static final String WRONG_SCENARIO = WRONG_USE + ", or a scenario with errors";

    /** Exit code of a disk that does not do as it should. */
    public static final String FILE_TROUBLE = ExitCode.FILE_TROUBLE + ":a file cannot be read or written";

    /** Exit code of a fault of the program itself. */
    public static final String BROKEN_RULE = ExitCode.BROKEN_RULE
            + ":the program broke a rule of its own, such as that no oil is lost; it leaves a file that shows it";

    /** Exit code of a run that was stopped. */
    public static final String INTERRUPTED = ExitCode.INTERRUPTED + ":interrupted; nothing was written";

    private HelpText() {}

    /**
     * Gives the library's own command for help the words of this program.
     *
     * @param help that command
     */
    public static void explainHelp(CommandSpec help) {
        help.usageMessage()
                .header("Shows the help of a command")
                .description("Without a COMMAND it shows that of the program. Help goes to standard output.")
                .exitCodeList(UsageMessageSpec.keyValuesMap(DONE, WRONG_USE))
                .footer("  lanetide help simulate", "  lanetide help");
    }
}
