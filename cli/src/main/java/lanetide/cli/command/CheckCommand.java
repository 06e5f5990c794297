package lanetide.cli.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import lanetide.cli.report.CheckReport;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Finds every fault of a scenario in one pass. */
@Command(
        name = "check",
        description = "Finds every fault of a scenario in one pass and says what to try.",
        footer = {
            "",
            "Examples:",
            "  lanetide check scenarios/club-night.yaml",
            "  lanetide check scenarios/club-night.yaml --format json -o notices.json",
            "",
            "Exit codes: 0 no errors; 1 errors found; 2 wrong use; 3 a file cannot be read or written."
        })
public final class CheckCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Override
    public Integer call() {
        if (options.format() == Format.CSV) {
            throw CommandFailure.wrongUse("check has no table to give as csv; use --format text or json.");
        }
        Optional<AnswerFile> file = options.answerFile();
        Reading reading = ScenarioFile.read(options.scenario(), options.seed());
        options.answer(
                file,
                options.format() == Format.JSON
                        ? CheckReport.json(reading)
                        : CheckReport.text(options.scenario().toString(), reading, options.metric()));
        return reading.count(Severity.ERROR) == 0 ? ExitCode.DONE : ExitCode.CONDITION_FAILS;
    }
}
