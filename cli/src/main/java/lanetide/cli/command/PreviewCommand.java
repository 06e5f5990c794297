package lanetide.cli.command;

import java.util.concurrent.Callable;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.MeasuredOption;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.PlaceOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.page.BowlerPage;
import lanetide.cli.preview.Preview;
import lanetide.cli.preview.PreviewCsv;
import lanetide.cli.preview.PreviewJson;
import lanetide.cli.preview.PreviewStudy;
import lanetide.cli.preview.PreviewText;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells a bowler what he will meet on his pairs, game by game. */
@Command(
        name = "preview",
        header = "Tells what you will meet on your pairs, game by game",
        description = {
            "Tells of every game the exit window, where to start, when to move and which way, when to change the ball, how sure this is, and what to watch in practice. Name yourself with --bowler, or the pair you start on with --pair. "
                    + HelpText.BOARDS,
            "",
            "As a page (--format html) it is made for a phone and for print. Of bowlers in a list of entries only the balls listed are advised.",
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
            "  lanetide preview scenarios/one-pair.yaml --pair 1-2 --format html",
            "  lanetide preview scenarios/one-pair.yaml --bowler Leadoff",
            "  lanetide preview scenarios/club-night.yaml --pair 3-4 --style power",
            "  lanetide preview scenarios/championship.yaml --squad C --pair 7-8"
        })
public final class PreviewCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private MeasuredOption measured;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private PlaceOptions places;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the event is played, with luck of its own each time, from 1 to 100000 (default: 40).")
    private int replications;

    @Override
    public Integer call() {
        OptionCheck.requireReplications(replications, 1);
        int threads = options.threads();
        return options.answer((found, ignored) -> {
            Reading reading = new OnTheDay(options, measured, changes).corrected(found);
            Scenario scenario = reading.scenario().orElseThrow();
            PlaceOptions.Chosen chosen = places.choose(scenario);
            return render(reading, scenario, chosen, play(scenario, chosen, threads));
        });
    }

    private Preview play(Scenario scenario, PlaceOptions.Chosen chosen, int threads) {
        return options.progressing(
                "playings",
                replications,
                progress -> PreviewStudy.run(
                        scenario,
                        sets.of(replications),
                        chosen.place(),
                        chosen.kind(),
                        replications,
                        threads,
                        progress));
    }

    private String render(Reading reading, Scenario scenario, PlaceOptions.Chosen chosen, Preview preview) {
        if (options.page()) {
            return BowlerPage.write(reading, preview, chosen.drawn());
        }
        return switch (options.format()) {
            case TEXT -> PreviewText.write(scenario, preview, chosen.drawn());
            case JSON -> PreviewJson.write(reading, preview, chosen.drawn());
            case CSV -> PreviewCsv.write(preview);
        };
    }
}
