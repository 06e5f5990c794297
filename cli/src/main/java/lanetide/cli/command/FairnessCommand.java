package lanetide.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import lanetide.cli.doubt.ScoreDoubts;
import lanetide.cli.doubt.Unanswered;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.fairness.FairnessCsv;
import lanetide.cli.fairness.FairnessJson;
import lanetide.cli.fairness.FairnessText;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.Format;
import lanetide.cli.options.MeasureOption;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.ResumeOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ExitCode;
import lanetide.cli.page.ProtestPage;
import lanetide.cli.rotate.LateChanges;
import lanetide.cli.rotate.RotationNote;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.FairnessComparison;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.Verdict;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.model.Event;
import lanetide.squads.study.Execution;
import lanetide.squads.unknown.ValueSets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells whether the schedule is fair, and to whom not. */
@Command(
        name = "fairness",
        header = "Tells whether the schedule is fair, and to whom it is not",
        description = {
            "Tells by how many pins a game a squad, a starting pair, a hand or a style is better off, how sure that is, what goes with it, and what would mend it. Bowlers change seats from playing to playing and keep their luck, so that their skill cancels. The schedule is judged, not the day: the scenario's breaks, changes and incidents are left out.",
            "",
            "As a page (--format html) it prints on one or two sheets, to hand out where somebody protests: the verdict, why, how sure it is, and which rule decides instead.",
            "",
            HelpText.WHERE
        },
        exitCodeList = {
            "0:done; without --fail-if-unfair whatever the verdict",
            "1:done, and unfair under --fail-if-unfair",
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footer = {
            "  lanetide fairness scenarios/club-night.yaml",
            "  lanetide fairness scenarios/club-night.yaml --fail-if-unfair"
        })
public final class FairnessCommand implements Callable<Integer> {
    private static final int MAX_REPLICATIONS = 1_000_000;
    private static final int MAX_BOUNDS = 1000;
    private static final int DEFAULT_BOUNDS = 4;
    private static final int DEFAULT_PLAYINGS = 200;

    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private ResumeOptions resuming;

    @Mixin
    private ChangeOptions changeOptions;

    @Option(
            names = "--replications",
            paramLabel = "N",
            description =
                    "How often the event is played at most, in rounds in which bowlers change seats and keep their luck; from the playings of two rounds, which depend on the event, to 1000000 (default: 200; of a cut of more than 300 starts a round under each set of values).")
    private Integer replications;

    @Option(
            names = "--margin",
            paramLabel = "PINS",
            description =
                    "Largest advantage that still counts as fair, in pins a game, above 0 and at most 50 (default: the scenario's, else 2).")
    private Double margin;

    @Option(
            names = "--still-lanes",
            description =
                    "Play on lanes that stay as they are laid: every ball and every squad finds them fresh. What is"
                            + " found then has other causes than the oil.")
    private boolean stillLanes;

    @Option(
            names = "--remedies",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the event is played with each change that could mend it, if all got the same: those that look better get more; from 0 to 1000000, 0 leaves them out (default: 40).")
    private int remedies;

    @Option(
            names = "--bounds",
            paramLabel = "N",
            description =
                    "Rounds in which it is also played with bowlers who never move and with bowlers who see the oil, since how bowlers follow the lanes is not known; from 2 to 1000, 0 leaves them out (default: 4; 0 for a cut of more than 300 starts).")
    private Integer bounds;

    @Mixin
    private MeasureOption measuring;

    @Option(names = "--fail-if-unfair", description = "End with exit code 1 if the verdict is unfair.")
    private boolean failIfUnfair;

    private Verdict verdict = Verdict.UNDECIDED;

    @Override
    public Integer call() {
        options.threads(); // a wrong number is told before the next
        requireMargin();
        OptionCheck.requireRange("--remedies", remedies, 0, MAX_REPLICATIONS);
        if (bounds != null && bounds != 0) {
            OptionCheck.requireRange("--bounds", bounds, Bounds.MIN_ROUNDS, MAX_BOUNDS);
        }
        resuming.check(options);
        int exitCode = options.answer((reading, planned) -> {
            RotationNote note = RotationNote.of(planned.designs(), planned.event());
            Optional<LateChanges> changes =
                    changeOptions.apply(planned.event(), note, planned.seed(), planned.waiting());
            Scenario scenario = changes.map(late -> late.change().event())
                    .map(event -> goesOnInTwoParts(changes) ? event.withCut(Optional.empty()) : event)
                    .map(planned::with)
                    .orElse(planned);
            FairnessAnswer answer = resuming.playing(
                    options, List.of(reading), execution -> answer(planned, scenario, changes, execution));
            Reading judged = options.doubting(ScoreDoubts.told(
                    reading.with(scenario),
                    Map.of("all bowlers", answer.result().meanScore())));
            return render(judged, judged.scenario().orElseThrow(), answer);
        });
        boolean fails = failIfUnfair && verdict == Verdict.UNFAIR;
        return exitCode == ExitCode.DONE && fails ? ExitCode.CONDITION_FAILS : exitCode;
    }

    private FairnessAnswer answer(
            Scenario planned, Scenario scenario, Optional<LateChanges> changes, Execution execution) {
        Studies studies = new Studies(options, scenario, sets, execution);
        FairnessResult result = study(studies);
        verdict = result.verdict();
        Studies asPlanned = new Studies(options, planned, sets, execution.step("as-planned"));
        return new FairnessAnswer(
                result,
                bounds(studies, result),
                remedies(studies, changes.map(LateChanges::lost).orElse(Set.of()), result),
                measure(studies, result),
                changes.isPresent() ? withPlanned(asPlanned, scenario, result) : Optional.empty(),
                isTable() ? List.of() : studies.wear(result),
                goesOnInTwoParts(changes) && planned.event().cut().isPresent());
    }

    /** Whether a squad does: then totals by squad are no totals of people. */
    private static boolean goesOnInTwoParts(Optional<LateChanges> changes) {
        return changes.filter(late -> late.change().event().squads().size()
                        > late.planned().squads().size())
                .isPresent();
    }

    /** A table of advantages has no place for what goes with them. */
    private boolean isTable() {
        return !options.page() && options.format() == Format.CSV;
    }

    /** What the changes do; a table of effects has no place for it. */
    private Optional<FairnessComparison> withPlanned(Studies planned, Scenario changed, FairnessResult result) {
        return isTable()
                ? Optional.empty()
                : FairnessComparison.withPlanned(
                        planned.scenario().event(), changed.event(), result, event -> study(planned));
    }

    private void requireMargin() {
        if (margin != null) {
            OptionCheck.requirePositive(
                    "--margin",
                    margin,
                    FairnessPlan.MAX_MARGIN_PINS,
                    FairnessPlan.MAX_MARGIN_PINS
                            + " pins a game: no schedule gives everybody exactly the same. Try 2.");
        }
    }

    private FairnessResult study(Studies studies) {
        requirePlayings(studies.scenario());
        return studies.fairness(
                "playings",
                playings(studies.scenario().event()),
                margin != null ? margin : studies.marginPins(),
                !stillLanes);
    }

    private Optional<Bounds> bounds(Studies studies, FairnessResult result) {
        int usual = FairnessStudy.isLarge(studies.scenario().event()) ? 0 : DEFAULT_BOUNDS;
        int rounds = bounds == null ? usual : bounds;
        return rounds == 0 || stillLanes ? Optional.empty() : Optional.of(studies.bounds(result, rounds));
    }

    private Optional<WhatToMeasure> measure(Studies studies, FairnessResult result) {
        return measuring.isWanted() && !stillLanes ? studies.whatToMeasure(result) : Optional.empty();
    }

    private List<Remedy> remedies(Studies studies, Set<Integer> lost, FairnessResult result) {
        return remedies == 0 || stillLanes || isTable() ? List.of() : studies.remedies(result, lost, remedies);
    }

    /** In a large event more rounds than sets of values leave intervals as they are. */
    private int playings(Event event) {
        int usual = FairnessStudy.isLarge(event)
                ? Math.min(DEFAULT_PLAYINGS, ValueSets.MOST_IN_A_STUDY * FairnessStudy.playingsOfRound(event))
                : DEFAULT_PLAYINGS;
        return replications == null ? usual : replications;
    }

    private void requirePlayings(Scenario scenario) {
        int fewest = FairnessStudy.fewestPlayings(scenario.event());
        OptionCheck.requireRange("--replications", playings(scenario.event()), fewest, MAX_REPLICATIONS);
        Unanswered.byFairness(scenario).ifPresent(why -> {
            throw CommandFailure.wrongUse(why);
        });
    }

    private String render(Reading reading, Scenario scenario, FairnessAnswer answer) {
        boolean ownMargin = margin != null || scenario.policy().marginPins().isPresent();
        if (options.page()) {
            return ProtestPage.write(reading, answer);
        }
        return switch (options.format()) {
            case TEXT -> FairnessText.write(scenario, answer, ownMargin);
            case JSON -> FairnessJson.write(reading, answer, scenario.event());
            case CSV -> FairnessCsv.write(answer);
        };
    }
}
