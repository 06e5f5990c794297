package lanetide.cli.command;

import java.util.OptionalInt;
import java.util.concurrent.Callable;
import lanetide.cli.report.LaneChoice;
import lanetide.cli.report.LanesCsv;
import lanetide.cli.report.SimulateJson;
import lanetide.cli.report.SimulateText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.play.EventStudy;
import lanetide.squads.play.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays the whole event and tells what to expect. */
@Command(
        name = "simulate",
        description = "Plays the whole event: timetable, scores, lanes game by game, exit windows, oil account.",
        footer = {
            "",
            "Examples:",
            "  lanetide simulate scenarios/club-night.yaml",
            "  lanetide simulate scenarios/championship.yaml --lane 7 --units metric",
            "  lanetide simulate scenarios/championship.yaml --replications 100 --format json -o answer.json",
            "  lanetide simulate scenarios/club-night.yaml --format csv -o lanes.csv",
            "",
            "Boards are counted from the bowler's own gutter.",
            "Exit codes: 0 done; 2 wrong use, or a scenario with errors; 3 a file cannot be read or written;",
            "130 interrupted."
        })
public final class SimulateCommand implements Callable<Integer> {
    static final int MOST_REPLICATIONS = 100_000;

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description =
                    "How often the event is played, with luck of its own each time (default: 20). Scores are over all"
                            + " of them; timetable, lanes and oil are those of the first.")
    private int replications;

    @Option(names = "--lane", paramLabel = "N", description = "Show lane N game by game, in text.")
    private Integer lane;

    @Option(names = "--all-lanes", description = "Show every lane game by game, in text.")
    private boolean allLanes;

    @Override
    public Integer call() {
        CommonOptions.requireRange("--replications", replications, 1, MOST_REPLICATIONS);
        int threads = options.threads();
        return options.answer((reading, scenario) -> {
            LaneChoice choice = choice(scenario);
            return render(reading, scenario, play(scenario, threads), choice);
        });
    }

    private LaneChoice choice(Scenario scenario) {
        if (lane == null) {
            return new LaneChoice(allLanes, OptionalInt.empty());
        }
        boolean known = scenario.event().centre().pairs().stream()
                .anyMatch(pair -> pair.left() == lane || pair.right() == lane);
        if (!known) {
            throw CommandFailure.wrongUse(
                    "--lane is " + lane + ", which is no lane of this scenario; see `lanetide check "
                            + options.scenario() + "` for its lanes.");
        }
        return new LaneChoice(allLanes, OptionalInt.of(lane));
    }

    private StudyResult play(Scenario scenario, int threads) {
        Progress progress = Progress.of(options.err(), "playings", replications, options.quiet());
        try {
            return EventStudy.run(scenario.event(), scenario.seed(), replications, threads, progress);
        } finally {
            progress.close();
        }
    }

    private String render(Reading reading, Scenario scenario, StudyResult study, LaneChoice choice) {
        return switch (options.format()) {
            case TEXT -> SimulateText.write(scenario, study, choice, options.metric());
            case JSON -> SimulateJson.write(reading, study);
            case CSV -> LanesCsv.write(study.first().lanes());
        };
    }
}
