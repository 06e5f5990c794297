package lanetide.squads.play;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.bowler.LaneRead;

/**
 * Those who bowl on a pair together. Each watches the balls of the others of his hand; what is on the other half of the
 * lane tells him nothing.
 *
 * @param all the bowlers
 */
record Mates(List<BowlerInPlay> all) {
    /** Difference in rev rate that makes two bowlers twice as unlike as those with the same (rad/s; assumption). */
    private static final double UNLIKE_RADPS = 200 * 2 * Math.PI / 60;

    Mates {
        all = List.copyOf(all);
    }

    static Mates of(List<BowlerInGame> players) {
        return new Mates(
                players.stream().map(player -> player.member().bowler()).toList());
    }

    /** All but the one who threw it see a ball. */
    void watch(BowlerInPlay thrower, LaneInPlay lane, LaneRead read) {
        for (BowlerInPlay mate : all) {
            if (mate != thrower && mate.player().hand() == thrower.player().hand()) {
                mate.agent().watch(lane.number(), read, unlike(mate, thrower));
            }
        }
    }

    private static double unlike(BowlerInPlay one, BowlerInPlay other) {
        return 1 + Math.abs(revs(one) - revs(other)) / UNLIKE_RADPS;
    }

    private static double revs(BowlerInPlay bowler) {
        return bowler.player().style().release().spinRadps();
    }

    /** What they would tell the next on a lane: by hand, the mean of how far they stand in. */
    Map<Hand, Double> tell(LaneInPlay lane) {
        return all.stream()
                .filter(bowler -> bowler.agent().moved(lane.number()).isPresent())
                .collect(Collectors.groupingBy(
                        bowler -> bowler.player().hand(),
                        Collectors.averagingDouble(
                                bowler -> bowler.agent().moved(lane.number()).orElseThrow())));
    }
}
