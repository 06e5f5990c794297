package lanetide.cli.simulate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;

/** The lanes of one squad, brought together over the lanes: means of what each lane was after each of its games. */
public final class SquadLanes {
    private final String squad;
    private final Map<Integer, List<LaneState>> byGame = new TreeMap<>();

    private SquadLanes(String squad) {
        this.squad = squad;
    }

    /** One for each squad, in order of time. */
    public static List<SquadLanes> of(List<LaneState> states) {
        Map<String, SquadLanes> squads = new LinkedHashMap<>();
        for (LaneState state : states) {
            squads.computeIfAbsent(state.squad(), SquadLanes::new)
                    .byGame
                    .computeIfAbsent(state.afterGame(), game -> new ArrayList<>())
                    .add(state);
        }
        return new ArrayList<>(squads.values());
    }

    /** A style and the side it is thrown from. */
    public record StyleHand(String style, Hand hand) {
        /** For example {@code tweener (right)}. */
        public String words() {
            return style + (hand == Hand.RIGHT ? " (right)" : " (left)");
        }
    }

    /** The squad's name. */
    public String squad() {
        return squad;
    }

    /** Games after which a lane was looked at; 0 is as the squad found it. */
    public List<Integer> games() {
        return new ArrayList<>(byGame.keySet());
    }

    List<LaneState> after(int game) {
        return byGame.get(game);
    }

    /** Every lane of the squad as it was left. */
    List<LaneState> atTheEnd() {
        Map<Integer, LaneState> last = new TreeMap<>();
        byGame.values().forEach(states -> states.forEach(state -> last.put(state.lane(), state)));
        return new ArrayList<>(last.values());
    }

    /** The last game after which a lane was looked at. */
    public int lastGame() {
        return games().get(games().size() - 1);
    }

    double mean(int game, ToDoubleFunction<LaneState> quantity) {
        return after(game).stream().mapToDouble(quantity).average().orElseThrow();
    }

    /** The styles and hands whose windows are known. */
    public List<StyleHand> kinds() {
        return byGame.values().iterator().next().get(0).windows().stream()
                .map(window -> new StyleHand(window.style(), window.hand()))
                .toList();
    }

    /** The middle window: medians over the lanes on which the style can meet the pocket; empty if there are none. */
    public Optional<StyleWindow.Boards> window(int game, StyleHand kind) {
        List<StyleWindow.Boards> found = after(game).stream()
                .flatMap(state -> state.windows().stream())
                .filter(window -> window.style().equals(kind.style()) && window.hand() == kind.hand())
                .flatMap(window -> window.boards().stream())
                .toList();
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new StyleWindow.Boards(
                        median(found, StyleWindow.Boards::low),
                        median(found, StyleWindow.Boards::high),
                        median(found, StyleWindow.Boards::best)));
    }

    /** Width of the windows after a game, mean over the styles that have one (boards); empty if none has. */
    OptionalDouble meanWidth(int game) {
        return kinds().stream()
                .flatMap(kind -> window(game, kind).stream())
                .mapToDouble(window -> window.high() - window.low())
                .average();
    }

    private static double median(List<StyleWindow.Boards> windows, ToDoubleFunction<StyleWindow.Boards> quantity) {
        double[] sorted = windows.stream().mapToDouble(quantity).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
