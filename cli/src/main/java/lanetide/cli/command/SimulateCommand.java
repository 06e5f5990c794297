package lanetide.cli.command;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import lanetide.cli.doubt.ScoreDoubts;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.MeasuredOption;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.ResumeOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.AnswerStream;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.Progress;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.simulate.LaneChoice;
import lanetide.cli.simulate.LanesCsv;
import lanetide.cli.simulate.PrecisionWords;
import lanetide.cli.simulate.SimulateJson;
import lanetide.cli.simulate.SimulateLogs;
import lanetide.cli.simulate.SimulateText;
import lanetide.cli.simulate.TeamTables;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Precision;
import lanetide.squads.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays the whole event and tells what to expect. */
@Command(
        name = "simulate",
        header = "Plays the whole event and tells what to expect",
        description = {
            "Gives the timetable, the pace, scores, the lanes game by game, exit windows and where the oil went. Scores and times are over all playings; lanes and oil are those of the first. "
                    + HelpText.BOARDS,
            "",
            HelpText.WHERE
        },
        exitCodeList = {
            HelpText.DONE,
            "1:done, and the half-width asked for is not reached",
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footer = {
            "  lanetide simulate scenarios/club-night.yaml",
            "  lanetide simulate scenarios/championship.yaml --lane 7 --units metric",
            "  lanetide simulate scenarios/club-night.yaml --until-halfwidth 0.5",
            "  lanetide simulate scenarios/club-night.yaml --format json -o all.json",
            "  lanetide simulate scenarios/club-night.yaml --format csv -o lanes.csv",
            "  lanetide simulate scenarios/one-pair.yaml --shot-log shots.csv",
            "  lanetide simulate scenarios/one-pair.yaml --resume playings.txt"
        })
public final class SimulateCommand implements Callable<Integer> {
    private static final int DEFAULT_REPLICATIONS = 40;
    private static final int DEFAULT_CAP = 1_000;
    private static final double MAX_PINS = 300;

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
            description =
                    "How often the event is played, with luck of its own each time, from 1 to 100000; with --until-halfwidth the most it is played, from 10 (default: 40; with --until-halfwidth 1000).")
    private Integer replications;

    @Option(
            names = "--until-halfwidth",
            paramLabel = "PINS",
            description =
                    "Play until the 95 %% interval of every squad's mean score is at most PINS to either side, above 0 and at most 300, at least 10 times, with the usual values (default: --replications alone decides).")
    private Double halfWidthPins;

    @Option(
            names = "--shot-log",
            paramLabel = "FILE",
            description =
                    "Also write every ball of the playing that stands as the example to FILE, one CSV row each; cli/README.md tells its columns (default: none is written).")
    private Path shotLog;

    @Option(
            names = "--team-table",
            paramLabel = "FILE",
            description =
                    "Also write how doubles, trios and teams stand over all playings to FILE, one CSV row each (default: none is written).")
    private Path teamTable;

    @Option(
            names = "--trace",
            paramLabel = "FILE",
            description =
                    "Also write every event of the playing that stands as the example to FILE, as text, or as JSON lines where FILE ends in .jsonl (default: none is written).")
    private Path trace;

    @Option(
            names = "--lane",
            paramLabel = "N",
            description = "In text, show lane N game by game, one of the scenario's lanes (default: none).")
    private Integer lane;

    @Option(names = "--all-lanes", description = "In text, show every lane game by game.")
    private boolean allLanes;

    @Override
    public Integer call() {
        Playings playings = playings();
        resuming.check(options);
        Optional<AnswerFile> shotFile = options.file("--shot-log", shotLog);
        Optional<AnswerFile> traceFile = options.file("--trace", trace);
        Optional<AnswerFile> teamFile = options.file("--team-table", teamTable);
        AtomicBoolean met = new AtomicBoolean(true);
        int code = options.answer((found, ignored) -> {
            Reading reading = new OnTheDay(options, measured, changes).corrected(found);
            Scenario scenario = reading.scenario().orElseThrow();
            LaneChoice choice = choice(scenario);
            requireTeams(scenario);
            StudyResult study = resuming.playing(
                    options, List.of(reading), execution -> play(scenario, playings, execution, shotFile, traceFile));
            teamFile.ifPresent(file -> file.write(TeamTables.csv(study)));
            met.set(study.precision().map(Precision::met).orElse(true));
            study.precision().filter(precision -> !precision.met()).ifPresent(this::tellNotReached);
            Reading judged = options.doubting(ScoreDoubts.told(reading, study));
            return render(judged, judged.scenario().orElseThrow(), study, choice);
        });
        return code == ExitCode.DONE && !met.get() ? ExitCode.CONDITION_FAILS : code;
    }

    private Playings playings() {
        if (halfWidthPins == null) {
            int number = replications == null ? DEFAULT_REPLICATIONS : replications;
            OptionCheck.requireReplications(number, 1);
            return Playings.fixed(number);
        }
        if (resuming.inParts()) {
            throw CommandFailure.wrongUse("--part has no share of --until-halfwidth, whose number of playings hangs on"
                    + " what they give; give --replications.");
        }
        int most = replications == null ? DEFAULT_CAP : replications;
        OptionCheck.requireReplications(most, Playings.MIN_UNTIL);
        OptionCheck.requirePositive(
                "--until-halfwidth", halfWidthPins, MAX_PINS, (int) MAX_PINS + " pins, such as 0.5.");
        return new Playings(most, OptionalDouble.of(halfWidthPins));
    }

    private void tellNotReached(Precision precision) {
        options.err().println("lanetide: " + PrecisionWords.notReached(precision));
        options.err().flush();
    }

    private void requireTeams(Scenario scenario) {
        if (teamTable != null && new Teams(scenario.event()).names().isEmpty()) {
            throw CommandFailure.wrongUse("--team-table: the entries of this scenario name no `partners`.");
        }
    }

    private LaneChoice choice(Scenario scenario) {
        if (lane == null) {
            return new LaneChoice(allLanes, OptionalInt.empty());
        }
        if (!scenario.event().centre().laneNumbers().contains(lane)) {
            throw CommandFailure.wrongUse(
                    "--lane is " + lane + ", which is no lane of this scenario; see `lanetide check "
                            + options.scenario() + "` for its lanes.");
        }
        return new LaneChoice(allLanes, OptionalInt.of(lane));
    }

    private StudyResult play(
            Scenario scenario,
            Playings playings,
            Execution execution,
            Optional<AnswerFile> shotFile,
            Optional<AnswerFile> traceFile) {
        Progress progress = Progress.of(options.err(), "playings", playings.most(), options.quiet());
        try (SimulateLogs logs = SimulateLogs.open(shotFile, traceFile)) {
            PossibleEvents events =
                    new PossibleEvents(scenario.withFinals(), halfWidthPins == null ? sets.of(playings.most()) : 1);
            StudyResult study =
                    EventStudy.run(events, scenario.seed(), playings, execution, progress, logs.observers());
            logs.commit();
            return study;
        } catch (UncheckedIOException e) {
            throw AnswerStream.trouble(e);
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
