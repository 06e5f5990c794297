package lanetide.squads.recondition;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One playing of a long block: how scores change with the age of the oil, and how the lanes do.
 *
 * @param changePins sum over bowlers' games of the score less the score with the same luck on lanes that do not change
 *     (pins), by age of the oil in games, then by style
 * @param games number of these games
 * @param looks what was seen of the lanes
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record BlockPlaying(double[][] changePins, int[][] games, LaneLooks.Look[][][] looks) {
    /** Mean change of a style's score at an age (pins a game); empty where the style has not played. */
    OptionalDouble changePins(int age, int style) {
        int count = games[age][style];
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(changePins[age][style] / count);
    }

    int games(int age, int style) {
        return games[age][style];
    }

    /** Sum of games over some playings, by age and style. */
    static int games(List<BlockPlaying> playings, int age, int style) {
        return playings.stream().mapToInt(playing -> playing.games(age, style)).sum();
    }
}
