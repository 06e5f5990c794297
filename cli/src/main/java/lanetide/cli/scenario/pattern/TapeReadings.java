package lanetide.cli.scenario.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.TapeTable;
import lanetide.oilflow.lane.LaneGeometry;

/** Tape readings in any order, checked together and set out as a table. */
final class TapeReadings {
    /** A gutter is out of sight of tapes that do not come this near (boards). */
    private static final int OUTERMOST = 10;

    private static final int MIDDLE = (int) LaneGeometry.CENTRE_BOARD;

    private final Map<Double, Map<Integer, Double>> rows = new TreeMap<>();
    private final Map<Double, Value> placeOfRow = new TreeMap<>();
    private final TreeSet<Integer> boards = new TreeSet<>();
    private final TreeSet<Double> rowsTwice = new TreeSet<>();

    void add(double distanceM, int board, double units, Value at) {
        placeOfRow.putIfAbsent(distanceM, at);
        boards.add(board);
        Double other = rows.computeIfAbsent(distanceM, row -> new TreeMap<>()).putIfAbsent(board, units);
        if (other != null && rowsTwice.add(distanceM)) {
            at.refuse(
                    NoticeCode.READING_TWICE,
                    ", a second reading of board " + board + " at " + feet(distanceM)
                            + "; there must be one. Write the mean of the two.");
        }
    }

    /** The table, if the readings are enough, complete, and end where the pattern does. */
    Optional<TapeTable> table(Value whole, double lengthM, double errorUnits) {
        if (!isEnough(whole, lengthM) || !isComplete() || !endsAt(lengthM, errorUnits)) {
            return Optional.empty();
        }
        List<Double> distances =
                rows.keySet().stream().filter(distanceM -> distanceM <= lengthM).toList();
        List<List<Double>> units = new ArrayList<>();
        distances.forEach(distanceM -> units.add(List.copyOf(rows.get(distanceM).values())));
        return Optional.of(new TapeTable(List.copyOf(boards), distances, units, errorUnits));
    }

    private boolean isEnough(Value whole, double lengthM) {
        long distances =
                rows.keySet().stream().filter(distanceM -> distanceM <= lengthM).count();
        if (distances < TapeTable.MIN_DISTANCES || boards.size() < TapeTable.MIN_BOARDS) {
            return tooFew(
                    whole,
                    "on " + boards.size() + " boards at " + distances
                            + " distances inside the pattern, and there must be"
                            + " at least " + TapeTable.MIN_BOARDS + " boards and " + TapeTable.MIN_DISTANCES
                            + " distances. Typical: six boards at 8 ft, 22 ft and 2 ft before the end.");
        }
        int low = boards.first();
        int high = boards.last();
        boolean right = low <= OUTERMOST && high >= MIDDLE - 2 && (high <= MIDDLE || high >= 40 - OUTERMOST);
        boolean left = high >= 40 - OUTERMOST && low <= MIDDLE + 2 && low >= MIDDLE;
        return right
                || left
                || tooFew(
                        whole,
                        "from board " + low + " to board " + high + ", and they must reach from at most board "
                                + OUTERMOST
                                + " to board " + (MIDDLE - 2) + " at least (up to " + MIDDLE
                                + " both halves count as alike), or to board " + (40 - OUTERMOST)
                                + " at least. Read more boards.");
    }

    private static boolean tooFew(Value whole, String what) {
        whole.say(NoticeCode.TOO_FEW_READINGS, whole.plain(), whole.path() + " has readings " + what);
        return false;
    }

    private boolean isComplete() {
        boolean complete = true;
        for (Map.Entry<Double, Map<Integer, Double>> row : rows.entrySet()) {
            List<Integer> missing = boards.stream()
                    .filter(board -> !row.getValue().containsKey(board))
                    .toList();
            if (!missing.isEmpty()) {
                complete = false;
                Value at = placeOfRow.get(row.getKey());
                at.say(
                        NoticeCode.READINGS_INCOMPLETE,
                        at.plain(),
                        at.path() + " (" + at.plain() + ") belongs to the readings at " + feet(row.getKey())
                                + ", which have none of board " + missing.get(0)
                                + "; every board must be read at every distance. Add it, or leave the board out.");
            }
        }
        return complete;
    }

    private boolean endsAt(double lengthM, double errorUnits) {
        for (Map.Entry<Double, Map<Integer, Double>> row : rows.entrySet()) {
            for (Map.Entry<Integer, Double> reading : row.getValue().entrySet()) {
                if (row.getKey() > lengthM && reading.getValue() > errorUnits) {
                    oilPastTheEnd(row.getKey(), reading, lengthM, errorUnits);
                    return false;
                }
            }
        }
        return true;
    }

    private void oilPastTheEnd(
            double distanceM, Map.Entry<Integer, Double> reading, double lengthM, double errorUnits) {
        Value at = placeOfRow.get(distanceM);
        at.say(
                NoticeCode.TAPES_CONTRADICT_LENGTH,
                at.plain(),
                at.path() + " (" + at.plain() + ") is among the readings at " + feet(distanceM) + ", where board "
                        + reading.getKey() + " has " + Range.round(reading.getValue())
                        + " units, but the pattern ends at " + feet(lengthM)
                        + "; past its end no reading may be above its"
                        + " error bar (" + Range.round(errorUnits) + " units). Correct the length or the reading.");
    }

    private static String feet(double metres) {
        return Range.round(metres / LaneGeometry.FOOT_M) + " ft";
    }
}
