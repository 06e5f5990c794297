package lanetide.cli.report;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;

/** How text answers end. */
public final class Ending {
    private Ending() {}

    /** Adds what an answer rests on, and what to keep in mind. */
    public static void add(Page page, Scenario scenario, List<Assumption> assumptions) {
        assumptions(page, assumptions);
        cautions(page, scenario);
    }

    /** Adds what an answer rests on and the scenario does not state, if anything. */
    public static void assumptions(Page page, List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            page.heading("What the answer rests on, and where it comes from");
            assumptions.forEach(taken -> page.item(taken.name() + ": " + withSource(taken)));
        }
    }

    /** The source belongs to the last sentence. */
    private static String withSource(Assumption taken) {
        String value = taken.value();
        return (value.endsWith(".") ? value.substring(0, value.length() - 1) : value) + " (" + taken.source() + ").";
    }

    /** Adds what has changed and what the entries of scenarios do not say, if anything, and what to keep in mind. */
    public static void entriesAndCautions(Page page, Scenario... scenarios) {
        List<String> changes = Stream.of(scenarios)
                .flatMap(scenario -> scenario.changes().stream())
                .toList();
        if (!changes.isEmpty()) {
            page.heading("What has changed on the day");
            changes.forEach(page::item);
        }
        List<Assumption> open = Stream.of(scenarios)
                .flatMap(scenario -> scenario.ofEntries().stream())
                .distinct()
                .toList();
        if (!open.isEmpty()) {
            page.heading("What the entries do not say");
            open.forEach(taken -> page.item(withSource(taken)));
        }
        cautions(page, scenarios);
    }

    /** Adds what makes the answer doubtful, if anything does, and what to keep in mind. */
    public static void cautions(Page page, Scenario... scenarios) {
        List<String> doubts = Stream.of(scenarios)
                .flatMap(scenario -> scenario.doubts().stream())
                .distinct()
                .toList();
        if (!doubts.isEmpty()) {
            page.heading("Why this answer is doubtful");
            doubts.forEach(page::item);
        }
        page.heading("Please keep in mind");
        Cautions.ALL.forEach(page::item);
    }
}
