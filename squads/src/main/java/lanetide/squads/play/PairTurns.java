package lanetide.squads.play;

import java.util.Arrays;
import java.util.OptionalInt;
import lanetide.squads.rotation.Rotation;

/**
 * Whose turn it is on each pair. A pair serves games in order, so that no group overtakes and nobody waits for ever: of
 * all games still to play, the earliest can always be played.
 */
final class PairTurns {
    private static final int NOT_THERE = -1;

    private final Rotation rotation;
    private final int[] waitingForGame;
    private final int[] gameOnPair;
    private final boolean[] busy;

    PairTurns(Rotation rotation) {
        this.rotation = rotation;
        this.waitingForGame = new int[rotation.groups()];
        Arrays.fill(waitingForGame, NOT_THERE);
        this.gameOnPair = new int[rotation.pairs()];
        this.busy = new boolean[rotation.pairs()];
    }

    /** A group stands at its pair, ready for a game. */
    void arrive(int group, int game) {
        waitingForGame[group] = game;
    }

    /** Lets the group whose turn it is begin, if the pair is free and the group is there. */
    OptionalInt begin(int pair) {
        OptionalInt group = nextGroup(pair);
        if (busy[pair] || group.isEmpty() || waitingForGame[group.getAsInt()] != gameOnPair[pair]) {
            return OptionalInt.empty();
        }
        busy[pair] = true;
        return group;
    }

    /** The game that is played on a pair, or will be next. */
    int game(int pair) {
        return gameOnPair[pair];
    }

    /** The game on a pair is over. */
    void end(int pair) {
        busy[pair] = false;
        gameOnPair[pair]++;
    }

    /** The group that plays the pair's next game, skipping games in which the pair stays empty. */
    private OptionalInt nextGroup(int pair) {
        while (gameOnPair[pair] < rotation.games()) {
            OptionalInt group = rotation.groupOn(gameOnPair[pair], pair);
            if (group.isPresent()) {
                return group;
            }
            gameOnPair[pair]++;
        }
        return OptionalInt.empty();
    }
}
