package lanetide.squads.recondition;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lanetide.des.stats.Tally;

/** Means over all lanes looked at, typical players and playings, by games on the oil. */
final class WindowCurve {
    private final List<BlockPlaying> playings;
    private final double[][] paths;

    WindowCurve(List<BlockPlaying> playings, int games, double limitBoards) {
        this.playings = playings;
        this.paths = AgeCurve.paths(playings, games, limitBoards);
    }

    double shiftBoards(int games) {
        return Arrays.stream(paths)
                .mapToDouble(path -> path[games - 1])
                .average()
                .orElseThrow();
    }

    /** How much further the windows are than a game before. */
    double paceBoards(int games) {
        return games == 1 ? shiftBoards(1) : shiftBoards(games) - shiftBoards(games - 1);
    }

    OptionalDouble widthBoards(int games) {
        return mean(games, LaneLooks.Look::widthBoards);
    }

    OptionalDouble pocketShare(int games) {
        return mean(games, LaneLooks.Look::pocketShare);
    }

    /** The mean of what was seen after so many games; empty if no lane looked at has become so old. */
    private OptionalDouble mean(int games, ToDoubleFunction<LaneLooks.Look> quantity) {
        Tally tally = new Tally();
        for (BlockPlaying playing : playings) {
            for (LaneLooks.Look[][] lane : playing.looks()) {
                for (LaneLooks.Look look : lane[games]) {
                    if (look != null) {
                        tally.add(quantity.applyAsDouble(look));
                    }
                }
            }
        }
        return tally.count() == 0 ? OptionalDouble.empty() : OptionalDouble.of(tally.mean());
    }
}
