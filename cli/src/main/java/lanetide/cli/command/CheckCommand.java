package lanetide.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanetide.cli.check.CheckJson;
import lanetide.cli.check.CheckText;
import lanetide.cli.doubt.Unanswered;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.Format;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Severity;
import lanetide.cli.scenario.write.ChangedScenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds every fault of a scenario in one pass. */
@Command(
        name = "check",
        header = "Finds every fault of a scenario in one pass",
        description = {
            "Says of every fault what it is, where it stands, its value, its limit and what to try; then what was understood of the scenario, and what is assumed. There is no csv form.",
            "",
            HelpText.WHERE
        },
        exitCodeList = {"0:no errors", "1:errors found", HelpText.WRONG_USE, HelpText.FILE_TROUBLE},
        footer = {
            "  lanetide check scenarios/club-night.yaml",
            "  lanetide check scenarios/club-night.yaml --format json -o faults.json",
            "  lanetide check scenarios/busy-day.yaml --late A=1h --write now.yaml"
        })
public final class CheckCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Option(
            names = "--all",
            description = "Tell every fault, where text else tells the first 50 of a kind and counts the others.")
    private boolean all;

    @Mixin
    private ChangeOptions changes;

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description =
                    "Also write the scenario as it has changed to FILE, in the folder of the scenario: without its comments, and with its bowlers one by one if some stay away (default: none is written).")
    private Path write;

    @Override
    public Integer call() {
        if (options.format() == Format.CSV) {
            throw CommandFailure.wrongUse("check has no table to give as csv; use --format text or json.");
        }
        Optional<AnswerFile> file = options.answerFile();
        Optional<AnswerFile> into = options.file("--write", write);
        Reading asWritten = options.read();
        Optional<Scenario> changed = asWritten.scenario().map(changes::changed);
        into.ifPresent(target -> changed.ifPresent(now -> target.write(written(asWritten, now))));
        Reading reading = Unanswered.told(changed.map(asWritten::with).orElse(asWritten));
        options.answer(
                file,
                options.format() == Format.JSON
                        ? CheckJson.write(reading)
                        : CheckText.write(options.scenario().toString(), reading, all, options.metric()));
        return reading.count(Severity.ERROR) == 0 ? ExitCode.DONE : ExitCode.CONDITION_FAILS;
    }

    private String written(Reading reading, Scenario changed) {
        return ChangedScenario.write(reading, changed, write.toString())
                .orElseThrow(() -> CommandFailure.wrongUse("A scenario cannot say what has changed, so that nothing is"
                        + " written: bowlers who are drawn by shares and not listed, groups that are made anew within a"
                        + " squad (--from-game), or files that the scenario names and that are not beside " + write
                        + "."));
    }
}
