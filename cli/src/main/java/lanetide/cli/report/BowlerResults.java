package lanetide.cli.report;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.SquadResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the bowlers of a squad did in one playing. */
final class BowlerResults {
    private BowlerResults() {}

    /** One node a bowler, with the score sheet of each game. */
    static void add(ArrayNode results, SquadResult squad) {
        for (BowlerResult bowler : squad.bowlers()) {
            ObjectNode node = results.addObject();
            node.put("id", bowler.bowler().id());
            node.put("group", bowler.group());
            node.put("level", bowler.bowler().level().id());
            node.put("handicapPins", bowler.bowler().handicapPins());
            bowler.scores().forEach(node.putArray("scores")::add);
            bowler.sheets().forEach(node.putArray("sheets")::add);
            node.put("ballChanges", bowler.ballChanges());
        }
    }

    /** Who was best, with handicap too where there is one, and who changed balls. */
    static String words(SquadResult squad) {
        StringBuilder words = new StringBuilder();
        words.append("First playing, squad ")
                .append(squad.squad())
                .append(": ")
                .append(best(squad, BowlerResults::pins));
        if (squad.bowlers().stream().anyMatch(bowler -> bowler.bowler().handicapPins() > 0)) {
            words.append("; with handicap ").append(best(squad, BowlerResults::pinsWithHandicap));
        }
        int changes =
                squad.bowlers().stream().mapToInt(BowlerResult::ballChanges).sum();
        if (changes > 0) {
            long who = squad.bowlers().stream()
                    .filter(bowler -> bowler.ballChanges() > 0)
                    .count();
            words.append("; ")
                    .append(who)
                    .append(" changed the ball, ")
                    .append(changes)
                    .append(" times in all");
        }
        return words.append('.').toString();
    }

    private static String best(SquadResult squad, ToIntFunction<BowlerResult> pins) {
        List<BowlerResult> bowlers = squad.bowlers();
        BowlerResult best = bowlers.stream().max(Comparator.comparingInt(pins)).orElseThrow();
        return "most pins " + pins.applyAsInt(best) + " by " + best.bowler().id();
    }

    private static int pins(BowlerResult bowler) {
        return bowler.scores().stream().mapToInt(Integer::intValue).sum();
    }

    private static int pinsWithHandicap(BowlerResult bowler) {
        return pins(bowler) + bowler.scores().size() * bowler.bowler().handicapPins();
    }
}
