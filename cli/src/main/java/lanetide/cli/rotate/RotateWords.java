package lanetide.cli.rotate;

import static lanetide.cli.words.English.count;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.design.SearchResult;
import lanetide.squads.rotation.design.StopReason;

/** The verdict on a rotation in sentences that can be read aloud. */
final class RotateWords {
    /** A gain below this is rounding, not a reason to change. */
    private static final double WORTH_A_CHANGE = 1e-6;

    private RotateWords() {}

    static List<String> verdict(SquadRotation squad) {
        List<String> sentences = new ArrayList<>();
        sentences.add(opening(squad));
        advice(squad).ifPresent(sentences::add);
        return sentences;
    }

    private static String opening(SquadRotation squad) {
        PairRow pairs = squad.pairs();
        Alternative planned = squad.planned();
        RotationReport report = planned.report();
        int games = planned.rotation().games();
        Optional<RepeatedVisit> repeat = report.firstRepeatedVisit();
        if (repeat.isPresent() && games <= pairs.inUse()) {
            return "Not sound: in game " + (repeat.get().againGame() + 1) + " group "
                    + squad.groups().get(repeat.get().group()).id() + " is back on pair "
                    + pairs.name(repeat.get().pair()) + ", where it bowled in game "
                    + (repeat.get().firstGame() + 1) + ", though " + pairs.inUse() + " pairs are enough for "
                    + count(games, "game") + " without.";
        }
        if (games == 1) {
            return "Sound: one game, and each group has a pair of its own.";
        }
        if (report.mostPredecessors() == 0) {
            return "Everybody stays, so nobody meets another group's oil: each group makes its own lanes. That is even only as"
                    + " far as the groups are alike.";
        }
        return follows(planned)
                + (repeat.isPresent()
                        ? " Pairs repeat, as " + count(games, "game") + " on " + count(pairs.inUse(), "pair") + " must."
                        : "");
    }

    private static String follows(Alternative planned) {
        RotationReport report = planned.report();
        if (report.carryOverIndex() == report.carryOverMinimum()) {
            return "Sound, and as even as a rotation can be in who follows whom: the carry-over index is "
                    + report.carryOverIndex() + ", its minimum.";
        }
        if (report.carryOverIndex() == CarryOver.of(planned.rotation()).maximum()) {
            return "It works, but it is the worst there is in who follows whom: every group follows one"
                    + " and the same group at every move and meets its oil alone. The carry-over index is "
                    + report.carryOverIndex() + ", where " + report.carryOverMinimum()
                    + " is possible when followings are spread evenly.";
        }
        return "It works, but not evenly in who follows whom: each group takes over from "
                + (report.fewestPredecessors() == report.mostPredecessors()
                        ? count(report.mostPredecessors(), "other group")
                        : report.fewestPredecessors() + " to " + report.mostPredecessors() + " other groups")
                + ". The carry-over index is " + report.carryOverIndex() + ", where " + report.carryOverMinimum()
                + " would be even.";
    }

    private static Optional<String> advice(SquadRotation squad) {
        Alternative best = squad.best();
        if (squad.planned().cost() - best.cost() <= WORTH_A_CHANGE) {
            return squad.planned().rotation().games() == 1
                    ? Optional.empty()
                    : Optional.of("Of the designs compared below none scores better.");
        }
        return Optional.of(
                "Of the designs compared below `" + best.label().words() + "` scores best: carry-over index "
                        + best.report().carryOverIndex() + ", "
                        + (best.report().repeatedVisits().isEmpty()
                                ? "no repeated pair"
                                : count(best.report().repeatedVisits().size(), "repeated pair"))
                        + ", " + Figures.fixed(best.walk().pairsPerGame(), 1) + " pairs of walking a move. "
                        + best.description()
                        + " What that is worth in pins is not known before it is played: `lanetide fairness` plays each design.");
    }

    static String search(SearchResult found) {
        String gain = found.cost() < found.startCost()
                ? "from " + Figures.fixed(found.startCost(), 3) + " to " + Figures.fixed(found.cost(), 3)
                : "not below " + Figures.fixed(found.startCost(), 3);
        return "The search began with `"
                + RotationDesigns.labelOf(found.start()).words() + "`, tried " + found.tries()
                + " exchanges and brought the figure " + gain + ". It stopped because "
                + reason(found.reason()) + ".";
    }

    /** Why a search ended, to follow "The search stopped because". */
    static String reason(StopReason reason) {
        return switch (reason) {
            case PERFECT -> "nothing better exists under this objective";
            case NO_IMPROVEMENT -> "a whole round of tries found nothing better; that is no proof that there is none";
            case TRIES_USED -> "all tries are used; more of them might find something better";
            case NOTHING_TO_CHANGE -> "there is nothing to exchange";
        };
    }
}
