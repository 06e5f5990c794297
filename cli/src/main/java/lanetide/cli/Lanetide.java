package lanetide.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import lanetide.cli.command.CheckCommand;
import lanetide.cli.command.CommandFailure;
import lanetide.cli.command.CompareCommand;
import lanetide.cli.command.ExitCode;
import lanetide.cli.command.FairnessCommand;
import lanetide.cli.command.LinesCommand;
import lanetide.cli.command.NewCommand;
import lanetide.cli.command.PatternCommand;
import lanetide.cli.command.PreviewCommand;
import lanetide.cli.command.ReoilCommand;
import lanetide.cli.command.ReportCommand;
import lanetide.cli.command.RotateCommand;
import lanetide.cli.command.SchemaCommand;
import lanetide.cli.command.SheetsCommand;
import lanetide.cli.command.SimulateCommand;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.ProgramVersion;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The program: finds the command, runs it, and turns every failure into one plain sentence. */
@Command(
        name = "lanetide",
        description = "What the oil on tenpin lanes will be, game by game, and whether the schedule shares it fairly.",
        subcommands = {
            CheckCommand.class,
            CompareCommand.class,
            FairnessCommand.class,
            LinesCommand.class,
            NewCommand.class,
            PatternCommand.class,
            PreviewCommand.class,
            ReoilCommand.class,
            ReportCommand.class,
            RotateCommand.class,
            SchemaCommand.class,
            SheetsCommand.class,
            SimulateCommand.class,
            AutoComplete.GenerateCompletion.class,
            CommandLine.HelpCommand.class
        },
        versionProvider = Lanetide.Version.class,
        mixinStandardHelpOptions = true,
        scope = CommandLine.ScopeType.INHERIT,
        synopsisSubcommandLabel = "COMMAND")
public final class Lanetide {
    private Lanetide() {}

    /** The version, for {@code --version}. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"lanetide " + ProgramVersion.text()};
        }
    }

    /**
     * Runs the program and ends it with the command's exit code.
     *
     * @param args command line
     */
    public static void main(String[] args) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int exitCode = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(exitCode);
    }

    /**
     * Runs one command.
     *
     * @param out where answers go
     * @param err where progress, notices and failures go
     * @param args command line
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        try {
            return commandLine(out, err).execute(args);
        } catch (OutOfMemoryError e) {
            return fail(err, "The scenario needs more memory than there is; use fewer lanes or replications.");
        } catch (StackOverflowError e) {
            return fail(err, "The scenario is too deeply nested to be run.");
        }
    }

    private static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Lanetide())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((e, wrong) -> wrongUse(err, e))
                .setExecutionExceptionHandler((e, command, parsed) -> failed(err, e));
        line.registerConverter(Long.class, text -> whole(text, Long::valueOf));
        line.registerConverter(Integer.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(int.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(Double.class, text -> number(text, Double::valueOf, "a number"));
        addCautions(line);
        return line;
    }

    private static <T> T whole(String text, Function<String, T> parse) {
        return number(text, parse, "a whole number");
    }

    private static <T> T number(String text, Function<String, T> parse, String kind) {
        try {
            return parse.apply(text);
        } catch (NumberFormatException e) {
            throw new CommandLine.TypeConversionException("`" + text + "` must be " + kind);
        }
    }

    private static void addCautions(CommandLine line) {
        var usage = line.getCommandSpec().usageMessage();
        String[] footer = Arrays.copyOf(usage.footer(), usage.footer().length + 1 + Cautions.ALL.size());
        Arrays.fill(footer, usage.footer().length, footer.length, "");
        for (int i = 0; i < Cautions.ALL.size(); i++) {
            footer[usage.footer().length + 1 + i] = Cautions.ALL.get(i);
        }
        usage.footer(footer);
        line.getSubcommands().values().forEach(Lanetide::addCautions);
    }

    private static int wrongUse(PrintWriter err, CommandLine.ParameterException e) {
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        String problem = e instanceof CommandLine.UnmatchedArgumentException unmatched
                ? "`" + unmatched.getUnmatched().get(0) + "` is not understood here." + nearest(unmatched)
                : e.getMessage() + ".";
        return fail(err, problem + " See `" + name + " --help`.");
    }

    private static String nearest(CommandLine.UnmatchedArgumentException e) {
        return e.getSuggestions().isEmpty()
                ? ""
                : " Did you mean `" + e.getSuggestions().get(0) + "`?";
    }

    private static int failed(PrintWriter err, Exception e) {
        if (e instanceof CommandFailure failure) {
            fail(err, failure.getMessage());
            return failure.exitCode();
        }
        if (e instanceof CancellationException) {
            fail(err, "Interrupted; nothing was written.");
            return ExitCode.INTERRUPTED;
        }
        return fail(
                err,
                "The scenario cannot be run: " + e.getMessage() + " ("
                        + e.getClass().getSimpleName() + ").");
    }

    private static int fail(PrintWriter err, String sentence) {
        err.println("lanetide: " + sentence);
        err.flush();
        return ExitCode.CANNOT_RUN;
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
    }
}
