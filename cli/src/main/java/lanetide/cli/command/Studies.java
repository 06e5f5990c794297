package lanetide.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.SetsOption;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.RemedyStudy;
import lanetide.squads.measure.MeasurementStudy;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.recondition.OilingSchedules;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.recondition.ReoilStudy;
import lanetide.squads.recondition.ScheduleStudy;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.WearStudy;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;

/** Studies of a scenario that several commands make; each tells how far it is. */
final class Studies {
    /** So many sets of values as a study of so many rounds goes through tell what wear does. */
    private static final int ROUNDS_FOR_WEAR = 12;

    private final CommonOptions options;
    private final Scenario scenario;
    private final SetsOption sets;
    private final Execution execution;
    /** Under as many sets as any study goes through, so that what one has worked out serves the others. */
    private final PossibleEvents possible;

    Studies(CommonOptions options, Scenario scenario, SetsOption sets, Execution execution) {
        this.options = options;
        this.scenario = scenario;
        this.sets = sets;
        this.execution = execution;
        this.possible = new PossibleEvents(scenario.event(), ValueSets.MOST_IN_A_STUDY);
    }

    Scenario scenario() {
        return scenario;
    }

    /** The margin that the scenario sets, or the usual one (pins a game). */
    double marginPins() {
        return marginPins(scenario);
    }

    private static double marginPins(Scenario scenario) {
        return scenario.policy().marginPins().orElse(FairnessPlan.DEFAULT_MARGIN_PINS);
    }

    /** How a scenario's lanes are played down. */
    static ReoilPlan reoilPlan(Scenario scenario, int replications, int games) {
        return new ReoilPlan(
                scenario.seed(),
                replications,
                games,
                marginPins(scenario),
                scenario.policy().limitBoards(),
                scenario.policy().costs());
    }

    StudyResult event(int replications, Observers ofExample) {
        return options.progressing(
                "playings",
                replications,
                told -> EventStudy.run(
                        possible.with(scenario.withFinals()).amongFirst(sets.of(replications)),
                        scenario.seed(),
                        Playings.fixed(replications),
                        execution.step("event"),
                        told,
                        ofExample));
    }

    FairnessResult fairness(String what, int playings, double marginPins, boolean lanesChange) {
        FairnessPlan plan = new FairnessPlan(scenario.seed(), playings, marginPins, lanesChange);
        return options.progressing(
                what, playings, told -> FairnessStudy.run(possible(playings), plan, execution.step("fairness"), told));
    }

    /** The event under the sets of values that so many playings with changed seats go through. */
    private PossibleEvents possible(int playings) {
        return possible.amongFirst(sets.of(playings / FairnessStudy.playingsOfRound(scenario.event())));
    }

    /** Looks what each stretch of the worn lanes does to squads and styles; on lanes that never change, nothing. */
    List<WearStudy.Wear> wear(FairnessResult result) {
        PossibleEvents events = possible.amongFirst(sets.of(ROUNDS_FOR_WEAR));
        return result.plan().lanesChange()
                ? options.progressing(
                        "playings of wear",
                        events.sets(),
                        told -> WearStudy.run(events, scenario.seed(), execution.step("wear"), told))
                : List.of();
    }

    /** Plays the event with bowlers who never move, and with bowlers who see the oil. */
    Bounds bounds(FairnessResult result, int rounds) {
        return options.progressing(
                "playings of bounds",
                Bounds.playings(possible(result.playings()), rounds),
                told -> Bounds.of(possible(result.playings()), result.plan(), rounds, execution.step("bounds"), told));
    }

    /** Plays the event under all sets of values, to tell what its least sure advantage hangs on. */
    Optional<WhatToMeasure> whatToMeasure(FairnessResult result) {
        return options.progressing(
                "playings of measuring",
                MeasurementStudy.playings(scenario.event()),
                told -> MeasurementStudy.run(scenario.event(), result, execution.step("measuring"), told));
    }

    /** Plays the event with each change that could mend it; none of them sends a group to a lost pair. */
    List<Remedy> remedies(FairnessResult result, Set<Integer> lost, int playings) {
        return options.progressing(
                "playings of changes",
                RemedyStudy.playings(scenario.event(), lost, result, playings),
                told -> RemedyStudy.run(
                        possible(result.playings()),
                        lost,
                        result,
                        playings,
                        scenario.policy().costs(),
                        execution.step("changes"),
                        told));
    }

    ReoilResult reoil(String what, int replications, int games) {
        ReoilPlan plan = reoilPlan(scenario, replications, games);
        return options.progressing(
                what,
                ReoilStudy.playings(plan),
                told -> ReoilStudy.run(
                        onAnyDay().amongFirst(sets.of(replications)), plan, execution.step("oiling"), told));
    }

    /** How often and before which squads to oil. */
    OilingSchedules schedules(int replications, int oilings) {
        return options.progressing(
                "playings of squads",
                ScheduleStudy.playings(scenario.event(), replications),
                told -> ScheduleStudy.run(
                        onAnyDay().amongFirst(sets.of(replications)),
                        reoilPlan(scenario, replications, ReoilPlan.DEFAULT_GAMES),
                        oilings,
                        execution.step("schedules"),
                        told));
    }

    /** The event on lanes of which nothing was read while it went on: what is played down is no day of its own. */
    private PossibleEvents onAnyDay() {
        Event event = scenario.event();
        Findings findings = event.centre().findings();
        return possible.with(event.in(event.centre().with(findings.with(findings.sets(), List.of()))));
    }
}
