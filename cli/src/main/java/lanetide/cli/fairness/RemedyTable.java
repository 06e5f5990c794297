package lanetide.cli.fairness;

import java.util.List;
import java.util.Optional;
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
            "* worth choosing between: there is a gain in nine of ten sets of values (if all are as usual, beyond its luck), and no other such"
                    + " change is as good in pins, time and money and better in one. The interval is that of what is gained, in playings that met the same luck as the event as it is. +min is that of the squad that is delayed most; money is oiling at the"
                    + " scenario's costs, or assumed ones. All changes were played a little, the better half went on, and the"
                    + " last four were played under all sets of values: a change that was left behind sooner is known less well,"
                    + " and is never starred.";

    private RemedyTable() {}

    /** Which change is regretted least whatever is true, and what it gains; empty where that is not known. */
    public static Optional<String> leastRegret(List<Remedy> remedies) {
        return remedies.stream()
                .filter(remedy -> remedy.leastRegret()
                        && remedy.gain().filter(gain -> gain.bySet().size() > 1).isPresent())
                .findFirst()
                .map(remedy -> "Whatever of what is not known is true, least is lost against the best choice by: "
                        + RemedyWords.of(remedy.change()) + ". Half of the sets of values give it "
                        + Figures.signed(remedy.gain().orElseThrow().middlePins(), 1)
                        + " pins a game or more over the event as it is, the worst "
                        + Figures.signed(remedy.gain().orElseThrow().worstPins(), 1) + ".");
    }

    /**
     * The rows, with a head.
     *
     * @param remedies the event as it is and its changes
     * @param currency short name of the currency of the costs
     * @return cells, as many in every row
     */
    public static List<List<String>> rows(List<Remedy> remedies, String currency) {
        return Table.rows(
                List.of("change", "", "pins", "less", "90 % interval", "+min", "+" + currency, "played"),
                remedies,
                remedy -> List.of(
                        RemedyWords.of(remedy.change()),
                        remedy.isChoice() ? "*" : "",
                        Figures.fixed(remedy.spreadPins(), 1),
                        Figures.signed(remedy.gainPins(), 1),
                        remedy.gain()
                                .map(gain -> Figures.signedInterval(gain.ci90(), 1))
                                .orElse("-"),
                        Figures.fixed(remedy.extraMinutes(), 0),
                        Figures.fixed(remedy.extraCost(), 0),
                        String.valueOf(remedy.playings())));
    }
}
