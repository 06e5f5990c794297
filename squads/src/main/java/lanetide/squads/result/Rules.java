package lanetide.squads.result;

import java.util.HashSet;
import java.util.Set;
import lanetide.oilflow.film.OilAccount;

/** What holds in every playing, looked at in every one: it costs next to nothing beside the balls. */
public final class Rules {
    /** The account of oil closes but for rounding (share of what was laid). */
    private static final double CLOSED = 1e-9;

    private static final int PERFECT_GAME = 300;

    private Rules() {}

    /**
     * All oil that was laid is somewhere.
     *
     * @param oil the account of a playing
     * @throws BrokenRuleException if more than a billionth of it is not, or nobody can tell
     */
    public static void requireClosed(OilAccount oil) {
        if (!(oil.relativeError() <= CLOSED)) {
            throw new BrokenRuleException("of " + oil.appliedMl() + " mL of oil that were laid, a share of "
                    + oil.relativeError() + " is not accounted for");
        }
    }

    /**
     * Everybody bowls once in a squad, no more games than it has, and scores from 0 to 300.
     *
     * @param squad what a squad did
     * @param games its games
     * @throws BrokenRuleException if somebody does not
     */
    public static void requirePossible(SquadResult squad, int games) {
        Set<String> bowled = new HashSet<>();
        for (BowlerResult bowler : squad.bowlers()) {
            String whoLabel = bowler.bowler().id() + " of squad " + squad.squad();
            if (!bowled.add(bowler.bowler().id())) {
                throw new BrokenRuleException(whoLabel + " bowled in two places");
            }
            if (bowler.firstGame() + bowler.scores().size() > games) {
                throw new BrokenRuleException(whoLabel + " bowled more than the " + games + " games there are");
            }
            for (int score : bowler.scores()) {
                if (score < 0 || score > PERFECT_GAME) {
                    throw new BrokenRuleException(whoLabel + " scored " + score + ", which no game has");
                }
            }
        }
    }
}
