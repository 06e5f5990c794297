package lanetide.cli;

import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import lanetide.cli.command.CheckCommand;
import lanetide.cli.command.CommandFactory;
import lanetide.cli.command.CompareCommand;
import lanetide.cli.command.CompletionCommand;
import lanetide.cli.command.FairnessCommand;
import lanetide.cli.command.FitCommand;
import lanetide.cli.command.HelpText;
import lanetide.cli.command.LinesCommand;
import lanetide.cli.command.MergeCommand;
import lanetide.cli.command.NewCommand;
import lanetide.cli.command.PatternCommand;
import lanetide.cli.command.PreviewCommand;
import lanetide.cli.command.ReoilCommand;
import lanetide.cli.command.ReportCommand;
import lanetide.cli.command.RotateCommand;
import lanetide.cli.command.SchemaCommand;
import lanetide.cli.command.SheetsCommand;
import lanetide.cli.command.SimulateCommand;
import lanetide.cli.options.Format;
import lanetide.cli.options.SetsOption;
import lanetide.cli.options.Units;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.StandardOutput;
import lanetide.cli.output.Terminal;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.ProgramVersion;
import lanetide.cli.sheets.Paper;
import lanetide.squads.result.BrokenRuleException;
import lanetide.squads.study.Share;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program: finds the command, runs it, and turns every failure into one plain sentence. */
@Command(
        name = "lanetide",
        header = "Tells what the oil on tenpin lanes will be, and whether a schedule is fair",
        description = {
            "Reads a scenario, plays the whole event shot by shot on a real oil film, and answers a question about it:"
                    + " one command for each question. `lanetide COMMAND --help` tells all of a command.",
            "",
            HelpText.WHERE
        },
        synopsisHeading = "%nUsage: ",
        abbreviateSynopsis = true,
        synopsisSubcommandLabel = "COMMAND",
        descriptionHeading = "%n",
        parameterListHeading = "%nArguments:%n",
        optionListHeading = "%nOptions:%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            HelpText.DONE,
            "1:done, and what was asked for does not hold; each command says what that is",
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  lanetide new -o my-event.yaml",
            "  lanetide check scenarios/club-night.yaml",
            "  lanetide simulate scenarios/club-night.yaml",
            "  lanetide simulate --help"
        },
        versionProvider = Lanetide.Version.class,
        addMethodSubcommands = false,
        scope = CommandLine.ScopeType.INHERIT)
public final class Lanetide {
    /** In the order in which help lists them. The class of a command is called by its name. */
    private static final List<Class<?>> COMMANDS = List.of(
            CheckCommand.class,
            CompareCommand.class,
            CompletionCommand.class,
            FairnessCommand.class,
            FitCommand.class,
            LinesCommand.class,
            MergeCommand.class,
            NewCommand.class,
            PatternCommand.class,
            PreviewCommand.class,
            ReoilCommand.class,
            ReportCommand.class,
            RotateCommand.class,
            SchemaCommand.class,
            SheetsCommand.class,
            SimulateCommand.class,
            CommandLine.HelpCommand.class);

    @Spec
    private CommandSpec command;

    private Lanetide() {}

    @Option(
            names = "--no-color",
            scope = CommandLine.ScopeType.INHERIT,
            description = "No colours in help; the NO_COLOR convention is obeyed too.")
    void setNoColor(boolean noColor) {
        if (noColor) {
            command.commandLine().setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        }
    }

    /** The version and the commit, for {@code --version}. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"lanetide " + ProgramVersion.withCommit()};
        }
    }

    /**
     * Runs the program and ends it with the command's exit code.
     *
     * @param args command line
     */
    public static void main(String[] args) {
        settle();
        PrintWriter out = StandardOutput.writer();
        PrintWriter err = StandardOutput.errors();
        int exitCode = run(Terminal.input(), out, err, args);
        out.flush();
        err.flush();
        System.exit(exitCode);
    }

    /** What libraries are told before anything runs. */
    static void settle() {
        // They sort and write as the machine's language does: the same bytes everywhere.
        Locale.setDefault(Locale.ROOT);
        // No option is a time of a database, and loading how to read one costs a short run.
        System.setProperty("picocli.converters.excludes", "java.sql.*");
    }

