package lanetide.cli.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.line.WearShift;

/** What wear does to a ball, as people are told. */
public final class WearWords {
    /** The parts of a shift, by the fields of answers. */
    public static final Map<String, ToDoubleFunction<WearShift>> FIELDS = fields();

    /** The same by the heads of columns. */
    public static final Map<String, ToDoubleFunction<WearShift>> COLUMNS = columns();

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

    private static Map<String, ToDoubleFunction<WearShift>> fields() {
        Map<String, ToDoubleFunction<WearShift>> fields = new LinkedHashMap<>();
        fields.put("allBoards", WearShift::allBoards);
        fields.put("headsBoards", WearShift::headsBoards);
        fields.put("midLaneBoards", WearShift::midLaneBoards);
        fields.put("pastEndBoards", WearShift::pastEndBoards);
        fields.put("togetherBoards", WearShift::togetherBoards);
        return Collections.unmodifiableMap(fields);
    }

    private static Map<String, ToDoubleFunction<WearShift>> columns() {
        Map<String, ToDoubleFunction<WearShift>> columns = new LinkedHashMap<>();
        columns.put("All", WearShift::allBoards);
        columns.put("Heads", WearShift::headsBoards);
        columns.put("Mid-lane", WearShift::midLaneBoards);
        columns.put("Past end", WearShift::pastEndBoards);
        columns.put("Together", WearShift::togetherBoards);
        return Collections.unmodifiableMap(columns);
    }

    /**
     * What to make of it (common practice, no source).
     *
     * @param shift what wear does to the ball
     * @param smoother whether there is a smoother ball to change to
     * @return a sentence
     */
    public static String advice(WearShift shift, boolean smoother) {
        String dry = dry(shift);
        boolean wet = shift.pastEndBoards() <= -NOTICED_BOARDS;
        if (!dry.isEmpty() && wet) {
            return dry + ", wet late: less angle, "
                    + (smoother ? "a smoother ball." : "and you bring no smoother ball to help.");
        }
        if (!dry.isEmpty()) {
            return shift.allBoards() >= NOTICED_BOARDS
                    ? dry + ": the ball turns sooner, so play further in than on the fresh pattern."
                    : dry + AS_BEFORE;
        }
        if (wet) {
            return shift.allBoards() <= -NOTICED_BOARDS
                    ? "Wet late: the ball comes back less, so play straighter and further out than on the fresh pattern."
                    : "Wet late" + AS_BEFORE;
        }
        return Math.abs(shift.allBoards()) < NOTICED_BOARDS
                ? "Near enough as it was laid: start as on the fresh pattern."
                : "No stretch alone explains it; believe your ball.";
    }

    private static String dry(WearShift shift) {
        boolean heads = shift.headsBoards() >= NOTICED_BOARDS;
        boolean midLane = shift.midLaneBoards() >= NOTICED_BOARDS;
        if (heads) {
            return midLane ? "Dry early and in the middle" : "Dry early";
        }
        return midLane ? "Dry in the middle" : "";
    }
}
