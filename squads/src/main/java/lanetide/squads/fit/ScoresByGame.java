package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;

/** What the scores of squads say of their games, with who bowled taken out. */
final class ScoresByGame {
    private ScoresByGame() {}

    /**
     * One reading for each game but the last, which follows from the others; none of a squad nobody is known whole of.
     */
    static List<Reading.Game> of(Event event, List<ScoreMade> scores) {
        List<Reading.Game> games = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            String squad = event.squads().get(s).id();
            Map<String, int[]> whole = whole(scores, squad, event.games(s));
            double[] means = means(whole.values());
            for (int game = 0; game < means.length - 1; game++) {
                games.add(new Reading.Game(squad, game + 1, means[game], whole.size()));
            }
        }
        return games;
    }

    /** Those of whom every game is known. */
    private static Map<String, int[]> whole(List<ScoreMade> scores, String squad, int games) {
        Map<String, int[]> byBowler = new TreeMap<>();
        for (ScoreMade score : scores) {
            if (score.squad().equals(squad) && score.game() <= games) {
                byBowler.computeIfAbsent(
                                        score.bowler(),
                                        name -> IntStream.range(0, games)
                                                .map(game -> -1)
                                                .toArray())[score.game() - 1] =
                        score.pins();
            }
        }
        byBowler.values().removeIf(pins -> IntStream.of(pins).anyMatch(one -> one < 0));
        return byBowler;
    }

    /** By game, how far the mean lies above that of all games; empty without bowlers. */
    private static double[] means(Iterable<int[]> bowlers) {
        double[] means = new double[0];
        int count = 0;
        for (int[] pins : bowlers) {
            means = means.length == 0 ? new double[pins.length] : means;
            double own = IntStream.of(pins).average().orElseThrow();
            for (int game = 0; game < pins.length; game++) {
                means[game] += pins[game] - own;
            }
            count++;
        }
        for (int game = 0; game < means.length; game++) {
            means[game] /= count;
        }
        return means;
    }

    /** What a playing says of a game, by all who bowled the whole squad in it. */
    static double said(EventResult result, Reading.Game reading) {
        return result.squads().stream()
                .filter(squad -> squad.squad().equals(reading.squad()))
                .mapToDouble(squad -> means(squad.bowlers().stream()
                        .filter(bowler -> bowler.scores().size() == squad.games())
                        .map(ScoresByGame::pins)
                        .toList())[reading.game() - 1])
                .findFirst()
                .orElseThrow();
    }

    private static int[] pins(BowlerResult bowler) {
        return bowler.scores().stream().mapToInt(Integer::intValue).toArray();
    }
}
