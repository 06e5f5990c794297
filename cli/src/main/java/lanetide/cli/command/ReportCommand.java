package lanetide.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import lanetide.cli.doubt.ScoreDoubts;
import lanetide.cli.doubt.Unanswered;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.Format;
import lanetide.cli.options.MeasureOption;
import lanetide.cli.options.MeasuredOption;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.ResumeOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.output.AnswerFolder;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.page.BowlerPages;
import lanetide.cli.page.FilmReel;
import lanetide.cli.page.PageAnswers;
import lanetide.cli.page.PageModel;
import lanetide.cli.page.ReportPage;
import lanetide.cli.preview.Preview;
import lanetide.cli.preview.PreviewStudy;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.Verdict;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.study.StudyResult;
import lanetide.squads.watch.Observers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Puts the whole answer on one page for a browser. */
@Command(
        name = "report",
        header = "Puts the whole answer on one page for a browser",
        description = {
            "The page tells verdict, timetable, fairness, when to oil again, scores, the lanes from above game by game, exit windows and the rotation. It is one file that needs no network: send it, open it, print it.",
            "",
            "The page (HTML) goes to standard output, or to FILE with --out. Progress, warnings and failures go to standard error."
        },
        exitCodeList = {
            HelpText.DONE,
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footer = {
            "  lanetide report scenarios/club-night.yaml -o page.html",
            "  lanetide report scenarios/one-pair.yaml --units metric -o metric.html"
        })
public final class ReportCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private ResumeOptions resuming;

    @Mixin
    private MeasuredOption measured;

    @Mixin
    private ChangeOptions changes;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the event is played, with luck of its own each time, from 1 to 100000; lanes are those of one with the usual values (default: 40).")
    private int replications;

    @Option(
            names = "--fairness",
            paramLabel = "N",
            defaultValue = "100",
            description =
                    "How often the event is played at most to judge its fairness, from 0 to 100000, and two rounds of changed seats at least; 0 leaves that out (default: 100).")
    private int fairness;

    @Option(
            names = "--remedies",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the event is played with each change that could make it fairer, if all got the same, unless it is fair; from 0 to 100000, 0 leaves that out (default: 40).")
    private int remedies;

    @Option(
            names = "--reoil",
            paramLabel = "N",
            defaultValue = "8",
            description =
                    "How often the lanes are played down to find when to oil again, from 4 to 100000; 0 leaves that out (default: 8).")
    private int reoil;

    @Mixin
    private MeasureOption measuring;

    @Option(
            names = "--bowlers",
            paramLabel = "FOLDER",
            description =
                    "Write a page for every bowler too, as preview would with --format html, into FOLDER, and lead to it from this page, which needs --out (default: none).")
    private Path bowlers;

    @Override
    public Integer call() {
        OptionCheck.requireRange("--fairness", fairness, 0, OptionCheck.MAX_REPLICATIONS);
        OptionCheck.requireRange("--remedies", remedies, 0, OptionCheck.MAX_REPLICATIONS);
        if (reoil != 0) {
            OptionCheck.requireRange("--reoil", reoil, ReoilPlan.MIN_REPLICATIONS, OptionCheck.MAX_REPLICATIONS);
        }
        OptionCheck.requireReplications(replications, 1);
        if (options.format() != Format.TEXT) {
            throw CommandFailure.wrongUse(
                    "report writes a page; for json or csv use `lanetide simulate " + options.scenario() + "`.");
        }
        if (bowlers != null && options.out().isEmpty()) {
            throw CommandFailure.wrongUse("--bowlers needs --out: the page leads to files that lie beside it.");
        }
        resuming.check(options);
        return options.answer((found, ignored) -> {
            Reading reading = new OnTheDay(options, measured, changes).corrected(found);
            Scenario scenario = reading.scenario().orElseThrow();
            if (bowlers == null) {
                return played(reading, scenario, List.of());
            }
            AnswerFolder folder = options.folder(bowlers, BowlerPages.names(scenario.event()), found);
            String page = played(
                    reading,
                    scenario,
                    BowlerPages.links(scenario.event(), options.out().orElseThrow(), bowlers));
            folder.write(BowlerPages.write(reading, previews(scenario)));
            return page;
        });
    }

    private List<Preview> previews(Scenario scenario) {
        int squads = scenario.event().squads().size();
        return options.progressing(
                "playings for bowlers",
                squads * replications,
                told -> IntStream.range(0, squads)
                        .mapToObj(squad -> PreviewStudy.ofSquad(
                                scenario,
                                sets.of(replications),
                                squad,
                                replications,
                                options.threads(),
                                done -> told.accept(squad * replications + done)))
                        .flatMap(List::stream)
                        .toList());
    }

    private String played(Reading reading, Scenario scenario, List<PageModel.SquadLinks> links) {
        return resuming.playing(
                options,
                List.of(reading),
                execution -> page(reading, new Studies(options, scenario, sets, execution), links));
    }

    private String page(Reading reading, Studies studies, List<PageModel.SquadLinks> links) {
        FilmReel reel = new FilmReel();
        StudyResult study = studies.event(replications, Observers.of(reel));
        Optional<FairnessAnswer> fair = fairness(studies).map(result -> answer(studies, result));
        Optional<ReoilResult> oiling =
                reoil == 0 || Unanswered.byReoil(studies.scenario()).isPresent()
                        ? Optional.empty()
                        : Optional.of(studies.reoil("playings for oiling", reoil, ReoilPlan.DEFAULT_GAMES));
        return ReportPage.write(
                options.doubting(ScoreDoubts.told(reading, study)),
                new PageAnswers(study, fair, oiling),
                reel,
                options.metric(),
                links);
    }

    private Optional<FairnessResult> fairness(Studies studies) {
        Event event = studies.scenario().event();
        if (fairness == 0 || !FairnessStudy.hasSeatsToChange(event)) {
            return Optional.empty();
        }
        int playings = Math.max(fairness, FairnessStudy.fewestPlayings(event));
        return Optional.of(studies.fairness("playings for fairness", playings, studies.marginPins(), true));
    }

    private FairnessAnswer answer(Studies studies, FairnessResult result) {
        return new FairnessAnswer(
                result,
                Optional.empty(),
                remedies(studies, result),
                measuring.isWanted() ? studies.whatToMeasure(result) : Optional.empty(),
                Optional.empty(),
                studies.wear(result),
                false);
    }

    private List<Remedy> remedies(Studies studies, FairnessResult result) {
        return remedies == 0 || result.verdict() == Verdict.FAIR
                ? List.of()
                : studies.remedies(result, Set.of(), remedies);
    }
}
