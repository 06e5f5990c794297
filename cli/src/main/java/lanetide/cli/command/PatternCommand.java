package lanetide.cli.command;

import java.util.concurrent.Callable;
import lanetide.cli.report.PatternCsv;
import lanetide.cli.report.PatternFacts;
import lanetide.cli.report.PatternJson;
import lanetide.cli.report.PatternText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says what a pattern is and what it means for play. */
@Command(
        name = "pattern",
        description = "What the pattern is and what it means for play: bands, tier, tapes, exit boards.",
        footer = {
            "",
            "Examples:",
            "  lanetide pattern scenarios/club-night.yaml",
            "  lanetide pattern scenarios/taped-lanes.yaml --units metric",
            "  lanetide pattern scenarios/championship.yaml --format json -o pattern.json",
            "  lanetide pattern scenarios/championship.yaml --format csv -o tapes.csv",
            "",
            "The csv form holds the tape readings, in the columns that a scenario's own tapes may have.",
            "Exit codes: 0 done; 2 wrong use, or a scenario with errors; 3 a file cannot be read or written."
        })
public final class PatternCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Override
    public Integer call() {
        return options.answer((reading, scenario) -> render(reading, scenario, PatternFacts.of(scenario)));
    }

    private String render(Reading reading, Scenario scenario, PatternFacts facts) {
        return switch (options.format()) {
            case TEXT -> PatternText.write(scenario, facts, options.metric());
            case JSON -> PatternJson.write(reading, facts);
            case CSV -> PatternCsv.write(facts);
        };
    }
}
