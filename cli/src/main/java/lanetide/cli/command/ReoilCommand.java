package lanetide.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanetide.cli.doubt.Unanswered;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.ResumeOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.reoil.ReoilCsv;
import lanetide.cli.reoil.ReoilJson;
import lanetide.cli.reoil.ReoilText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.recondition.OilingSchedules;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells when to oil again. */
@Command(
        name = "reoil",
        header = "Tells when to oil again, at what price, and how sure that is",
        description = {
            "Tells after how many games to oil again by cost, by threshold, by age and by condition, and shows the curve behind it. A game is that of a group on a pair; the scenario's breaks, changes and incidents are left out. Costs are set by the scenario's key costs; without it they are assumed, and the answer says so.",
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
            "  lanetide reoil scenarios/club-night.yaml",
            "  lanetide reoil scenarios/one-pair.yaml --games 30 --replications 10",
            "  lanetide reoil scenarios/club-final.yaml --format csv -o curve.csv"
        })
public final class ReoilCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private ResumeOptions resuming;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the lanes are played down, with luck of its own each time, from 4 to 100000 (default: 40).")
    private int replications;

    @Option(
            names = "--games",
            paramLabel = "N",
            defaultValue = "24",
            description = "Oldest oil looked at, in games that a pair has seen, from 2 to 100 (default: 24).")
    private int games;

    @Option(
            names = "--oilings",
            paramLabel = "N",
            description =
                    "Also tells before which squads to oil if lanes are oiled once, twice, ... N times in the event, from 1 to 100, and which squad pays for it. The event is played from each of its squads on, so this takes longer (default: not looked at).")
    private Integer oilings;

    @Override
    public Integer call() {
        OptionCheck.requireRange(
                "--replications", replications, ReoilPlan.MIN_REPLICATIONS, ReoilPlan.MAX_REPLICATIONS);
        OptionCheck.requireRange("--games", games, 2, ReoilPlan.MAX_GAMES);
        if (oilings != null) {
            OptionCheck.requireRange("--oilings", oilings, 1, OilingSchedules.MAX_OILINGS);
        }
        resuming.check(options);
        return options.answer((reading, scenario) -> {
            Unanswered.byReoil(scenario).ifPresent(why -> {
                throw CommandFailure.wrongUse(why);
            });
            return resuming.playing(options, List.of(reading), execution -> {
                Studies studies = new Studies(options, scenario, sets, execution);
                ReoilResult result = studies.reoil("playings", replications, games);
                return render(
                        reading,
                        scenario,
                        result,
                        Optional.ofNullable(oilings).map(most -> studies.schedules(replications, most)));
            });
        });
    }

    private String render(Reading reading, Scenario scenario, ReoilResult result, Optional<OilingSchedules> schedules) {
        return switch (options.format()) {
            case TEXT -> ReoilText.write(scenario, result, schedules);
            case JSON -> ReoilJson.write(reading, result, schedules);
            case CSV -> ReoilCsv.write(result.curve());
        };
    }
}
