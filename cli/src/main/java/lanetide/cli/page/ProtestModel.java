package lanetide.cli.page;

import java.util.List;
import lanetide.cli.report.PagePolicy;

/**
 * All that the page for a protest shows, in the order of the page.
 *
 * @param event what the event is called
 * @param verdict the verdict, with its margin
 * @param unfair to whom it is not fair, by how much
 * @param why what goes with it, and through what styles gain or lose
 * @param sureness how sure it is, with what makes it doubtful first
 * @param decides which rule decides instead
 * @param mark what the page was made from
 * @param style the style sheet
 */
public record ProtestModel(
        String event,
        String verdict,
        List<String> unfair,
        List<String> why,
        List<String> sureness,
        List<String> decides,
        String mark,
        String style) {
    /** What the page may do in a browser. */
    public String policy() {
        return PagePolicy.of(List.of(style), List.of());
    }

    /** Copies the lists. */
    public ProtestModel {
        unfair = List.copyOf(unfair);
        why = List.copyOf(why);
        sureness = List.copyOf(sureness);
        decides = List.copyOf(decides);
    }
}
