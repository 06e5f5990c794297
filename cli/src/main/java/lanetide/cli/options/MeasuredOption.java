package lanetide.cli.options;

import java.nio.file.Path;
import java.util.List;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ScenarioFile;
import lanetide.cli.scenario.MeasuredBeside;
import lanetide.cli.scenario.Reading;
import picocli.CommandLine.Option;

/** Tables of what was measured at the event, beside those that the scenario names. */
public final class MeasuredOption {
    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description =
                    "CSV table of what was measured at the event: tapes, balls followed to the pins, or scores. May be given several times; adds to what the scenario names (default: that alone).")
    private List<Path> files = List.of();

    /**
     * Whether tables are named.
     *
     * @return true if the option is given
     */
    public boolean isGiven() {
        return !files.isEmpty();
    }

    /**
     * What was named.
     *
     * @return the files in the order in which they were named
     */
    public List<Path> files() {
        return List.copyOf(files);
    }

    /**
     * Reads the tables and tells on standard error what is wrong in them, as of a scenario. No output may replace one
     * of them.
     *
     * @param options the command's, which know its outputs
     * @param reading a scenario without errors
     * @return the same with all that was measured
     * @throws CommandFailure if a table cannot be read or has errors, or would be written over
     */
    public Reading read(CommonOptions options, Reading reading) {
        List<MeasuredBeside> tables = files.stream()
                .map(file -> new MeasuredBeside(file, ScenarioFile.table(file)))
                .toList();
        Reading all = MeasuredBeside.add(reading, tables);
        options.keep(all);
        options.tell(
                "What --measured names:",
                options.scenario(),
                all.notices().subList(reading.notices().size(), all.notices().size()));
        if (all.scenario().isEmpty()) {
            throw CommandFailure.wrongUse("The tables that --measured names have errors; see above.");
        }
        return all;
    }
}
