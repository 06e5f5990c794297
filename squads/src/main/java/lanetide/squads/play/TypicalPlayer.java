package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;

/**
 * The commonest kind of bowler of a style and hand in an event: it stands for the style where windows are reported.
 *
 * @param style style's name
 * @param hand delivery side
 * @param player the commonest combination of cover and level among them; of equally common ones the first in the field
 * @param start his line on the fresh pattern
 */
record TypicalPlayer(String style, Hand hand, Player player, Line start) {
    /** One for each style and hand that plays, by style, then hand. */
    static List<TypicalPlayer> of(Event event, Physics physics, StartingLines lines) {
        Map<Kind, Map<Player, Integer>> counts =
                new TreeMap<>(Comparator.comparing(Kind::style).thenComparing(Kind::hand));
        for (Squad squad : event.squads()) {
            for (Group group : squad.groups()) {
                for (Bowler bowler : group.bowlers()) {
                    counts.computeIfAbsent(new Kind(bowler.style().id(), bowler.hand()), k -> new LinkedHashMap<>())
                            .merge(StartingLines.player(bowler, event, physics), 1, Integer::sum);
                }
            }
        }
        List<TypicalPlayer> typical = new ArrayList<>();
        for (Map<Player, Integer> kinds : counts.values()) {
            Player player = commonest(kinds);
            typical.add(new TypicalPlayer(player.style().id(), player.hand(), player, lines.of(player)));
        }
        return typical;
    }

    private static Player commonest(Map<Player, Integer> kinds) {
        return kinds.entrySet().stream()
                .reduce((best, next) -> next.getValue() > best.getValue() ? next : best)
                .orElseThrow()
                .getKey();
    }

    private record Kind(String style, Hand hand) {}
}
