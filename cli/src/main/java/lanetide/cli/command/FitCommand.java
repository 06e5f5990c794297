package lanetide.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import lanetide.cli.doubt.Unanswered;
import lanetide.cli.fit.CentreFileAsJson;
import lanetide.cli.fit.FitAnswer;
import lanetide.cli.fit.FitChanges;
import lanetide.cli.fit.FitCsv;
import lanetide.cli.fit.FitJson;
import lanetide.cli.fit.FitText;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.MeasuredOption;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.cli.scenario.centre.PatternMark;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fit.Fit;
import lanetide.squads.fit.FitDay;
import lanetide.squads.fit.FitPlan;
import lanetide.squads.fit.FitResult;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilStudy;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.StudyResult;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits what is not known to what was measured. */
@Command(
        name = "fit",
        header = "Tells whether the model agrees with your tapes, and fits it to them",
        description = {
            "Takes what was measured at an event (tapes, balls followed to the pins, scores), tells whether the machine laid what the sheet says, whether the model expected the readings, which of them do not belong, and what they teach of what nobody has measured. The scenario's key measured names the tables, or --measured does.",
            "With --centre it writes a centre file. A scenario that names it by the key fitted of its centre is played by every command as these lanes are.",
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
            "  lanetide fit scenarios/measured-night.yaml --centre lanes.json",
            "  lanetide fit scenarios/one-pair.yaml --measured tapes.csv",
            "  lanetide fit monday.yaml --day tuesday.yaml --centre lanes.json"
        })
public final class FitCommand implements Callable<Integer> {
    /** How often the event is played with and without the fit. */
    private static final int PLAYINGS = 40;

    /** How often lanes are played down with and without it to find when to oil again. */
    private static final int OILINGS = 12;

    @Mixin
    private CommonOptions options;

    @Mixin
    private MeasuredOption measured;

    @Option(
            names = "--day",
            paramLabel = "SCENARIO",
            description =
                    "Scenario of another day on the same lanes, with what was measured then. May be given several times; the order changes nothing (default: none).")
    private List<Path> others = List.of();

    @Option(
            names = "--centre",
            paramLabel = "FILE",
            description =
                    "Also write a centre file to FILE, for scenarios to name: what was measured, and the sets of values that it leaves (default: none is written).")
    private Path centre;

    @Override
    public Integer call() {
        Optional<AnswerFile> centreFile = options.file("--centre", centre);
        return options.answer((found, ignored) -> {
            Reading reading = measured.read(options, found);
            Scenario scenario = reading.scenario().orElseThrow();
            List<Scenario> days = days(scenario);
            FitResult result = fit(days);
            FitAnswer answer = new FitAnswer(reading, days, result, Optional.of(changes(scenario, result)));
            centreFile.ifPresent(file -> file.write(CentreFileAsJson.write(file(answer))));
            return render(answer);
        });
    }

    /** All days in an order of their own, so that the order in which they are named changes nothing. */
    private List<Scenario> days(Scenario first) {
        List<Scenario> days = new ArrayList<>(List.of(first));
        others.forEach(other ->
                days.add(options.other(other, options.seed()).scenario().orElseThrow()));
        days.forEach(FitCommand::requireMeasured);
        for (int day = 1; day < days.size(); day++) {
            requireOther(days.get(day), days.subList(0, day));
        }
        days.sort(Comparator.comparing(Scenario::sha256).thenComparing(Scenario::file));
        return days;
    }

    private static void requireMeasured(Scenario day) {
        if (day.measurements().isEmpty()) {
            throw CommandFailure.wrongUse("Nothing was measured at " + day.file()
                    + ": name tables with its key measured, or with --measured FILE. A table of tapes has the"
                    + " columns lane, distance, board, units, squad, after.");
        }
        Unanswered.byFit(day).ifPresent(why -> {
            throw CommandFailure.wrongUse(why);
        });
    }

    /** What was read once counts once. */
    private static void requireOther(Scenario day, List<Scenario> before) {
        for (Scenario other : before) {
            if (day.sha256().equals(other.sha256()) && day.measurements().equals(other.measurements())) {
                throw CommandFailure.wrongUse(
                        day.file() + " is the same day as " + other.file() + "; name each day once.");
            }
        }
    }

    /** By the seed of the first of them. */
    private FitResult fit(List<Scenario> days) {
        List<FitDay> fitted = days.stream()
                .map(day -> new FitDay(day.event(), day.measurements()))
                .toList();
        List<ValueSet> prior = ValueSets.shipped();
        FitPlan plan = new FitPlan(days.get(0).seed(), options.threads());
        return options.progressing(
                "playings", Fit.playings(prior.size(), days.size(), plan), told -> Fit.run(fitted, prior, plan, told));
    }

    /** The event as published facts leave it, and as it was fitted. */
    private FitChanges changes(Scenario scenario, FitResult result) {
        Event event = scenario.event();
        Findings fitted = new Findings(
                result.sets(), event.onFreshOil(scenario.measurements().tapes()), List.of());
        ReoilPlan oiling = Studies.reoilPlan(scenario, OILINGS, ReoilPlan.DEFAULT_GAMES);
        int each = PLAYINGS + ReoilStudy.playings(oiling);
        return options.progressing(
                "playings with and without the fit",
                2 * each,
                done -> new FitChanges(
                        told(event.in(event.centre().with(Findings.NONE)), oiling, done),
                        told(event.in(event.centre().with(fitted)), oiling, more -> done.accept(each + more))));
    }

    private FitChanges.Told told(Event event, ReoilPlan oiling, IntConsumer done) {
        PossibleEvents events = new PossibleEvents(event, ValueSets.inStudy(PLAYINGS));
        Execution execution = Execution.on(options.threads());
        StudyResult played =
                EventStudy.run(events, oiling.seed(), Playings.fixed(PLAYINGS), execution, done, Observers.NONE);
        return new FitChanges.Told(
                played,
                ReoilStudy.run(
                        events.amongFirst(ValueSets.inStudy(OILINGS)),
                        oiling,
                        execution,
                        more -> done.accept(PLAYINGS + more)));
    }

    private CentreFile file(FitAnswer answer) {
        List<CentreFile.Day> days = answer.days().stream()
                .map(day -> new CentreFile.Day(
                        day.fileName(),
                        day.sha256(),
                        day.event().name(),
                        PatternMark.of(day.event().pattern()),
                        day.measurements(),
                        day.event().onFreshOil(day.measurements().tapes())))
                .toList();
        return new CentreFile(
                ValueSets.mark(), refit(answer), days, answer.result().sets());
    }

    /**
     * The command that makes the file again, in the folder of the scenarios; what --measured names belongs to the
     * first.
     */
    private String refit(FitAnswer answer) {
        List<Scenario> order = new ArrayList<>(answer.days());
        if (!measured.files().isEmpty()) {
            order.removeIf(day -> day.file().equals(answer.scenario().file()));
            order.add(0, answer.scenario());
        }
        List<String> words =
                new ArrayList<>(List.of("lanetide fit", order.get(0).fileName()));
        measured.files().forEach(file -> words.add("--measured " + file.getFileName()));
        order.subList(1, order.size()).forEach(day -> words.add("--day " + day.fileName()));
        options.seed().ifPresent(seed -> words.add("--seed " + seed));
        words.add("--centre " + centre.getFileName());
        return String.join(" ", words);
    }

    private String render(FitAnswer answer) {
        return switch (options.format()) {
            case TEXT -> FitText.write(answer, options.metric());
            case JSON -> FitJson.write(answer);
            case CSV -> FitCsv.write(answer.result());
        };
    }
}
