package lanetide.cli.command;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.fit.FitNotice;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.MeasuredOption;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fit.Fit;
import lanetide.squads.fit.FitDay;
import lanetide.squads.fit.FitPlan;
import lanetide.squads.fit.FitResult;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.unknown.ValueSets;

/**
 * A forecast corrected by what has changed in the plan, and by what was measured while the event goes on: the sets of
 * values are fitted in one step, and lanes go on from what tapes read on them.
 */
final class OnTheDay {
    private final CommonOptions options;
    private final MeasuredOption measured;
    private final ChangeOptions changes;

    OnTheDay(CommonOptions options, MeasuredOption measured, ChangeOptions changes) {
        this.options = options;
        this.measured = measured;
        this.changes = changes;
    }

    /** The scenario as it is known and planned now; itself where nothing was measured or has changed. */
    Reading corrected(Reading planned) {
        Reading reading = planned.with(changes.changed(planned.scenario().orElseThrow()));
        if (!measured.isGiven()) {
            return reading;
        }
        Reading all = measured.read(options, reading);
        Scenario scenario = all.scenario().orElseThrow();
        Event event = scenario.event();
        FitResult fitted = fitted(scenario);
        FitNotice.of(fitted).forEach(options.err()::println);
        options.err().flush();
        Findings known = findings(event, scenario.measurements(), fitted.sets());
        return all.with(scenario.with(event.in(event.centre().with(known))).with(assumption(scenario.measurements())));
    }

    private FitResult fitted(Scenario scenario) {
        List<ValueSet> prior = ValueSets.of(scenario.event());
        FitPlan plan = FitPlan.quick(scenario.seed(), options.threads());
        List<FitDay> today = List.of(new FitDay(scenario.event(), scenario.measurements()));
        return options.progressing(
                "playings to fit", Fit.playings(prior.size(), 1, plan), told -> Fit.run(today, prior, plan, told));
    }

    private static Findings findings(Event event, Measurements today, List<ValueSet> sets) {
        List<TapeTaken> fresh = event.onFreshOil(today.tapes());
        List<TapeTaken> worn =
                today.tapes().stream().filter(tape -> !fresh.contains(tape)).toList();
        return event.centre().findings().withLaid(fresh).with(sets, worn);
    }

    private static Assumption assumption(Measurements today) {
        return new Assumption(
                "measured",
                "sets of values fitted to what was measured so far, and lanes as tapes read them",
                Stream.of(
                                today.tapes().size() + " tapes",
                                today.balls().size() + " balls",
                                today.scores().size() + " scores",
                                today.ends().size() + " ends of games")
                        .filter(words -> !words.startsWith("0 "))
                        .reduce((one, other) -> one + ", " + other)
                        .orElse("nothing"));
    }
}
