package lanetide.cli.options;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import lanetide.cli.check.CheckText;
import lanetide.cli.doubt.LaneDoubts;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.AnswerFolder;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.Outputs;
import lanetide.cli.output.Progress;
import lanetide.cli.output.ScenarioFile;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The scenario and the options that every command has. */
public final class CommonOptions {
    /** The commands whose answer may be a page. */
    private static final Set<String> WITH_PAGES = Set.of("preview", "fairness");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Parameters(
            index = "0",
            paramLabel = "SCENARIO",
            description = "Scenario file (YAML); see the folder scenarios. Required.")
    private Path scenario;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description =
                    "Form of the answer: text, json or csv; of preview and fairness also html, a page for a browser (default: text).")
    private Form form;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description =
                    "Write the answer to FILE, in one step and only if the run succeeds (default: standard output).")
    private Path out;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description =
                    "Seed of all chance, from 0 to 999999999999; same scenario and seed, same answer (default: the scenario's).")
    private Long seed;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Threads to compute with, from 1 to 1024; the answer does not depend on it (default: one for each processor).")
    private Integer threads;

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            defaultValue = "trade",
            description =
                    "Units of text answers: trade (feet, units of oil) or metric (metres, micrometres). JSON and CSV name their units in the fields (default: trade).")
    private Units units;

    @Option(names = "--quiet", description = "Show no progress. Warnings and failures are told all the same.")
    private boolean quiet;

    private final Outputs outputs = new Outputs();

    public Path scenario() {
        return scenario;
    }

    public Optional<Path> out() {
        return Optional.ofNullable(out);
    }

    /** The form of an answer that is no page. */
    public Format format() {
        return form.format()
                .orElseThrow(() -> CommandFailure.wrongUse(
                        command.name() + " writes no page; leave --format out, or see preview, fairness and report."));
    }

    /** Whether a page for a browser is asked for, which few commands write; the others refuse it in {@link #format}. */
    public boolean page() {
        return form == Form.HTML;
    }

    public OptionalLong seed() {
        if (seed == null) {
            return OptionalLong.empty();
        }
        OptionCheck.requireRange("--seed", seed, 0, EventKeys.MAX_SEED);
        return OptionalLong.of(seed);
    }

    public int threads() {
        if (threads == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        OptionCheck.requireRange("--threads", threads, 1, 1024);
        return threads;
    }

    public boolean metric() {
        return units == Units.METRIC;
    }

    public boolean quiet() {
        return quiet;
    }

    public PrintWriter err() {
        return command.commandLine().getErr();
    }

    /**
     * Reads the scenario, tells what was found in it, and writes an answer to it if it can be played. Where the answer
     * goes is checked first, before a long run.
     */
    public int answer(BiFunction<Reading, Scenario, String> answer) {
        Optional<AnswerFile> file = answerFile();
        Reading reading = read();
        tellOf(scenario, reading);
        if (reading.scenario().isEmpty()) {
            return ExitCode.CANNOT_RUN;
        }
        answer(file, answer.apply(reading, reading.scenario().get()));
        return ExitCode.DONE;
    }

    /** Reads the scenario; nothing will be written over it or over a file that it names. */
    public Reading read() {
        return LaneDoubts.told(ScenarioFile.read(scenario, seed(), outputs));
    }

    /** Keeps what was read from being written over. */
    void keep(Reading reading) {
        outputs.keep(reading);
    }

    /** Reads a second scenario, with a seed in place of its own if there is one, and tells what was found in it. */
    public Reading other(Path file, OptionalLong seedInstead) {
        Reading reading = LaneDoubts.told(ScenarioFile.read(file, seedInstead, outputs));
        tellOf(file, reading);
        if (reading.scenario().isEmpty()) {
            throw CommandFailure.wrongUse("The scenario " + file + " has errors; see above.");
        }
        return reading;
    }

    /** Tells on standard error what was found in a scenario: errors and warnings; remarks are for check. */
    private void tellOf(Path file, Reading reading) {
        tell(file + (reading.scenario().isEmpty() ? " cannot be played." : ""), file, reading.notices());
    }

    /** Tells on standard error what was found beside a scenario too: errors and warnings below an opening line. */
    void tell(String opening, Path file, List<Notice> notices) {
        List<Notice> told = notices.stream()
                .filter(notice -> notice.severity() != Severity.INFO)
                .toList();
        if (!told.isEmpty()) {
            Page page = new Page().line(opening);
            CheckText.notices(page, file.toString(), told);
            err().print(page.text());
            err().flush();
        }
    }

    /** Tells what makes an answer doubtful that was found by playing. */
    public Reading doubting(Reading reading) {
        tell(
                "Why the answer is doubtful:",
                scenario,
                reading.notices().stream()
                        .filter(notice -> notice.code() == NoticeCode.MEANS_UNHEARD_OF)
                        .toList());
        return reading;
    }

    /** Where the answer goes, checked with the numbers of these options before a long run. */
    public Optional<AnswerFile> answerFile() {
        threads();
        seed();
        if (!WITH_PAGES.contains(command.name())) {
            format();
        }
        return file("--out", out);
    }

    /** A file that an option asks for, checked before a long run; empty for null. */
    public Optional<AnswerFile> file(String option, Path path) {
        return Optional.ofNullable(path).map(named -> outputs.file(option, named));
    }

    /** A folder for files of these names, checked before a long run. */
    public AnswerFolder folder(Path path, List<String> names) {
        return outputs.folder(path, names);
    }

    /** The same for names that what was read tells, none of which may be a file that was read. */
    public AnswerFolder folder(Path path, List<String> names, Reading reading) {
        AnswerFolder folder = outputs.folder(path, names);
        outputs.keep(reading);
        return folder;
    }

    /** Runs something long and tells how far it is. */
    public <T> T progressing(String what, int all, Function<Progress, T> run) {
        Progress progress = Progress.of(err(), what, all, quiet);
        try {
            return run.apply(progress);
        } finally {
            progress.close();
        }
    }

    public void answer(Optional<AnswerFile> file, String answer) {
        if (file.isPresent()) {
            file.get().write(answer);
            return;
        }
        PrintWriter writer = command.commandLine().getOut();
        writer.print(answer);
        writer.flush();
    }
}
