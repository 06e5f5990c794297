package lanetide.squads.play;

import java.util.List;
import java.util.stream.LongStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;
import lanetide.squads.result.BowlerResult;

/** Compares three ways of choosing lines: one bowler is judged, among four who learn as bowlers do. */
final class Strategies {
    private Strategies() {}

    /**
     * Mean scores of a bowler on one pair, by what he goes by.
     *
     * @return pins a game of one who never moves, of one who learns, of one who knows the oil
     */
    static double[] scores(String style, String level, int games, int playings) {
        return new double[] {
            mean(style, level, games, playings, Knowledge.NOTHING),
            mean(style, level, games, playings, Knowledge.SEEN_AND_TOLD),
            mean(style, level, games, playings, Knowledge.EVERYTHING)
        };
    }

    /** Mean score (pins a game) of a bowler who goes by this. */
    static double mean(String style, String level, int games, int playings, Knowledge knowledge) {
        Event event = Events.onePair(
                games,
                bowler("judged", style, level, "medium-reactive"),
                bowler("stroker", "stroker", level, "weak-reactive"),
                bowler("tweener", "tweener", level, "medium-reactive"),
                bowler("power", "power", level, "strong-reactive"),
                bowler("straight", "straight", level, "weak-reactive"));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        return LongStream.range(0, playings)
                .mapToDouble(seed -> judged(event, lines, seed, knowledge))
                .average()
                .orElseThrow();
    }

    /** One playing of an event of one squad, without windows. */
    static List<BowlerResult> play(Event event, StartingLines lines, long seed) {
        return new TournamentSimulation(Events.setup(event, lines, seed))
                .play()
                .squads()
                .get(0)
                .bowlers();
    }

    private static double judged(Event event, StartingLines lines, long seed, Knowledge knowledge) {
        Agents agents = new Agents(event, lines, Events.PHYSICS);
        TournamentSimulation playing = new TournamentSimulation(Events.withAgents(
                Events.setup(event, lines, seed),
                (bowler, player, pattern) -> bowler.id().equals("judged")
                        ? agents.of(bowler, player, pattern, knowledge)
                        : agents.of(bowler, player, pattern)));
        return playing.play().squads().get(0).bowlers().get(0).meanScore();
    }

    private static Bowler bowler(String id, String style, String level, String cover) {
        return Events.bowler(id, Hand.RIGHT, style, Events.level(level), cover);
    }
}
