package lanetide.cli.reoil;

import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.ReoilResult;

/** Intervals of oiling in words. */
public final class ReoilWords {
    private ReoilWords() {}

    /** After how many games to oil again, in one sentence. */
    public static String recommendation(Interval cost) {
        return "Oil all lanes again after " + games(cost) + " on a pair (90 % interval " + range(cost) + ").";
    }

    /** What the intervals on other grounds than cost say, a sentence or two each. */
    public static List<String> others(ReoilResult result) {
        return result.intervals().stream()
                .filter(interval -> interval.basis() != Basis.COST)
                .map(interval -> sentence(result, interval) + " 90 % interval: " + range(interval) + ".")
                .toList();
    }

    public static String basis(Basis basis) {
        return switch (basis) {
            case COST -> "cost";
            case COST_LANE_BY_LANE -> "cost lane by lane";
            case THRESHOLD -> "threshold";
            case AGE -> "age replacement";
            case CONDITION -> "condition";
        };
    }

    static String games(Interval interval) {
        String games = Figures.plain(interval.games(), 1);
        return (interval.beyond() ? "at least " : "") + games + (games.equals("1") ? " game" : " games");
    }

    static String range(Interval interval) {
        return Figures.plain(interval.low(), 1) + " to " + Figures.plain(interval.high(), 1);
    }

    /** What an interval says, in one sentence. */
    public static String sentence(ReoilResult result, Interval interval) {
        String money = " " + result.plan().costs().currency();
        return switch (interval.basis()) {
            case COST ->
                "All lanes in one go cost least after " + games(interval) + ": "
                        + Figures.fixed(interval.costPerGame().orElseThrow(), 2) + money + " for each game of a pair.";
            case COST_LANE_BY_LANE ->
                "Pairs oiled one by one cost least after " + games(interval) + ": "
                        + Figures.fixed(interval.costPerGame().orElseThrow(), 2) + money + " for each game of a pair.";
            case THRESHOLD ->
                "Expected scores stay within " + Figures.plain(result.plan().marginPins(), 2)
                        + " pins of fresh oil for " + games(interval) + ".";
            case AGE ->
                interval.beyond()
                        ? "Oiling in time, before windows have moved by "
                                + Figures.plain(result.plan().limitBoards(), 2) + " boards, does not pay within the "
                                + result.plan().games() + " games looked at."
                        : "Where a lane has failed once its windows have moved by "
                                + Figures.plain(result.plan().limitBoards(), 2) + " boards, it is best oiled after "
                                + games(interval) + " at the latest.";
            case CONDITION ->
                "Looked at after every game, a pair is best oiled when its windows have moved by "
                        + Figures.plain(interval.controlBoards().orElseThrow(), 2) + " boards, on average after "
                        + Figures.plain(interval.games(), 1) + " games.";
        };
    }
}
