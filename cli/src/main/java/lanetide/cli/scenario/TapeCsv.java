package lanetide.cli.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lanetide.oilflow.lane.LaneGeometry;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Reads tape readings from comma-separated values (RFC 4180): a header, then one reading a row. Capitals, spaces and signs in
 * the header do not matter; a unit in it holds for the whole column. A notice's column counts cells.
 */
final class TapeCsv {
    private static final String DISTANCE = "distance";
    private static final String BOARD = "board";
    private static final String UNITS = "units";

    /** What a column is, and the unit of its numbers, by its header in small letters without spaces and signs. */
    private static final Map<String, Column> COLUMNS = Map.ofEntries(
            Map.entry("distance", new Column(DISTANCE, "ft")),
            Map.entry("distanceft", new Column(DISTANCE, "ft")),
            Map.entry("distancefeet", new Column(DISTANCE, "ft")),
            Map.entry("ft", new Column(DISTANCE, "ft")),
            Map.entry("feet", new Column(DISTANCE, "ft")),
            Map.entry("at", new Column(DISTANCE, "ft")),
            Map.entry("distancem", new Column(DISTANCE, "m")),
            Map.entry("distancemetres", new Column(DISTANCE, "m")),
            Map.entry("distancemeters", new Column(DISTANCE, "m")),
            Map.entry("board", new Column(BOARD, "")),
            Map.entry("boards", new Column(BOARD, "")),
            Map.entry("boardnumber", new Column(BOARD, "")),
            Map.entry("units", new Column(UNITS, "units")),
            Map.entry("unit", new Column(UNITS, "units")),
            Map.entry("oil", new Column(UNITS, "units")),
            Map.entry("oilunits", new Column(UNITS, "units")),
            Map.entry("unitsofoil", new Column(UNITS, "units")),
            Map.entry("reading", new Column(UNITS, "units")),
            Map.entry("oilum", new Column(UNITS, "um")),
            Map.entry("um", new Column(UNITS, "um")));

    private final Notices notices;

    TapeCsv(Notices notices) {
        this.notices = notices;
    }

    private record Column(String name, String unit) {}

    private record Row(int line, List<String> cells) {}

    void read(byte[] bytes, TapeReadings readings) {
        Optional<List<Row>> rows = new SourceText(notices).read(bytes).flatMap(this::rows);
        if (rows.isEmpty()) {
            return;
        }
        if (rows.get().isEmpty()) {
            columnMissing(new Row(1, List.of()), DISTANCE);
            return;
        }
        Row header = rows.get().get(0);
        Map<String, Integer> places = places(header);
        for (String wanted : List.of(DISTANCE, BOARD, UNITS)) {
            if (!places.containsKey(wanted)) {
                columnMissing(header, wanted);
                return;
            }
        }
        rows.get().stream().skip(1).forEach(row -> reading(row, header, places, readings));
    }

    /** The rows that hold anything. */
    private Optional<List<Row>> rows(String text) {
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            for (CSVRecord record : parser) {
                List<String> cells = record.toList();
                long breaks = cells.stream()
                        .mapToLong(cell -> cell.chars().filter(c -> c == '\n').count())
                        .sum();
                if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(new Row((int) (parser.getCurrentLineNumber() - breaks), cells));
                }
            }
            return Optional.of(rows);
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
            notices.add(
                    NoticeCode.SYNTAX_ERROR,
                    new Place(line, 1),
                    "",
                    "",
                    "The table cannot be read from here on: a quote does not end, or something stands after one. Each row"
                            + " must be `distance,board,units`, such as `8,10,22`.");
            return Optional.empty();
        }
    }

    private Map<String, Integer> places(Row header) {
        Map<String, Integer> places = new java.util.LinkedHashMap<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String title = header.cells().get(i);
            Column column = COLUMNS.get(plain(title));
            if (column == null || places.putIfAbsent(column.name(), i) != null) {
                notices.add(
                        NoticeCode.COLUMN_IGNORED,
                        new Place(header.line(), i + 1),
                        "",
                        title,
                        "The column `" + Notices.quote(title) + "` is not read; distance, board and units are.");
            }
        }
        return places;
    }

    private void columnMissing(Row header, String wanted) {
        String found = Notices.quote(String.join(",", header.cells()));
        notices.add(
                NoticeCode.COLUMN_MISSING,
                new Place(header.line(), 1),
                "",
                found,
                "The header is `" + found + "` and has no column `" + wanted
                        + "`; the first row must name distance, board and units, separated by commas.");
    }

    private void reading(Row row, Row header, Map<String, Integer> places, TapeReadings readings) {
        if (row.cells().size() > header.cells().size()) {
            notices.add(
                    NoticeCode.SYNTAX_ERROR,
                    new Place(row.line(), header.cells().size() + 1),
                    "",
                    String.join(",", row.cells()),
                    "The row has " + row.cells().size() + " cells and the header "
                            + header.cells().size() + "; there must be as many. Write decimals with a point.");
            return;
        }
        Value units = value(row, header, places.get(UNITS), UNITS);
        OptionalDouble distanceM =
                value(row, header, places.get(DISTANCE), DISTANCE).quantity(Measure.LENGTH, TapesReader.DISTANCES);
        OptionalInt board = value(row, header, places.get(BOARD), BOARD).whole(1, LaneGeometry.BOARDS);
        OptionalDouble thickness = units.quantity(Measure.FILM, TapesReader.UNITS);
        if (distanceM.isPresent() && board.isPresent() && thickness.isPresent()) {
            readings.add(distanceM.getAsDouble(), board.getAsInt(), thickness.getAsDouble(), units);
        }
    }

    /** A cell as a scenario would write it: its number with the unit of its column. */
    private Value value(Row row, Row header, int place, String name) {
        String cell = place < row.cells().size() ? row.cells().get(place).strip() : "";
        String unit = COLUMNS.get(plain(header.cells().get(place))).unit();
        boolean bare = !cell.isEmpty() && !Character.isLetter(cell.charAt(cell.length() - 1));
        String written = bare && !unit.isEmpty() ? cell + " " + unit : cell;
        Mark mark = new Mark("", 0, row.line() - 1, place, new int[0], 0);
        ScalarNode node = new ScalarNode(
                written.isEmpty() ? Tag.NULL : Tag.STR,
                true,
                written,
                ScalarStyle.PLAIN,
                Optional.of(mark),
                Optional.of(mark));
        return new Value(node, name, "", notices);
    }

    private static String plain(String title) {
        return title.toLowerCase(Locale.ROOT).replace("\u00b5", "u").replaceAll("[^a-z0-9]", "");
    }
}
