package lanetide.cli.check;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.reader.Policy;
import lanetide.cli.words.CutWords;
import lanetide.cli.words.English;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Event;
import lanetide.squads.model.Scoring;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.score.ScoreCard;

/** How an event is scored and what its bowlers have in common, in words, where a scenario says so. */
final class BowlingWords {
    private BowlingWords() {}

    /** The rules of scoring; empty where they are the usual ones. */
    static Optional<String> scoring(Event event) {
        Scoring scoring = event.bowling().scoring();
        List<String> parts = new ArrayList<>();
        if (scoring.system() != Scoring.USUAL.system()) {
            parts.add(scoring.system().id());
        }
        if (scoring.strikePins() < ScoreCard.PINS) {
            parts.add(scoring.strikePins() + " pins on a new rack are a strike");
        }
        if (scoring.foulShare() > 0) {
            parts.add(Figures.plain(100 * scoring.foulShare(), 2) + " % of balls are fouls");
        }
        handicap(event).ifPresent(parts::add);
        return line("Scoring", parts);
    }

    /** Who goes on from qualifying; empty where nobody is left out. */
    static Optional<String> cut(Event event) {
        return event.cut().map(cut -> "Cut: " + CutWords.rule(cut, event) + ".");
    }

    /** What those who go on bowl; empty where it ends with the cut. */
    static Optional<String> finals(Policy policy) {
        return policy.finals().map(finals -> CutWords.finals(finals) + ".");
    }

    /** Doubles, trios and teams; empty where everybody bowls for himself. */
    static Optional<String> teams(Event event) {
        IntSummaryStatistics bowlers =
                new Teams(event).bowlers().stream().mapToInt(number -> number).summaryStatistics();
        return bowlers.getCount() == 0
                ? Optional.empty()
                : Optional.of("Partners: " + English.count((int) bowlers.getCount(), "team") + " of " + bowlers.getMin()
                        + (bowlers.getMin() == bowlers.getMax() ? "" : " to " + bowlers.getMax())
                        + " bowlers, each on one pair; their pins are added.");
    }

    private static Optional<String> handicap(Event event) {
        IntSummaryStatistics pins = event.squads().stream()
                .flatMap(squad -> squad.everybody().stream())
                .mapToInt(Bowler::handicapPins)
                .summaryStatistics();
        return pins.getMax() == 0
                ? Optional.empty()
                : Optional.of("handicap of " + pins.getMin() + " to " + pins.getMax() + " pins a game");
    }

    /** What the entries leave open, and what was done about it; empty where they leave nothing open. */
    static Optional<String> listed(DrawnTraits entries) {
        if (entries.sayAll()) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>();
        parts.add(entries.bowlers() + (entries.bowlers() == 1 ? " bowler" : " bowlers"));
        if (entries.byAverage() > 0) {
            parts.add("level of " + entries.byAverage() + " by the average");
        }
        for (Trait trait : Trait.values()) {
            if (entries.count(trait) > 0) {
                parts.add(trait.id() + " of " + entries.count(trait) + " drawn by shares");
            }
        }
        return line("Entries", parts);
    }

    /** What bowlers have in common; empty where they are as usual. */
    static Optional<String> bowlers(Bowling bowling) {
        List<String> parts = new ArrayList<>();
        switch (bowling.knowledge()) {
            case EVERYTHING -> parts.add("they see the oil");
            case NOTHING -> parts.add("they never move");
            case SEEN_AND_TOLD -> {}
            case OWN_BALLS -> parts.add("they go by their own balls alone");
        }
        if (bowling.tiringShare() > 0) {
            parts.add("they lose " + Figures.plain(100 * bowling.tiringShare(), 2) + " % of their speed over "
                    + Bowling.TIRING_BALLS + " balls at full racks");
        }
        return line("Bowlers", parts);
    }

    private static Optional<String> line(String name, List<String> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(name + ": " + String.join("; ", parts) + ".");
    }
}
