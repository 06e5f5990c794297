package lanetide.cli.sheets;

import java.util.List;
import lanetide.cli.report.PagePolicy;
import lanetide.cli.report.Table;

/**
 * A sheet for print.
 *
 * @param title what it is
 * @param event what the event is called
 * @param style the style sheet, with the size of the paper
 * @param doubts why what it says is doubtful, above its parts; none if nothing is
 * @param parts its parts, each kept on pages of its own
 * @param footer what every reader must keep in mind, and what the sheet was made from
 */
public record SheetModel(
        String title, String event, String style, List<String> doubts, List<Part> parts, List<String> footer) {
    /**
     * A part of a sheet.
     *
     * @param heading what it is about
     * @param notes sentences above the table
     * @param tables its tables
     */
    public record Part(String heading, List<String> notes, List<Table> tables) {}

    /** What the sheet may do in a browser; only its style, and no script. */
    public String policy() {
        return PagePolicy.of(List.of(style), List.of());
    }

    /** Copies the lists. */
    public SheetModel {
        doubts = List.copyOf(doubts);
        parts = List.copyOf(parts);
        footer = List.copyOf(footer);
    }
}
