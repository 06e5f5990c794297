package lanetide.cli.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.film.ByStretch;

/** What wear does to a ball, as people are told. */
public final class WearWords {
    /** The parts of a shift, by the fields of answers. */
    public static final Map<String, ToDoubleFunction<ByStretch>> FIELDS = fields();

    /** The same by the heads of columns. */
    public static final Map<String, ToDoubleFunction<ByStretch>> COLUMNS = columns();

    /** What the columns say. */
    public static final String NOTE =
            "Boards by which a good shot on the line of the fresh pattern meets the pins higher (+) or lighter (-) than on"
                    + " the lane as it was laid. Heads: how much of it goes if the first 15 ft alone are made fresh;"
                    + " mid-lane: the same from there to the end of the pattern; past end: without the oil carried there."
                    + " Together is the rest, which no stretch does alone.";

    /** The smallest move that is told (boards). */
    private static final double NOTICED_BOARDS = 0.5;

    private static final String AS_BEFORE = ", but all in all the ball comes in as on the fresh pattern.";

    private WearWords() {}

    private static Map<String, ToDoubleFunction<ByStretch>> fields() {
        Map<String, ToDoubleFunction<ByStretch>> fields = new LinkedHashMap<>();
        fields.put("allBoards", ByStretch::all);
        fields.put("headsBoards", ByStretch::heads);
        fields.put("midLaneBoards", ByStretch::midLane);
        fields.put("pastEndBoards", ByStretch::pastEnd);
        fields.put("togetherBoards", ByStretch::together);
        return Collections.unmodifiableMap(fields);
    }

    private static Map<String, ToDoubleFunction<ByStretch>> columns() {
        Map<String, ToDoubleFunction<ByStretch>> columns = new LinkedHashMap<>();
        columns.put("All", ByStretch::all);
        columns.put("Heads", ByStretch::heads);
        columns.put("Mid-lane", ByStretch::midLane);
        columns.put("Past end", ByStretch::pastEnd);
        columns.put("Together", ByStretch::together);
        return Collections.unmodifiableMap(columns);
    }

    /**
     * What to make of it (common practice, no source).
     *
     * @param shift what wear does to the ball
     * @param smoother whether there is a smoother ball to change to
     * @return a sentence
     */
    public static String advice(ByStretch shift, boolean smoother) {
        String dry = dry(shift);
        boolean wet = shift.pastEnd() <= -NOTICED_BOARDS;
        if (!dry.isEmpty() && wet) {
            return dry + ", wet late: less angle, "
                    + (smoother ? "a smoother ball." : "and you bring no smoother ball to help.");
        }
        if (!dry.isEmpty()) {
            return shift.all() >= NOTICED_BOARDS
                    ? dry + ": the ball turns sooner, so play further in than on the fresh pattern."
                    : dry + AS_BEFORE;
        }
        if (wet) {
            return shift.all() <= -NOTICED_BOARDS
                    ? "Wet late: the ball comes back less, so play straighter and further out than on the fresh pattern."
                    : "Wet late" + AS_BEFORE;
        }
        return Math.abs(shift.all()) < NOTICED_BOARDS
                ? "Near enough as it was laid: start as on the fresh pattern."
                : "No stretch alone explains it; believe your ball.";
    }

    private static String dry(ByStretch shift) {
        boolean heads = shift.heads() >= NOTICED_BOARDS;
        boolean midLane = shift.midLane() >= NOTICED_BOARDS;
        if (heads) {
            return midLane ? "Dry early and in the middle" : "Dry early";
        }
        return midLane ? "Dry in the middle" : "";
    }
}