    /**
     * Runs one command where nobody can be asked.
     *
     * @param out where answers go
     * @param err where progress, notices and failures go
     * @param args command line
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(Optional.empty(), out, err, args);
    }

    /**
     * Runs one command.
     *
     * @param input what a person types who can be asked; empty where there is nobody
     * @param out where answers go
     * @param err where progress, questions, notices and failures go
     * @param args command line
     * @return the exit code
     */
    public static int run(Optional<Reader> input, PrintWriter out, PrintWriter err, String... args) {
        Failures failures = new Failures(err);
        try {
            int exitCode = commandLine(input, out, err, args).execute(args);
            if (out.checkError()) {
                failures.told("The answer cannot be written to standard output.");
                return ExitCode.FILE_TROUBLE;
            }
            return exitCode;
        } catch (OutOfMemoryError e) {
            return failures.told("The scenario needs more memory than there is; use fewer lanes or replications.");
        } catch (StackOverflowError e) {
            return failures.told("The scenario is too deeply nested to be run.");
        }
    }

    private static CommandLine commandLine(Optional<Reader> input, PrintWriter out, PrintWriter err, String... args) {
        Failures failures = new Failures(err);
        CommandLine line = commands(input, calledFor(args))
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler((e, wrong) -> failures.wrongUse(e))
                .setExecutionExceptionHandler((e, command, parsed) -> e instanceof BrokenRuleException broken
                        ? failures.brokenRule(broken, scenario(command), parsed.originalArgs())
                        : failures.failed(e));
        line.registerConverter(Long.class, text -> whole(text, Long::valueOf));
        line.registerConverter(Integer.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(int.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(Path.class, Lanetide::path);
        line.registerConverter(Share.class, Lanetide::share);
        line.registerConverter(Double.class, text -> number(text, Double::valueOf, "a number"));
        CautionsSection.addTo(line);
        return line;
    }

    /** A path of this system; in the plain C locale a JVM knows no letters but those of ASCII. */
    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new CommandLine.TypeConversionException(
                    "`" + text + "` cannot be the name of a file here: it holds characters that this system or its"
                            + " language settings do not allow. Rename the file, or where letters are missing set"
                            + " LC_ALL=C.UTF-8");
        }
    }

    private static Share share(String text) {
        try {
            String[] numbers = text.split("/", -1);
            if (numbers.length == 2) {
                return new Share(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
            }
        } catch (IllegalArgumentException e) {
            // As below.
        }
        throw new CommandLine.TypeConversionException("`" + text + "` must be one of so many, such as 3/8");
    }

    /** The scenario that a command was given first; empty if it takes none. */
    private static Optional<Path> scenario(CommandLine command) {
        return command.getCommandSpec().positionalParameters().stream()
                .<Object>map(parameter -> parameter.getValue())
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .findFirst();
    }

    /** All commands, with their help. */
    static CommandLine commands(Optional<Reader> input) {
        return commands(input, COMMANDS);
    }

    /**
     * The one command that a line begins with, since half of a short run went into reading the options of all; where it
     * begins with anything else, all of them.
     */
    private static List<Class<?>> calledFor(String... args) {
        String name = args.length == 0 ? "" : args[0] + "command";
        List<Class<?>> called = COMMANDS.stream()
                .filter(type -> type != CommandLine.HelpCommand.class)
                .filter(type -> type.getSimpleName().toLowerCase(Locale.ROOT).equals(name))
                .toList();
        return called.isEmpty() ? COMMANDS : called;
    }

    private static CommandLine commands(Optional<Reader> input, List<Class<?>> chosen) {
        CommandFactory factory = new CommandFactory(input);
        CommandLine line = new CommandLine(new Lanetide(), factory);
        chosen.forEach(type -> line.addSubcommand(new CommandLine(type, factory)));
        // After the commands, which list what they inherit in the order in which it comes.
        line.getCommandSpec().mixinStandardHelpOptions(true);
        Optional.ofNullable(line.getSubcommands().get("help"))
                .ifPresent(help -> HelpText.explainHelp(help.getCommandSpec()));
        registerConstants(line, Format.class);
        registerConstants(line, Units.class);
        registerConstants(line, Paper.class);
        registerConstants(line, SetsOption.Sets.class);
        return line;
    }

    /** One of a few constants, each written as its text, in capitals or not. */
    private static <T extends Enum<T>> void registerConstants(CommandLine line, Class<T> kind) {
        T[] constants = kind.getEnumConstants();
        line.registerConverter(
                kind,
                text -> Arrays.stream(constants)
                        .filter(value -> ConstantName.of(value).equalsIgnoreCase(text))
                        .findFirst()
                        .orElseThrow(() -> new CommandLine.TypeConversionException("`" + text + "` must be one of "
                                + Arrays.stream(constants).map(ConstantName::of).toList())));
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
}
