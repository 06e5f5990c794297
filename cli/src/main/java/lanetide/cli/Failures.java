package lanetide.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import lanetide.cli.output.BreachFile;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.report.ProgramVersion;
import lanetide.cli.scenario.notice.Notices;
import lanetide.squads.result.BrokenRuleException;
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

    /**
     * Tells that the program has broken a rule of its own, and leaves a file that shows it.
     *
     * @param scenario the scenario that was played; empty where none was named
     * @param words the command line
     */
    int brokenRule(BrokenRuleException e, Optional<Path> scenario, List<String> words) {
        told("The program has broken a rule of its own: " + e.getMessage()
                + ". This is a fault of the program, and nothing was answered.");
        try {
            scenario.map(file -> BreachFile.write(file, words, ProgramVersion.withCommit(), e.getMessage()))
                    .ifPresent(file -> told("What shows it is in " + file + "; please report it with that file."));
        } catch (CommandFailure failure) {
            told(failure.getMessage());
        }
        return ExitCode.BROKEN_RULE;
    }

    int told(String sentence) {
        err.println("lanetide: " + Notices.printable(sentence));
        err.flush();
        return ExitCode.CANNOT_RUN;
    }
}
