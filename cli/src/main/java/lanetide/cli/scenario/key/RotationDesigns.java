package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.squads.rotation.design.Counter;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Patterson;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Searched;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.rotation.design.Turning;

/** The designs of rotations by the names that scenarios and commands use. */
public final class RotationDesigns {
    /** The name of a design that is written out in a table. */
    public static final String LISTED = "listed";

    private static final List<String> MOVING = List.of("right", "left", "apart", "turning");
    private static final List<String> WAITING = List.of("right", "left");
    private static final List<String> STILL = List.of("stay", "balanced", "part-balanced", "drawn", "searched");

    private RotationDesigns() {}

    /**
     * A design by name and distance, as reports write it.
     *
     * @param name its name
     * @param move pairs at each move; 0 where that means nothing
     * @param every games between moves; 0 where that means nothing
     */
    public record Label(String name, int move, int every) {

        /**
         * The label in words.
         *
         * @return for example {@code right, 2 pairs}
         */
        public String words() {
            String distance = move == 0 ? "" : ", " + move + (move == 1 ? " pair" : " pairs");
            return name + distance + (every > 1 ? " every " + every + " games" : "");
        }
    }

    /**
     * Names that need no table.
     *
     * @return each name with itself, in the order in which they are explained
     */
    public static Map<String, String> byRule() {
        return Collections.unmodifiableMap(ByName.of(List.of(
                "stay", "right", "left", "turning", "apart", "balanced", "part-balanced", "drawn", "searched")));
    }

    /** Every name, the one that needs a table too. */
    public static Map<String, String> all() {
        Map<String, String> names = new LinkedHashMap<>(byRule());
        names.put(LISTED, LISTED);
        return names;
    }

    /** Whether a design moves by a number of pairs. */
    public static boolean moves(String name) {
        return MOVING.contains(name);
    }

    /** Whether a design can stay for some games before it moves. */
    public static boolean waits(String name) {
        return WAITING.contains(name);
    }

    /**
     * The distance of a move where nobody says.
     *
     * @param name name of a design
     * @return pairs; 0 where that means nothing
     */
    public static int usualMove(String name) {
        return !moves(name) ? 0 : name.equals("turning") ? 2 : 1;
    }

    /**
     * Builds a design.
     *
     * @param name its name, of those by rule
     * @param move pairs at each move, at least 1 where it means something
     * @param every games between moves, at least 1 where it means something
     * @param seed seed of what is drawn or searched
     * @return the design
     */
    public static RotationDesign of(String name, int move, int every, long seed) {
        return switch (name) {
            case "stay" -> new Stay();
            case "right" -> new Ring(move, every);
            case "left" -> new Ring(-move, every);
            case "turning" -> new Turning(move);
            case "apart" -> new Counter(move);
            case "balanced" -> new RowComplete();
            case "part-balanced" -> new Patterson();
            case "drawn" -> new Shuffled(seed);
            case "searched" -> new Searched(seed);
            default -> throw new IllegalStateException("no design " + name);
        };
    }

    /**
     * What a design is called.
     *
     * @param design a design
     * @return its label
     */
    public static Label labelOf(RotationDesign design) {
        if (design instanceof Ring ring) {
            return new Label(ring.step() > 0 ? "right" : "left", Math.abs(ring.step()), ring.everyGames());
        }
        if (design instanceof Turning turning) {
            return new Label("turning", turning.step(), 0);
        }
        if (design instanceof Counter counter) {
            return new Label("apart", counter.step(), 0);
        }
        return new Label(plainName(design), 0, 0);
    }

    private static String plainName(RotationDesign design) {
        List<Class<? extends RotationDesign>> plain =
                List.of(Stay.class, RowComplete.class, Patterson.class, Shuffled.class, Searched.class, Explicit.class);
        int at = plain.indexOf(design.getClass());
        return at < STILL.size() ? STILL.get(at) : LISTED;
    }
}
