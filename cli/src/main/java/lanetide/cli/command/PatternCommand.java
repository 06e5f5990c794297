package lanetide.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.PatternOption;
import lanetide.cli.pattern.PatternCsv;
import lanetide.cli.pattern.PatternFacts;
import lanetide.cli.pattern.PatternJson;
import lanetide.cli.pattern.PatternText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says what a pattern is and what it means for play. */
@Command(
        name = "pattern",
        header = "Tells what the pattern is and what it means for play",
        description = {
            "Tells its bands of length and volume, its tier by ratio, what tapes would read, what that means for play, and the exit boards by rule and by model. The csv form holds the tape readings, in the columns that a scenario's own tapes may have.",
            "",
            HelpText.WHERE
        },
        exitCodeList = {HelpText.DONE, HelpText.WRONG_SCENARIO, HelpText.FILE_TROUBLE},
        footer = {
            "  lanetide pattern scenarios/club-night.yaml",
            "  lanetide pattern scenarios/taped-lanes.yaml --units metric",
            "  lanetide pattern scenarios/one-pair.yaml --format json -o sheet.json",
            "  lanetide pattern scenarios/one-pair.yaml --format csv -o tapes.csv"
        })
public final class PatternCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private PatternOption pattern;

    @Override
    public Integer call() {
        return options.answer((reading, scenario) -> render(reading, pattern.chosen(scenario)));
    }

    private String render(Reading reading, List<Scenario> chosen) {
        return switch (options.format()) {
            case TEXT ->
                chosen.stream()
                        .map(each -> PatternText.write(each, PatternFacts.of(each), options.metric()))
                        .collect(Collectors.joining("\n"));
            case JSON ->
                PatternJson.write(reading, chosen.stream().map(PatternFacts::of).toList());
            case CSV -> PatternCsv.write(PatternFacts.of(PatternOption.only(chosen)));
        };
    }
}
