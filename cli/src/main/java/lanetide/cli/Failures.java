package lanetide.cli;

import java.io.PrintWriter;
import java.util.concurrent.CancellationException;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.notice.Notices;
import picocli.CommandLine;

/** Turns every failure into one plain sentence and an exit code. */
record Failures(PrintWriter err) {
    int wrongUse(CommandLine.ParameterException e) {
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        String problem = e instanceof CommandLine.UnmatchedArgumentException unmatched
                ? "`" + unmatched.getUnmatched().get(0) + "` is not understood here." + nearest(unmatched)
                : e.getMessage() + ".";
        return told(problem + " See `" + name + " --help`.");
    }

    private static String nearest(CommandLine.UnmatchedArgumentException e) {
        return e.getSuggestions().isEmpty()
                ? ""
                : " Did you mean `" + e.getSuggestions().get(0) + "`?";
    }

    int failed(Exception e) {
        if (e instanceof CommandFailure failure) {
            told(failure.getMessage());
            return failure.exitCode();
        }
        if (e instanceof CancellationException) {
            told("Interrupted; nothing was written.");
            return ExitCode.INTERRUPTED;
        }
        return told("The scenario cannot be run: " + e.getMessage() + " ("
                + e.getClass().getSimpleName() + ").");
    }

    int told(String sentence) {
        err.println("lanetide: " + Notices.printable(sentence));
        err.flush();
        return ExitCode.CANNOT_RUN;
    }
}
