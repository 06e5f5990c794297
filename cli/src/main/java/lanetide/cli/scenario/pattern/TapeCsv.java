package lanetide.cli.scenario.pattern;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Value;

/**
 * Reads tape readings from comma-separated values (RFC 4180): a header, then one reading a row. Capitals, spaces and
 * signs in the header do not matter; a unit in it holds for the whole column. A notice's column counts cells.
 */
record TapeCsv(Notices notices) {
    private static final String DISTANCE = "distance";
    private static final String BOARD = "board";
    private static final String UNITS = "units";

    /** What a column is, and the unit of its numbers, by its header in small letters without spaces and signs. */
    private static final Map<String, Column> COLUMNS = CsvTable.columns(Map.of(
            new Column(DISTANCE, "ft"), List.of("distance", "distanceft", "distancefeet", "ft", "feet", "at"),
            new Column(DISTANCE, "m"), List.of("distancem", "distancemetres", "distancemeters"),
            new Column(BOARD, ""), List.of("board", "boards", "boardnumber"),
            new Column(UNITS, "units"), List.of("units", "unit", "oil", "oilunits", "unitsofoil", "reading"),
            new Column(UNITS, "um"), List.of("oilum", "um")));

    private static final Map<String, String> NAMES = COLUMNS.entrySet().stream()
            .collect(Collectors.toMap(
                    Map.Entry::getKey, entry -> entry.getValue().name()));

    private static final Form<Double> FILM = Form.quantity(Measure.FILM, "units or um", PatternKeys.FILM.range());

    private static final String ALL = "distance, board and units";

    private record Column(String name, String unit) {}

    void read(byte[] bytes, TapeReadings readings) {
        CsvTable.read(bytes, notices, "distance,board,units", "8,10,22").ifPresent(table -> read(table, readings));
    }

    private void read(CsvTable table, TapeReadings readings) {
        Map<String, Integer> places = table.places(NAMES, notices, ALL);
        for (String wanted : List.of(DISTANCE, BOARD, UNITS)) {
            if (!places.containsKey(wanted)) {
                table.columnMissing(notices, wanted, ALL);
                return;
            }
        }
        for (CsvTable.Row row : table.rows()) {
            if (table.fits(row, notices, "Write decimals with a point.")) {
                reading(row, table, places, readings);
            }
        }
    }

    private void reading(CsvTable.Row row, CsvTable table, Map<String, Integer> places, TapeReadings readings) {
        Value units = value(row, table, places.get(UNITS), UNITS);
        Optional<Double> distanceM =
                value(row, table, places.get(DISTANCE), DISTANCE).read(PatternKeys.AT.form());
        Optional<Integer> board = value(row, table, places.get(BOARD), BOARD).read(PatternKeys.BOARD);
        Optional<Double> film = units.read(FILM);
        if (distanceM.isPresent() && board.isPresent() && film.isPresent()) {
            readings.add(distanceM.get(), board.get(), film.get(), units);
        }
    }

    /** A cell as a scenario would write it: its number with the unit of its column. */
    private Value value(CsvTable.Row row, CsvTable table, int place, String name) {
        String cell = table.number(row.cell(place));
        String unit =
                COLUMNS.get(CsvTable.plain(table.header().cells().get(place))).unit();
        boolean bare = !cell.isEmpty() && !Character.isLetter(cell.charAt(cell.length() - 1));
        return new Value(row.node(place, bare && !unit.isEmpty() ? cell + " " + unit : cell), name, "", notices);
    }
}
