package lanetide.squads.rotation.design;

import lanetide.squads.rotation.Rotation;

/** Rotations in which everybody moves together, by a distance that depends on the game. */
final class CyclicPlan {

    private CyclicPlan() {}

    /** The group on pair p in a game is p + leader of that game; leaders[0] is 0. */
    static Rotation of(int groups, int pairs, int[] leaders) {
        return Rotation.tabulate(
                groups, pairs, leaders.length, (game, group) -> Math.floorMod(group - leaders[game], pairs));
    }

    /** The zig-zag 0, 1, -1, 2, -2, ... of Williams (1949), modulo the number of pairs. */
    static int[] zigZag(int pairs, int games) {
        int[] leaders = new int[games];
        for (int game = 0; game < games; game++) {
            leaders[game] = Math.floorMod(game % 2 == 1 ? (game + 1) / 2 : -game / 2, pairs);
        }
        return leaders;
    }
}
