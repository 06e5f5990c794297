package lanetide.cli.simulate;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.SquadResult;

/** What the bowlers of a squad did in one playing. */
final class BowlerResults {
    private BowlerResults() {}

    /** Who was best, with handicap too where there is one, and who changed balls. */
    static String words(SquadResult squad, int sets, Event event) {
        StringBuilder words = new StringBuilder();
        words.append(English.capital(UnknownWords.example(sets, event)))
                .append(", squad ")
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
