package lanetide.squads.rotation.design;

import java.util.Arrays;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Rotation;

/**
 * A rotation that can be changed, with the counts of the search objective kept up to date. The row of a pair is who
 * bowls on it, game by game.
 */
final class SearchTable {
    private static final int NOBODY = -1;

    private final int groups;
    private final int pairs;
    private final int games;
    private final SearchObjective objective;
    private final int[][] groupByPairAndGame;
    private final int[][] pairByGameAndGroup;
    private final int[][] follows;
    private final int[][] visits;
    private final int[] wear;
    private int index;
    private int followings;
    private int byItself;
    private int repeats;
    private int walked;

    SearchTable(Rotation rotation, SearchObjective objective) {
        this.groups = rotation.groups();
        this.pairs = rotation.pairs();
        this.games = rotation.games();
        this.objective = objective;
        this.groupByPairAndGame = new int[pairs][games];
        this.pairByGameAndGroup = new int[games][groups];
        this.follows = new int[groups][groups];
        this.visits = new int[groups][pairs];
        this.wear = new int[groups];
        for (int[] row : groupByPairAndGame) {
            Arrays.fill(row, NOBODY);
        }
        for (int game = 0; game < games; game++) {
            for (int group = 0; group < groups; group++) {
                seat(group, rotation.pairOf(game, group), game);
            }
        }
        countAll(1);
    }

    int games() {
        return games;
    }

    int pairs() {
        return pairs;
    }

    double cost() {
        return objective.cost(repeats, index - minimum(), wearSpread(), walked, groups, games);
    }

    /** Lets the groups of two pairs change places in one game; done twice, nothing has changed. */
    void exchange(int game, int pair, int other) {
        count(pair, -1);
        count(other, -1);
        int here = groupByPairAndGame[pair][game];
        int there = groupByPairAndGame[other][game];
        leave(here, pair, game);
        leave(there, other, game);
        take(here, other, game);
        take(there, pair, game);
        count(pair, 1);
        count(other, 1);
    }

    /** Lets two games change places, each with all its groups; nobody comes back more often for it. */
    void exchangeGames(int game, int other) {
        countAll(-1);
        for (int pair = 0; pair < pairs; pair++) {
            int group = groupByPairAndGame[pair][game];
            groupByPairAndGame[pair][game] = groupByPairAndGame[pair][other];
            groupByPairAndGame[pair][other] = group;
        }
        int[] row = pairByGameAndGroup[game];
        pairByGameAndGroup[game] = pairByGameAndGroup[other];
        pairByGameAndGroup[other] = row;
        countAll(1);
        walked = walkedByAll();
    }

    /** Lets two pairs change places, each with all who bowl on it; only the walking differs. */
    void exchangePairs(int pair, int other) {
        int[] row = groupByPairAndGame[pair];
        groupByPairAndGame[pair] = groupByPairAndGame[other];
        groupByPairAndGame[other] = row;
        for (int[] of : visits) {
            int times = of[pair];
            of[pair] = of[other];
            of[other] = times;
        }
        for (int game = 0; game < games; game++) {
            reseat(pair, game);
            reseat(other, game);
        }
        walked = walkedByAll();
    }

    boolean isEmpty(int game, int pair) {
        return groupByPairAndGame[pair][game] == NOBODY;
    }

    int[][] copy() {
        return Arrays.stream(pairByGameAndGroup).map(int[]::clone).toArray(int[][]::new);
    }

    /** Takes another table over, such as the best one so far. */
    void restore(int[][] table) {
        for (int game = 0; game < games; game++) {
            for (int group = 0; group < groups; group++) {
                int from = pairByGameAndGroup[game][group];
                if (from != table[game][group]) {
                    exchange(game, from, table[game][group]);
                }
            }
        }
    }

    private void reseat(int pair, int game) {
        if (!isEmpty(game, pair)) {
            pairByGameAndGroup[game][groupByPairAndGame[pair][game]] = pair;
        }
    }

    private int walkedByAll() {
        int sum = 0;
        for (int game = 1; game < games; game++) {
            for (int group = 0; group < groups; group++) {
                sum += Math.abs(pairByGameAndGroup[game][group] - pairByGameAndGroup[game - 1][group]);
            }
        }
        return sum;
    }

    private void countAll(int change) {
        for (int pair = 0; pair < pairs; pair++) {
            count(pair, change);
        }
    }

    private void leave(int group, int pair, int game) {
        groupByPairAndGame[pair][game] = NOBODY;
        if (group != NOBODY) {
            walked -= walkAround(group, game);
            visits[group][pair]--;
            repeats -= visits[group][pair] > 0 ? 1 : 0;
        }
    }

    private void take(int group, int pair, int game) {
        if (group != NOBODY) {
            pairByGameAndGroup[game][group] = pair;
            walked += walkAround(group, game);
            groupByPairAndGame[pair][game] = group;
            repeats += visits[group][pair] > 0 ? 1 : 0;
            visits[group][pair]++;
        }
    }

    /** Seats a group while the table is filled, game after game. */
    private void seat(int group, int pair, int game) {
        pairByGameAndGroup[game][group] = pair;
        groupByPairAndGame[pair][game] = group;
        repeats += visits[group][pair] > 0 ? 1 : 0;
        visits[group][pair]++;
        walked += game == 0 ? 0 : Math.abs(pair - pairByGameAndGroup[game - 1][group]);
    }

    private int walkAround(int group, int game) {
        int pair = pairByGameAndGroup[game][group];
        int before = game == 0 ? 0 : Math.abs(pair - pairByGameAndGroup[game - 1][group]);
        int after = game == games - 1 ? 0 : Math.abs(pair - pairByGameAndGroup[game + 1][group]);
        return before + after;
    }

    /** Adds what happens along the row of a pair to the counts, or takes it out again. */
    private void count(int pair, int change) {
        int before = NOBODY;
        int age = 0;
        for (int group : groupByPairAndGame[pair]) {
            if (group != NOBODY) {
                wear[group] += change * age++;
                if (before != NOBODY) {
                    follow(before, group, change);
                }
                before = group;
            }
        }
    }

    private void follow(int before, int after, int change) {
        int times = follows[before][after];
        follows[before][after] = times + change;
        index += 2 * change * times + 1;
        followings += change;
        byItself += before == after ? change : 0;
    }

    private int minimum() {
        return CarryOver.evenIndex(followings, byItself > 0 ? groups * groups : groups * (groups - 1));
    }

    private int wearSpread() {
        if (groups == pairs) {
            return 0;
        }
        int most = wear[0];
        int fewest = wear[0];
        for (int found : wear) {
            most = Math.max(most, found);
            fewest = Math.min(fewest, found);
        }
        return most - fewest;
    }
}
