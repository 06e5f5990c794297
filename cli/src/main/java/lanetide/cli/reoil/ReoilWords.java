package lanetide.cli.reoil;

import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.words.English;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.ReoilResult;

/** Intervals of oiling in words. */
public final class ReoilWords {
    private ReoilWords() {}

    /** After how many games to oil again, in one sentence. */
    public static String recommendation(ReoilResult result) {
        return "Oil all lanes again after " + games(result.interval(Basis.COST)) + " on a pair.";
    }

    /** What costs the same as that, how sure it is, and what is regretted least: a few sentences. */
    public static String sureness(ReoilResult result) {
        Interval cost = result.interval(Basis.COST);
        return same(result, cost.flat().orElseThrow()) + sureness(result, cost) + leastRegret(result);
    }

    private static String same(ReoilResult result, Interval.Flat flat) {
        return flat.from() == flat.to()
                ? ""
                : "From " + flat.from() + " to " + flat.to()
                        + " games cannot be told apart: none is shown to cost over "
                        + Figures.fixed(100 * Interval.SAME_SHARE, 0)
                        + " % more, and on the mean they cost the same within "
                        + Figures.fixed(flat.withinCost(), 2) + " "
                        + result.plan().costs().currency() + " a game. ";
    }

    private static String leastRegret(ReoilResult result) {
        return result.leastRegret()
                .map(least ->
                        " Whatever of what is not known is true, least is lost against the best choice by oiling after "
                                + games(least.games()) + ": where that fares worst, a pair's game costs "
                                + Figures.fixed(least.mostRegret(), 2) + " "
                                + result.plan().costs().currency() + " more than it could.")
                .orElse("");
    }

    /** What the intervals on other grounds than cost say, each with the question that it answers. */
    public static List<String> others(ReoilResult result) {
        return result.intervals().stream()
                .filter(interval -> interval.basis() != Basis.COST)
                .map(interval -> sentence(result, interval) + " " + sureness(result, interval))
                .toList();
    }

    private static String sureness(ReoilResult result, Interval interval) {
        return result.sets() == 1
                ? "90 % interval: " + range(interval.low(), interval.high()) + "."
                : "In nine of ten sets of values it is " + range(interval.low(), interval.high()) + ".";
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

    private static String games(Interval interval) {
        return (interval.beyond() ? "at least " : "") + games(interval.games());
    }

    private static String games(double number) {
        return English.count(Figures.plain(number, 1), "game");
    }

    private static String boards(double number) {
        return English.count(Figures.plain(number, 2), "board");
    }

    /** From the one to the other, or just the one where both are told alike. */
    static String range(double low, double high) {
        String from = Figures.plain(low, 1);
        String to = Figures.plain(high, 1);
        return from.equals(to) ? from : from + " to " + to;
    }

    /** What an interval says, in one sentence. */
    public static String sentence(ReoilResult result, Interval interval) {
        String money = " " + result.plan().costs().currency();
        return switch (interval.basis()) {
            case COST ->
                "All lanes in one go cost least after " + games(interval) + ": "
                        + Figures.fixed(interval.costPerGame().orElseThrow(), 2) + money + " for each game of a pair.";
            case COST_LANE_BY_LANE ->
                "If pairs can be oiled one by one, it costs least after " + games(interval) + ": "
                        + Figures.fixed(interval.costPerGame().orElseThrow(), 2) + money + " for each game of a pair.";
            case THRESHOLD ->
                "If no expected score may change by more than "
                        + Figures.plain(result.plan().marginPins(), 2) + " pins a game, oil after " + games(interval)
                        + ".";
            case AGE ->
                interval.beyond()
                        ? "If a lane has failed once its windows have moved by "
                                + boards(result.plan().limitBoards())
                                + ", oiling in time does not pay within the "
                                + result.plan().games() + " games looked at."
                        : "If a lane has failed once its windows have moved by "
                                + boards(result.plan().limitBoards()) + ", it is best oiled after "
                                + games(interval) + " at the latest.";
            case CONDITION ->
                "If lanes are looked at after every game, a pair is best oiled when its windows have moved by "
                        + boards(interval.controlBoards().orElseThrow()) + ", on average after "
                        + games(interval.games()) + ".";
        };
    }
}
