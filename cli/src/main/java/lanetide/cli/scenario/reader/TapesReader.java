package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.TapeTable;
import lanetide.oilflow.lane.LaneGeometry;

/** Reads tape readings: a table in the scenario, or one in a CSV file beside it. */
final class TapesReader {
    static final Range DISTANCES = Range.between(0, LaneGeometry.HEAD_PIN_M);
    static final Range UNITS = Range.between(0, TapeTable.MAX_UNITS);

    /** Stands for a board that could not be read, so that those after it keep their places. */
    private static final int NONE = 0;

    private final Notices notices;
    private final Assumptions assumptions;
    private final NamedFiles files;

    TapesReader(Notices notices, Assumptions assumptions, NamedFiles files) {
        this.notices = notices;
        this.assumptions = assumptions;
        this.files = files;
    }

    Optional<TapeTable> read(Value tapes, double lengthM) {
        return tapes.section(Block.TAPES).flatMap(section -> read(section, tapes, lengthM));
    }

    private Optional<TapeTable> read(Section section, Value tapes, double lengthM) {
        int before = notices.errors();
        double errorUnits =
                section.quantity("error", Measure.FILM, Range.between(0, 20), Defaults.TAPE_ERROR, assumptions);
        TapeReadings readings = new TapeReadings();
        if (section.has("file")) {
            fromFile(section, readings);
        } else {
            fromTable(section, readings);
        }
        if (notices.errors() > before || Double.isNaN(lengthM)) {
            return Optional.empty();
        }
        Optional<TapeTable> table = readings.table(tapes, lengthM, errorUnits);
        table.ifPresent(known -> held(section, known));
        return table;
    }

    private void fromFile(Section section, TapeReadings readings) {
        for (String key : List.of("boards", "readings")) {
            section.get(key).ifPresent(TapesReader::besideFile);
        }
        section.get("file")
                .ifPresent(value -> files.read(value)
                        .ifPresent(bytes -> new TapeCsv(notices.in(files.path(value.plain()))).read(bytes, readings)));
    }

    private static void fromTable(Section section, TapeReadings readings) {
        List<Integer> boards = new ArrayList<>();
        for (Value item : section.require("boards").flatMap(Value::list).orElse(List.of())) {
            boards.add(board(item, boards));
        }
        for (Value item : section.require("readings").flatMap(Value::list).orElse(List.of())) {
            item.section(Block.TAPE).ifPresent(row -> addRow(row, boards, readings));
        }
    }

    private static int board(Value item, List<Integer> before) {
        int board = item.whole(1, LaneGeometry.BOARDS).orElse(NONE);
        if (board == NONE || !before.contains(board)) {
            return board;
        }
        item.refuse(
                NoticeCode.READING_TWICE,
                ", a board that stands in the list already; each must stand once. Remove one of the two.");
        return NONE;
    }

    private static void addRow(Section row, List<Integer> boards, TapeReadings readings) {
        double distanceM = row.quantity("at", Measure.LENGTH, DISTANCES);
        Optional<Value> units = row.require("units");
        List<Value> items = units.flatMap(Value::list).orElse(List.of());
        if (units.isPresent() && items.size() != boards.size() && !items.isEmpty()) {
            units.get()
                    .say(
                            NoticeCode.READINGS_INCOMPLETE,
                            String.valueOf(items.size()),
                            units.get().path() + " has " + items.size() + " readings for " + boards.size()
                                    + " boards; there must be one for each, in the order of `boards`. Add or remove some.");
            return;
        }
        for (int i = 0; i < items.size(); i++) {
            OptionalDouble reading = items.get(i).quantity(Measure.NUMBER, UNITS);
            if (reading.isPresent() && !Double.isNaN(distanceM) && boards.get(i) != NONE) {
                readings.add(distanceM, boards.get(i), reading.getAsDouble(), items.get(i));
            }
        }
    }

    /** Says what is taken to lie beyond the outermost readings. */
    private void held(Section section, TapeTable table) {
        double firstFt = table.distancesM().get(0) / LaneGeometry.FOOT_M;
        double lastFt = table.distancesM().get(table.distancesM().size() - 1) / LaneGeometry.FOOT_M;
        assumptions.add(
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
