package lanetide.cli.fairness;

import static lanetide.cli.words.English.capital;
import static lanetide.cli.words.English.joined;

import java.util.OptionalDouble;
import lanetide.cli.report.Figures;
import lanetide.squads.fairness.Reason;

/** What goes with the advantages, in words. */
public final class ReasonWords {
    private ReasonWords() {}

    /** A fact in one or two sentences. */
    public static String of(Reason reason) {
        if (reason instanceof Reason.GamesSinceOiling found) {
            return capital(joined(
                            found.squads().stream().map(ReasonWords::lanesFound).toList()))
                    + ". Games are counted on each pair since it was oiled, mean over the pairs.";
        }
        if (reason instanceof Reason.FollowsStrongest found) {
            return "In squad " + found.squad() + " group " + found.group() + inBrackets(found.advantagePins())
                    + ", which starts on pair " + found.startPair() + ", takes over every pair from group "
                    + found.strongest() + ", which takes most oil off its lanes: "
                    + Figures.fixed(found.strongestMlAGame(), 2) + " mL a game, against "
                    + Figures.fixed(found.meanMlAGame(), 2) + " mL on average.";
        }
        if (reason instanceof Reason.SamePredecessor found) {
            return "In squad" + (found.squads().size() == 1 ? " " : "s ") + joined(found.squads())
                    + " every group takes over all its pairs from one and the same group, and so gets that group's oil in every"
                    + " game.";
        }
        if (reason instanceof Reason.PlacedGroup found) {
            return placed(found);
        }
        if (reason instanceof Reason.FewOnOneSide found) {
            return "From the " + found.side() + " play " + found.bowlers() + " of " + found.ofBowlers()
                    + " bowlers, so that the oil on that side changes more slowly than on the other"
                    + inBrackets(OptionalDouble.of(found.advantagePins())) + ".";
        }
        if (reason instanceof Reason.StyleAndChange found) {
            return "On lanes that never change " + found.style() + " players would average "
                    + Figures.plain(found.means().unchanging(), 1) + " and here they average "
                    + Figures.plain(found.means().inPlay(), 1) + "; the whole field goes from "
                    + Figures.plain(found.means().fieldUnchanging(), 1) + " to "
                    + Figures.plain(found.means().fieldInPlay(), 1) + ".";
        }
        Reason.UnevenGroups found = (Reason.UnevenGroups) reason;
        return "Squad " + found.squad() + " has groups of " + found.fewest() + " to " + found.most()
                + " bowlers: the smaller ones have more practice a bowler and change their lanes less.";
    }

    private static String lanesFound(Reason.GamesSinceOiling.Found squad) {
        return "squad " + squad.squad() + inBrackets(squad.advantagePins()) + " finds lanes "
                + switch (squad.conditioning()) {
                    case STRIP_AND_OIL -> "just stripped and oiled";
                    case OIL_OVER -> "oiled over what was left";
                    case CLEAN_ENDS ->
                        "cleaned past the end, on which " + Figures.plain(squad.games(), 1) + " games have been played";
                    case NONE -> "on which " + Figures.plain(squad.games(), 1) + " games have been played";
                };
    }

    private static String placed(Reason.PlacedGroup found) {
        double rest = found.advantagePins() - found.withSquadPins() - found.withPairPins();
        return "Group " + found.group() + " is placed " + (found.isBest() ? "best" : "worst") + ": of its "
                + signed(found.advantagePins()) + " pins a game " + signed(found.withSquadPins())
                + " go with its squad, " + signed(found.withPairPins()) + " with its starting pair "
                + found.startPair() + ", and " + signed(rest)
                + (found.bowlersByStyle().isEmpty()
                        ? " with after whom it plays and how lanes change there, whoever comes."
                        : " with who plays there together, after whom, and how they take the change of the lanes. It has "
                                + joined(found.bowlersByStyle().entrySet().stream()
                                        .map(style -> style.getValue() + " " + style.getKey())
                                        .toList())
                                + ".");
    }

    /** An advantage in brackets, to follow what has it. */
    private static String inBrackets(OptionalDouble pins) {
        return pins.isPresent() ? " (" + signed(pins.getAsDouble()) + " pins a game)" : "";
    }

    /** With its sign and at most one decimal. */
    private static String signed(double value) {
        String text = Figures.plain(value, 1);
        return value > 0 && !text.equals("0") ? "+" + text : text;
    }
}
