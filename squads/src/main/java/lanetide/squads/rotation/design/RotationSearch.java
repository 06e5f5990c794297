package lanetide.squads.rotation.design;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;

/**
 * Designs a rotation by search: begins with the best classic design and lets two groups change places in one game, two
 * games with all their groups, or two pairs with all who bowl on them.
 *
 * <p>Simulated annealing (S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, "Optimization by simulated annealing", Science
 * 220 (1983), 671-680) in rounds; each round begins with the best rotation so far, hot enough to leave it, and cools
 * geometrically. The pairs of game 1 stay as they are. The number of tries is fixed, so that the same seed gives the
 * same rotation on every machine.
 */
public final class RotationSearch {
    private static final int MAX_DEFAULT_TRIES = 4_000_000;
    private static final int MIN_DEFAULT_TRIES = 400_000;

    /** Visits up to which a search makes the most tries; twice as many visits take twice the time a try. */
    private static final int LARGE = 600;

    /** How often a search starts anew from the best so far, at most. */
    public static final int ROUNDS = 8;

    private static final double GAMES_SHARE = 0.1;
    private static final double PAIRS_SHARE = 0.2;
    private static final double HOT = 4;
    private static final double COLD = 0.005;
    private static final double CLEARLY = 1e-9;

    private final SearchObjective objective;
    private final UniformRandomProvider luck;
    private final int triesPerRound;

    private RotationSearch(SearchObjective objective, long seed, int tries) {
        this.objective = objective;
        this.luck = new SplitMix64(seed);
        this.triesPerRound = Math.max(1, tries / ROUNDS);
    }

    /**
     * How many tries a search makes, unless another number is asked for: so many that it takes some seconds.
     *
     * @param groups groups that bowl at the same time
     * @param games games each group bowls
     * @return 400 000 to 4 000 000
     */
    public static int defaultTries(int groups, int games) {
        long visits = Math.max(LARGE, (long) groups * games);
        return (int) Math.max(MIN_DEFAULT_TRIES, (long) MAX_DEFAULT_TRIES * LARGE / visits);
    }

    /**
     * Searches for a rotation.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @param objective what it is to be good at
     * @param seed same seed, same rotation
     * @param tries exchanges to try at most, at least 1
     * @return the best rotation met
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1} or {@code groups
     *     > pairs}
     * @throws IllegalArgumentException if {@code tries < 1}
     */
    public static SearchResult run(int groups, int pairs, int games, SearchObjective objective, long seed, int tries) {
        return run(groups, pairs, games, objective, seed, tries, round -> {});
    }

    /**
     * Searches for a rotation, and tells how far it is.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @param objective what it is to be good at
     * @param seed same seed, same rotation
     * @param tries exchanges to try at most, at least 1
     * @param onRound told after each round how many are done, and at the end {@link #ROUNDS}
     * @return the best rotation met
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1} or {@code groups
     *     > pairs}
     * @throws IllegalArgumentException if {@code tries < 1}
     */
    public static SearchResult run(
            int groups, int pairs, int games, SearchObjective objective, long seed, int tries, IntConsumer onRound) {
        if (tries < 1) {
            throw new IllegalArgumentException("tries is " + tries + ", but must be at least 1");
        }
        Classics.Planned best = Classics.best(groups, pairs, games, objective);
        SearchResult found = new RotationSearch(objective, seed, tries).improve(best, onRound);
        onRound.accept(ROUNDS);
        return found;
    }

