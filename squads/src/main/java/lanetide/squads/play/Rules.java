package lanetide.squads.play;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.SquadResult;

/** What holds in every playing, looked at in every one: it costs next to nothing beside the balls. */
final class Rules {
    /** The account of oil closes but for rounding (share of what was laid). */
    static final double CLOSED = 1e-9;

    private static final int PERFECT_GAME = 300;

    private Rules() {}

    /**
     * All oil that was laid is somewhere.
     *
     * @throws BrokenRuleException if more than a billionth of it is not, or nobody can tell
     */
    static void requireClosed(OilAccount oil) {
        if (!(oil.relativeError() <= CLOSED)) {
            throw new BrokenRuleException("of " + oil.appliedMl() + " mL of oil that were laid, a share of "
                    + oil.relativeError() + " is not accounted for");
        }
    }

    /**
     * Everybody bowls once in a squad, no more games than it has, and scores from 0 to 300.
     *
     * @throws BrokenRuleException if somebody does not
     */
    static void requirePossible(SquadResult squad, int games) {
        Set<String> bowled = new HashSet<>();
        for (BowlerResult bowler : squad.bowlers()) {
            String who = bowler.bowler().id() + " of squad " + squad.squad();
            if (!bowled.add(bowler.bowler().id())) {
                throw new BrokenRuleException(who + " bowled in two places");
            }
            if (bowler.firstGame() + bowler.scores().size() > games) {
                throw new BrokenRuleException(who + " bowled more than the " + games + " games there are");
            }
            for (int score : bowler.scores()) {
                if (score < 0 || score > PERFECT_GAME) {
                    throw new BrokenRuleException(who + " scored " + score + ", which no game has");
                }
            }
        }
    }

    /**
     * A pair has one game at a time.
     *
     * @throws BrokenRuleException if another one is going on there
     */
    static void requireFree(PairLanes lanes, Collection<PairGame> running) {
        if (running.stream().anyMatch(game -> game.lanes().equals(lanes))) {
            throw new BrokenRuleException("two groups play on lanes "
                    + lanes.left().number() + " and " + lanes.right().number() + " at one time");
        }
    }
}
