package lanetide.cli.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lanetide.cli.compare.CompareCsv;
import lanetide.cli.compare.CompareJson;
import lanetide.cli.compare.CompareText;
import lanetide.cli.doubt.ScoreDoubts;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.ResumeOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.Compared;
import lanetide.squads.fairness.Difference;
import lanetide.squads.fairness.EventComparison;
import lanetide.squads.study.Execution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two scenarios under the same luck. */
@Command(
        name = "compare",
        header = "Plays two scenarios with the same luck and tells what differs",
        description = {
            "Tells how the plans differ, what differs in play, by how much, and whether it is real. Both are played with the seed of the first, and bowlers of the same squad and name have the same luck.",
            "",
            HelpText.WHERE
        },
        exitCodeList = {
            HelpText.DONE,
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footer = {
            "  lanetide compare scenarios/club-night.yaml my-night.yaml",
            "  lanetide compare scenarios/club-night.yaml my-night.yaml -o diff.txt",
            "  lanetide compare scenarios/club-night.yaml scenarios/taped-lanes.yaml"
        })
public final class CompareCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private ResumeOptions resuming;

    @Parameters(
            index = "1",
            paramLabel = "OTHER",
            description = "Scenario file (YAML) to compare the first with. Required.")
    private Path other;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "40",
            description = "How often each is played, with the same luck in both, from 2 to 100000 (default: 40).")
    private int replications;

    @Override
    public Integer call() {
        OptionCheck.requireReplications(replications, 2);
        resuming.check(options);
        return options.answer((reading, scenario) -> {
            Reading against = options.other(other, OptionalLong.of(scenario.seed()));
            Scenario second = against.scenario().orElseThrow();
            List<Difference> differences = resuming.playing(
                    options, List.of(reading, against), execution -> compare(scenario, second, execution));
            Reading judged = options.doubting(ScoreDoubts.told(reading, means(differences)));
            return render(judged, judged.scenario().orElseThrow(), second, differences);
        });
    }

    private static Map<String, Double> means(List<Difference> differences) {
        Map<String, Double> means = new LinkedHashMap<>();
        differences.stream()
                .filter(difference -> difference.compared() == Compared.MEAN_SCORE)
                .forEach(difference -> {
                    means.put("the first", difference.a());
                    means.put("the second", difference.b());
                });
        return means;
    }

    private List<Difference> compare(Scenario first, Scenario second, Execution execution) {
        return options.progressing(
                "playings",
                2 * replications,
                progress -> EventComparison.run(
                        first.event(),
                        second.event(),
                        sets.of(replications),
                        first.seed(),
                        replications,
                        execution,
                        progress));
    }

    private String render(Reading reading, Scenario first, Scenario second, List<Difference> differences) {
        return switch (options.format()) {
            case TEXT ->
                CompareText.write(first, second, replications, sets.of(replications), differences, options.metric());
            case JSON -> CompareJson.write(reading, second, replications, sets.of(replications), differences);
            case CSV -> CompareCsv.write(differences);
        };
    }
}
