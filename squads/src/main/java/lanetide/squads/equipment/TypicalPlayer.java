package lanetide.squads.equipment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;

/**
 * The commonest kind of bowler of a style in an event: it stands for the style where windows are reported. Both hands
 * of a style are the same kind, so that what differs between them is the lane.
 *
 * @param style style's name
 * @param hand delivery side
 * @param player the commonest combination of cover and level among them; of equally common ones the first in the field
 * @param start his line on the fresh pattern
 */
public record TypicalPlayer(String style, Hand hand, Player player, Line start) {
    /**
     * One for each style and hand that plays, by style, then hand.
     *
     * @param event the event
     * @param physics the laws
     * @param lines the lines bowlers bring to it
     * @return the typical players
     */
    public static List<TypicalPlayer> of(Event event, Physics physics, StartingLines lines) {
        Map<String, Map<Player, Integer>> kinds = new TreeMap<>();
        Map<String, SortedSet<Hand>> hands = new TreeMap<>();
        for (Squad squad : event.squads()) {
            for (Group group : squad.groups()) {
                for (Bowler bowler : group.bowlers()) {
                    Player kind = StartingLines.player(bowler, Hand.RIGHT, event, physics);
                    kinds.computeIfAbsent(bowler.style().id(), style -> new LinkedHashMap<>())
                            .merge(kind, 1, Integer::sum);
                    hands.computeIfAbsent(bowler.style().id(), style -> new TreeSet<>())
                            .add(bowler.hand());
                }
            }
        }
        List<TypicalPlayer> typical = new ArrayList<>();
        kinds.forEach((style, counts) -> {
            Player kind = commonest(counts);
            for (Hand hand : hands.get(style)) {
                Player player = new Player(kind.style(), kind.spread(), hand, kind.contact());
                typical.add(new TypicalPlayer(
                        style, hand, player, lines.on(event.pattern()).of(player)));
            }
        });
        return typical;
    }

    private static Player commonest(Map<Player, Integer> kinds) {
        return kinds.entrySet().stream()
                .reduce((best, next) -> next.getValue() > best.getValue() ? next : best)
                .orElseThrow()
                .getKey();
    }
}
