package lanetide.cli.scenario.measured;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a table of measurements holds: it is told by columns that no other kind has. */
@SuppressWarnings("ImmutableEnumChecker") // the lists come from List.of, the set from Set.of
enum Kind {
    TAPES(
            "tapes",
            Set.of(Column.OIL),
            List.of(Column.LANE, Column.DISTANCE, Column.BOARD, Column.OIL),
            List.of(Column.SQUAD, Column.AFTER, Column.TIME, Column.OIL_ERROR)),
    BALLS(
            "balls",
            Set.of(Column.LAYDOWN, Column.ARROWS, Column.MET, Column.PASSED),
            List.of(),
            List.of(
                    Column.LANE,
                    Column.BOWLER,
                    Column.LAYDOWN,
                    Column.ARROWS,
                    Column.MET,
                    Column.DISTANCE,
                    Column.PASSED,
                    Column.SQUAD,
                    Column.AFTER,
                    Column.TIME,
                    Column.SPEED,
                    Column.REVS,
                    Column.SEEN_ERROR)),
    SCORES("scores", Set.of(Column.SCORE), List.of(Column.GAME, Column.BOWLER, Column.SCORE), List.of(Column.SQUAD)),
    ENDS("times of games", Set.of(Column.ENDED), List.of(Column.GAME, Column.ENDED), List.of(Column.SQUAD));

    private final String word;
    private final Set<Column> marks;
    private final List<Column> required;
    private final List<Column> optional;

    Kind(String word, Set<Column> marks, List<Column> required, List<Column> optional) {
        this.word = word;
        this.marks = marks;
        this.required = required;
        this.optional = optional;
    }

    /** What notices call it. */
    String word() {
        return word;
    }

    /** The columns that it must have. */
    List<Column> required() {
        return required;
    }

    /** The columns that it may lack at the price of what they would tell. */
    List<Column> drawnIfMissing() {
        return this == BALLS ? List.of(Column.LANE, Column.BOWLER, Column.LAYDOWN, Column.ARROWS) : List.of();
    }

    /** Its columns by their titles, in small letters without spaces and signs. */
    Map<String, Column> columns() {
        Map<String, Column> columns = new HashMap<>();
        for (Column column : all()) {
            column.titles().keySet().forEach(title -> columns.put(title, column));
        }
        return columns;
    }

    /** The units of the numbers below a title, by column and title. */
    Map<Column, Map<String, String>> units() {
        Map<Column, Map<String, String>> units = new EnumMap<>(Column.class);
        all().forEach(column -> units.put(column, column.titles()));
        return units;
    }

    /** Whether a title is one of a column that tells this kind. */
    boolean isToldBy(String title) {
        Column column = columns().get(title);
        return column != null && marks.contains(column);
    }

    /** What a table of this kind must and may name, to follow "must name". */
    String rule() {
        return required.isEmpty() ? words(optional) : words(required) + ", and may name " + words(optional);
    }

    /** All that is read, to stand before "are". */
    String read() {
        return words(all());
    }

    private List<Column> all() {
        return Stream.concat(required.stream(), optional.stream()).toList();
    }

    private static String words(List<Column> columns) {
        String words = columns.stream().map(Column::word).collect(Collectors.joining(", "));
        int last = words.lastIndexOf(", ");
        return last < 0 ? words : words.substring(0, last) + " and" + words.substring(last + 1);
    }
}