    private SearchResult improve(Classics.Planned start, IntConsumer onRound) {
        double startCost = objective.cost(start.rotation());
        if (start.rotation().games() == 1 || start.rotation().pairs() == 1) {
            return result(start, start.rotation(), startCost, startCost, 0, StopReason.NOTHING_TO_CHANGE);
        }
        SearchTable table = new SearchTable(start.rotation(), objective);
        Best best = new Best(table.copy(), startCost);
        int tries = 0;
        StopReason reason = StopReason.TRIES_USED;
        for (int round = 0; round < ROUNDS && reason == StopReason.TRIES_USED; round++) {
            double before = best.cost;
            if (before <= leastCost(start.rotation())) {
                reason = StopReason.PERFECT;
            } else {
                anneal(table, best, HOT / (round + 1));
                tries += triesPerRound;
                onRound.accept(round + 1);
                reason = best.cost < before - CLEARLY || round < 3 ? reason : StopReason.NO_IMPROVEMENT;
            }
        }
        // The cost is kept up to date by differences; what is told is counted afresh.
        Rotation found = rotation(best.table, start.rotation());
        double cost = objective.cost(found);
        return cost < startCost
                ? result(start, found, cost, startCost, tries, reason)
                : result(start, start.rotation(), startCost, startCost, tries, reason);
    }

    /** Every move is one pair long, or it repeats a pair. */
    private double leastCost(Rotation start) {
        double moves = (double) start.groups() * (start.games() - 1);
        return Math.min(objective.walk(), objective.repeat() * moves) + CLEARLY;
    }

    private void anneal(SearchTable table, Best best, double hot) {
        table.restore(best.table);
        double cost = best.cost;
        double cooling = StrictMath.pow(COLD / hot, 1.0 / triesPerRound);
        double temperature = hot;
        for (int i = 0; i < triesPerRound; i++) {
            temperature *= cooling;
            Change change = draw(table);
            if (change.isIdle(table)) {
                continue;
            }
            change.apply(table);
            double changed = table.cost();
            if (changed <= cost || luck.nextDouble() < StrictMath.exp((cost - changed) / temperature)) {
                cost = changed;
                best.keep(table, cost);
            } else {
                change.apply(table);
            }
        }
    }

    private Change draw(SearchTable table) {
        double kind = luck.nextDouble();
        int game = 1 + luck.nextInt(table.games() - 1);
        if (kind < GAMES_SHARE) {
            return new Change(Kind.GAMES, game, 1 + luck.nextInt(table.games() - 1), 0);
        }
        int pair = luck.nextInt(table.pairs());
        int other = luck.nextInt(table.pairs());
        return new Change(kind < GAMES_SHARE + PAIRS_SHARE ? Kind.PAIRS : Kind.GROUPS, pair, other, game);
    }

    private enum Kind {
        GROUPS,
        GAMES,
        PAIRS
    }

    /** Two things that change places; applied twice, nothing has changed. */
    private record Change(Kind kind, int one, int other, int game) {
        void apply(SearchTable table) {
            switch (kind) {
                case GROUPS -> table.exchange(game, one, other);
                case GAMES -> table.exchangeGames(one, other);
                case PAIRS -> table.exchangePairs(one, other);
            }
        }

        /** Whether it does nothing, or would leave a starting pair without its group. */
        boolean isIdle(SearchTable table) {
            return one == other
                    || switch (kind) {
                        case GROUPS -> table.isEmpty(game, one) && table.isEmpty(game, other);
                        case GAMES -> false;
                        case PAIRS -> table.isEmpty(0, one) != table.isEmpty(0, other);
                    };
        }
    }

    private static SearchResult result(
            Classics.Planned start, Rotation found, double cost, double startCost, int tries, StopReason reason) {
        return new SearchResult(found, cost, start.design(), startCost, tries, reason);
    }

    private static Rotation rotation(int[][] table, Rotation like) {
        Integer[] byStart = IntStream.range(0, like.groups()).boxed().toArray(Integer[]::new);
        Arrays.sort(byStart, Comparator.comparing(group -> table[0][group]));
        return Rotation.tabulate(
                like.groups(), like.pairs(), like.games(), (game, group) -> table[game][byStart[group]]);
    }

    /** The best table met. */
    private static final class Best {
        private int[][] table;
        private double cost;

        Best(int[][] table, double cost) {
            this.table = table;
            this.cost = cost;
        }

        void keep(SearchTable candidate, double candidateCost) {
            if (candidateCost < cost - CLEARLY) {
                cost = candidateCost;
                table = candidate.copy();
            }
        }
    }
}
