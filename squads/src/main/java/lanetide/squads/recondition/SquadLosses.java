package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * By how much the scores of each squad change if lanes were oiled before it or before some squad earlier: of each squad
 * a curve by how many squads have played on the oil before it.
 */
final class SquadLosses {
    private final List<AgeCurve> curves;
    private final double[] games;
    /** Root mean square change (pins a game) of each squad, by how many squads have played on the oil before it. */
    private final double[][] spreadPins;

    /**
     * Averages playings.
     *
     * @param playings at least two; of each, by squad, how its scores change by the number of squads before it on the
     *     oil
     * @param styles number of styles
     * @param sets sets of values that the playings went through in turn
     */
    SquadLosses(List<List<BlockPlaying>> playings, int styles, int sets) {
        int squads = playings.get(0).size();
        curves = new ArrayList<>();
        games = new double[squads];
        spreadPins = new double[squads][];
        for (int s = 0; s < squads; s++) {
            int squad = s;
            List<BlockPlaying> ofSquad =
                    playings.stream().map(playing -> playing.get(squad)).toList();
            curves.add(new AgeCurve(ofSquad, squad + 1, styles, sets));
            spreadPins[s] = curves.get(s).spreadPins();
            games[s] = IntStream.range(0, styles)
                            .map(style -> BlockPlaying.games(ofSquad, 0, style))
                            .sum()
                    / (double) playings.size();
        }
    }

    private SquadLosses(List<AgeCurve> curves, double[] games, double[][] spreadPins) {
        this.curves = curves;
        this.games = games;
        this.spreadPins = spreadPins;
    }

    /** The same under one set of values. */
    SquadLosses under(int set) {
        return new SquadLosses(
                curves,
                games,
                curves.stream().map(curve -> curve.spreadPins(set)).toArray(double[][]::new));
    }

    int sets() {
        return curves.get(0).sets();
    }

    /** Games of all bowlers of a squad. */
    double games(int squad) {
        return games[squad];
    }

    /** Root mean square change of a squad's expected scores (pins a game), with lanes oiled before another. */
    double spreadPins(int squad, int oiledBefore) {
        return spreadPins[squad][squad - oiledBefore];
    }

    /** The same over the games of some squads that play on one oiling, summed as games times pins. */
    double pinGames(int start, int end) {
        return IntStream.range(start, end)
                .mapToDouble(squad -> games[squad] * spreadPins(squad, start))
                .sum();
    }
}
