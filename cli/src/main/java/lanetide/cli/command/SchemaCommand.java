package lanetide.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lanetide.cli.options.Candidates;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.Outputs;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.schema.Schemas;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the JSON Schema of a scenario or of an answer. */
@Command(
        name = "schema",
        header = "Writes the JSON Schema of a scenario or of an answer",
        description = {
            "An editor that knows JSON Schema completes and checks a scenario with it; a program checks answers with it.",
            "",
            "The schema goes to standard output, or to FILE with --out. Failures go to standard error."
        },
        exitCodeList = {HelpText.DONE, HelpText.WRONG_USE, HelpText.FILE_TROUBLE},
        footer = {"  lanetide schema scenario -o scenario.schema.json", "  lanetide schema simulate"})
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    @Parameters(
            index = "0",
            paramLabel = "NAME",
            completionCandidates = Candidates.Documents.class,
            description = "One of ${COMPLETION-CANDIDATES}. Required.")
    private String name;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description = "Write the schema to FILE, in one step (default: standard output).")
    private Path out;

    @Override
    public Integer call() {
        List<String> known = Schemas.names();
        if (!known.contains(name)) {
            throw CommandFailure.wrongUse("There is no schema of `" + name + "`." + Nearest.question(name, known)
                    + " There are " + String.join(", ", known) + ".");
        }
        String schema = Schemas.write(name);
        if (out != null) {
            new Outputs().file("--out", out).write(schema);
            return ExitCode.DONE;
        }
        PrintWriter writer = command.commandLine().getOut();
        writer.print(schema);
        writer.flush();
        return ExitCode.DONE;
    }
}
