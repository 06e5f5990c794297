package lanetide.cli.command;

import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanetide.cli.check.CheckText;
import lanetide.cli.options.StarterOptions;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.Outputs;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.starter.Interview;
import lanetide.cli.starter.Starter;
import lanetide.cli.starter.StarterDraft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a scenario to begin with, by options, or by asking on a terminal. */
@Command(
        name = "new",
        header = "Writes a scenario to begin with, every key explained",
        description = {
            "What no option says is asked for on a terminal, where an empty line takes the value in brackets and end of input (Ctrl-D) stops without writing anything. Elsewhere, and with --yes, that value is taken.",
            "",
            "The scenario goes to standard output, or to FILE with --out. Questions and failures go to standard error."
        },
        exitCodeList = {
            HelpText.DONE,
            "2:wrong use, answers that make no scenario, or end of input before the last one",
            HelpText.FILE_TROUBLE
        },
        footer = {
            "  lanetide new -o my-event.yaml",
            "  lanetide new --lanes \"1 to 12\" --games 6 --yes -o cup.yaml",
            "  lanetide new --entries entries.csv --starts 09:00,14:00 -o final.yaml"
        })
public final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    @Mixin
    private StarterOptions options;

    @Option(names = "--yes", description = "Ask nothing.")
    private boolean yes;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description =
                    "Write the scenario to FILE, in one step; an older file there is never replaced (default: standard output).")
    private Path out;

    private final Outputs outputs = new Outputs();
    private final Optional<Reader> input;

    /**
     * The command.
     *
     * @param input what a person types; empty where nobody could answer
     */
    NewCommand(Optional<Reader> input) {
        this.input = input;
    }

    @Override
    public Integer call() {
        Optional<AnswerFile> file = Optional.ofNullable(out).map(this::fresh);
        String where = out == null ? "scenario.yaml" : out.toString();
        StarterDraft given = new StarterDraft(options.given(), where);
        StarterDraft draft = input.isPresent() && !yes
                ? new Interview(input.get(), command.commandLine().getErr()).complete(given)
                : given;
        if (draft.starts() > Starter.MAX_SQUADS) {
            throw CommandFailure.wrongUse("--starts: " + Interview.tooManySquads());
        }
        Reading reading = draft.reading();
        outputs.keep(reading);
        if (reading.scenario().isEmpty()) {
            tell(where, draft.errors());
            return ExitCode.CANNOT_RUN;
        }
        PrintWriter writer = command.commandLine().getOut();
        if (file.isPresent()) {
            file.get().write(draft.text());
            writer.println(Notices.printable("Written to " + out + ". Look it over, then: lanetide check " + out));
        } else {
            writer.print(draft.text());
        }
        writer.flush();
        return ExitCode.DONE;
    }

    private AnswerFile fresh(Path path) {
        if (Files.exists(path) && !AnswerFile.isDevice(path)) {
            throw CommandFailure.wrongUse("There is a file " + path + " already; name another one.");
        }
        return outputs.file("--out", path);
    }

    private void tell(String where, List<Notice> errors) {
        Page page = new Page().line("These answers make no scenario; nothing was written.");
        CheckText.notices(page, where, errors);
        command.commandLine().getErr().print(page.text());
        command.commandLine().getErr().flush();
    }
}
