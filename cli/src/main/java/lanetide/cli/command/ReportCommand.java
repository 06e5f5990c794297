package lanetide.cli.command;

import java.util.concurrent.Callable;
import lanetide.cli.report.page.FilmReel;
import lanetide.cli.report.page.ReportPage;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.play.EventStudy;
import lanetide.squads.play.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Puts the whole answer on one page for a browser. */
@Command(
        name = "report",
        description =
                "The whole answer on one page for a browser: verdict, timetable, scores, lanes, windows, rotation.",
        footer = {
            "",
            "Examples:",
            "  lanetide report scenarios/club-night.yaml -o page.html",
            "  lanetide report scenarios/championship.yaml --replications 50 --units metric -o page.html",
            "",
            "The page is one file that needs no network: send it, open it, print it.",
            "Exit codes: 0 done; 2 wrong use, or a scenario with errors; 3 a file cannot be read or written;",
            "130 interrupted."
        })
public final class ReportCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description =
                    "How often the event is played, with luck of its own each time (default: 20). Lanes are those of"
                            + " the first playing.")
    private int replications;

    @Override
    public Integer call() {
        CommonOptions.requireRange("--replications", replications, 1, SimulateCommand.MOST_REPLICATIONS);
        if (options.format() != Format.TEXT) {
            throw CommandFailure.wrongUse(
                    "report writes a page; for json or csv use `lanetide simulate " + options.scenario() + "`.");
        }
        int threads = options.threads();
        return options.answer((reading, scenario) -> page(reading, scenario, threads));
    }

    private String page(Reading reading, Scenario scenario, int threads) {
        FilmReel reel = new FilmReel();
        Progress progress = Progress.of(options.err(), "playings", replications, options.quiet());
        try {
            StudyResult study =
                    EventStudy.run(scenario.event(), scenario.seed(), replications, threads, progress, reel);
            return ReportPage.write(reading, study, reel, options.metric());
        } finally {
            progress.close();
        }
    }
}
