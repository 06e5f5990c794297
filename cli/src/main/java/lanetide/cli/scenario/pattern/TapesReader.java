package lanetide.cli.scenario.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.TapeTable;
import lanetide.oilflow.lane.LaneGeometry;

/** Reads tape readings: a table in the scenario, or one in a CSV file beside it. */
record TapesReader(NamedFiles files) {
    Optional<TapeTable> read(Section section, Optional<Double> lengthM) {
        Optional<Double> errorUnits = section.find(PatternKeys.ERROR);
        TapeReadings readings = new TapeReadings();
        if (section.has(PatternKeys.FILE)) {
            fromFile(section, readings);
        } else {
            fromTable(section, readings);
        }
        if (section.notices().hasErrors() || lengthM.isEmpty()) {
            return Optional.empty();
        }
        Optional<TapeTable> table = readings.table(section.value(), lengthM.get(), errorUnits.orElseThrow());
        table.ifPresent(known -> held(section, known));
        return table;
    }

    private void fromFile(Section section, TapeReadings readings) {
        for (Key<?> key : List.of(PatternKeys.BOARDS, PatternKeys.READINGS)) {
            section.value(key).ifPresent(TapesReader::besideFile);
        }
        section.value(PatternKeys.FILE)
                .ifPresent(value -> files.read(value)
                        .ifPresent(bytes ->
                                new TapeCsv(section.notices().in(files.path(value.plain()))).read(bytes, readings)));
    }

    private static void fromTable(Section section, TapeReadings readings) {
        section.require(PatternKeys.BOARDS);
        section.require(PatternKeys.READINGS);
        List<Optional<Integer>> boards = new ArrayList<>();
        section.list(PatternKeys.BOARDS).forEach(item -> boards.add(board(item, boards)));
        section.blocks(PatternKeys.READINGS).forEach(row -> addRow(row, boards, readings));
    }

    /** The board; empty if it could not be read, so that those after it keep their places. */
    private static Optional<Integer> board(Value item, List<Optional<Integer>> before) {
        Optional<Integer> board = item.read(PatternKeys.BOARD);
        if (board.isPresent() && before.contains(board)) {
            item.refuse(
                    NoticeCode.READING_TWICE,
                    ", a board that stands in the list already; each must stand once. Remove one of the two.");
            return Optional.empty();
        }
        return board;
    }

    private static void addRow(Section row, List<Optional<Integer>> boards, TapeReadings readings) {
        List<Value> items = row.list(PatternKeys.UNITS);
        if (items.size() != boards.size() && !items.isEmpty()) {
            row.value(PatternKeys.UNITS).ifPresent(units -> notAsMany(units, items.size(), boards.size()));
            return;
        }
        for (int i = 0; i < items.size(); i++) {
            Value item = items.get(i);
            Optional<Integer> board = boards.get(i);
            Optional<Double> film = item.read(PatternKeys.FILM);
            row.find(PatternKeys.AT)
                    .ifPresent(distanceM -> board.ifPresent(
                            known -> film.ifPresent(units -> readings.add(distanceM, known, units, item))));
        }
    }

    private static void notAsMany(Value units, int readings, int boards) {
        units.say(
                NoticeCode.READINGS_INCOMPLETE,
                String.valueOf(readings),
                units.path() + " has " + readings + " readings for " + boards
                        + " boards; there must be one for each, in the order of `boards`. Add or remove some.");
    }

    /** Says what is taken to lie beyond the outermost readings. */
    private static void held(Section section, TapeTable table) {
        double firstFt = table.distancesM().get(0) / LaneGeometry.FOOT_M;
        double lastFt = table.distancesM().get(table.distancesM().size() - 1) / LaneGeometry.FOOT_M;
        section.notices()
                .assumptions()
                .add(
                        section.path(),
                        "straight lines between readings; before " + Range.round(firstFt) + " ft as there, from "
                                + Range.round(lastFt) + " ft to the end as there, toward the gutters as on boards "
                                + table.acrossTheLane().boards().get(0) + " and "
                                + last(table.acrossTheLane().boards()),
                        "assumption");
    }

    private static int last(List<Integer> boards) {
        return boards.get(boards.size() - 1);
    }

    private static void besideFile(Value value) {
        value.say(
                NoticeCode.CONFLICTING_KEYS,
                value.plain(),
                value.path()
                        + " stands beside pattern.tapes.file, and readings must come from one of the two. Remove the"
                        + " other.");
    }
}
