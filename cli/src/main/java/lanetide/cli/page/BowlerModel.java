package lanetide.cli.page;

import java.util.List;
import java.util.Optional;
import lanetide.cli.report.PagePolicy;
import lanetide.cli.report.Table;

/**
 * All that a bowler's page shows, in the order of the page.
 *
 * @param event what the event is called
 * @param bowler his name, or where he starts if he is not named
 * @param where when and where he bowls, and with whom
 * @param plays how he plays, as the forecast takes it
 * @param inShort where to start and with which ball, when to move, when to change
 * @param games the forecast game by game
 * @param sentences the same in words
 * @param why what wear does to his ball; empty where that is not known
 * @param practice what to throw in practice; empty where there is no line to start with
 * @param sureness how sure it is
 * @param cautions what every reader must keep in mind
 * @param mark what the page was made from
 * @param style the style sheet
 * @param answer the answer of {@code preview}, as JSON that can stand in a page
 */
public record BowlerModel(
        String event,
        String bowler,
        List<String> where,
        String plays,
        List<PageModel.InShort> inShort,
        Table games,
        List<String> sentences,
        Optional<Why> why,
        Optional<Shots> practice,
        List<String> sureness,
        List<String> cautions,
        String mark,
        String style,
        String answer) {
    /**
     * What wear does to his ball.
     *
     * @param picture a drawing (SVG) of the table
     * @param table boards at the pins, part by part
     * @param sentences what to make of it
     */
    public record Why(String picture, Table table, List<String> sentences) {}

    /**
     * What to throw in practice.
     *
     * @param lines the lines to throw at
     * @param lanes what it means where they lead
     */
    public record Shots(List<String> lines, List<String> lanes) {}

    /** What the page may do in a browser. */
    public String policy() {
        return PagePolicy.of(List.of(style), List.of());
    }

    /** Copies the lists. */
    public BowlerModel {
        where = List.copyOf(where);
        inShort = List.copyOf(inShort);
        sentences = List.copyOf(sentences);
        sureness = List.copyOf(sureness);
        cautions = List.copyOf(cautions);
    }
}
