package lanetide.cli.command;

import java.util.concurrent.Callable;
import lanetide.cli.report.ReoilCsv;
import lanetide.cli.report.ReoilJson;
import lanetide.cli.report.ReoilText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.recondition.ReoilStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells when to oil again. */
@Command(
        name = "reoil",
        description = "When to oil again: after how many games on a pair, why, at what price, and how sure that is.",
        footer = {
            "",
            "Examples:",
            "  lanetide reoil scenarios/championship.yaml",
            "  lanetide reoil scenarios/club-night.yaml --games 40 --replications 50",
            "  lanetide reoil scenarios/championship.yaml --format csv -o curve.csv",
            "",
            "A game is that of a group on a pair. Costs are set by the scenario's `costs`; without them they are assumed.",
            "Exit codes: 0 done; 2 wrong use, or a scenario with errors; 3 a file cannot be read or written;",
            "130 interrupted."
        })
public final class ReoilCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description = "How often the lanes are played down, with luck of its own each time (default: 20).")
    private int replications;

    @Option(
            names = "--games",
            paramLabel = "N",
            defaultValue = "24",
            description = "Oldest oil looked at, in games that a pair has seen (default: 24).")
    private int games;

    @Override
    public Integer call() {
        OptionCheck.requireRange(
                "--replications", replications, ReoilPlan.FEWEST_REPLICATIONS, ReoilPlan.MOST_REPLICATIONS);
        OptionCheck.requireRange("--games", games, 2, ReoilPlan.MOST_GAMES);
        int threads = options.threads();
        return options.answer((reading, scenario) -> render(reading, scenario, study(scenario, threads)));
    }

    private ReoilResult study(Scenario scenario, int threads) {
        ReoilPlan plan = new ReoilPlan(
                scenario.seed(),
                replications,
                games,
                scenario.policy().marginPins().orElse(FairnessPlan.USUAL_MARGIN_PINS),
                scenario.policy().limitBoards(),
                scenario.policy().costs());
        return options.progressing(
                "playings",
                ReoilStudy.playings(plan),
                progress -> ReoilStudy.run(scenario.event(), plan, threads, progress));
    }

    private String render(Reading reading, Scenario scenario, ReoilResult result) {
        return switch (options.format()) {
            case TEXT -> ReoilText.write(scenario, result);
            case JSON -> ReoilJson.write(reading, result);
            case CSV -> ReoilCsv.write(result.curve());
        };
    }
}
