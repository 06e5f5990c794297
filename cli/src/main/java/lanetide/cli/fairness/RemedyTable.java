package lanetide.cli.fairness;

import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.squads.fairness.Remedy;

/** Changes that could mend an event, as a table for people. */
public final class RemedyTable {
    /** What the table answers. */
    public static final String QUESTION = "What would mend it";

    /** What stands in it. */
    public static final String CAPTION = "Pins from the worst to the best placed group, each change played out";

    /** How to read it. */
    public static final String NOTE =
            "* worth choosing between: no other change is as good in pins, time and money and better in one; what is gained"
                    + " within its noise counts for nothing. +- is one standard error of what is gained. Later is the squad that is delayed most; money is oiling at the"
                    + " scenario's costs, or assumed ones. Rows may rest on fewer playings than the advantages above, and chance"
                    + " is taken out of each: compare them with one another.";

    private RemedyTable() {}

    /**
     * The rows, with a head.
     *
     * @param remedies the event as it is and its changes
     * @param currency short name of the currency of the costs
     * @return cells, as many in every row
     */
    public static List<List<String>> rows(List<Remedy> remedies, String currency) {
        return Table.rows(
                List.of("change", "", "pins", "less", "+-", "later min", "more " + currency),
                remedies,
                remedy -> List.of(
                        RemedyWords.of(remedy.change()),
                        remedy.isChoice() ? "*" : "",
                        Figures.fixed(remedy.spreadPins(), 1),
                        Figures.signed(remedy.gainPins(), 1),
                        Figures.fixed(remedy.gainErrorPins(), 1),
                        Figures.fixed(remedy.extraMinutes(), 0),
                        Figures.fixed(remedy.extraCost(), 0)));
    }
}
