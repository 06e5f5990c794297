package lanetide.cli.report;

import java.util.List;
import lanetide.cli.scenario.notice.Assumption;

/** How text answers end. */
public final class Ending {
    private Ending() {}

    /** Adds what an answer rests on, and what to keep in mind. */
    public static void add(Page page, List<Assumption> assumptions) {
        assumptions(page, assumptions);
        cautions(page);
    }

    /** Adds what an answer rests on and the scenario does not state, if anything. */
    public static void assumptions(Page page, List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            page.heading("What the answer rests on, and where it comes from");
            assumptions.forEach(taken -> page.item(taken.name() + ": " + taken.value() + " (" + taken.source() + ")."));
        }
    }

    /** Adds what to keep in mind. */
    public static void cautions(Page page) {
        page.heading("Please keep in mind");
        Cautions.ALL.forEach(page::item);
    }
}
