package lanetide.cli.scenario.measured;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Value;

/**
 * A table of measurements of which is known what it holds and where its columns stand.
 *
 * @param cells the table
 * @param kind what it holds
 * @param places where its columns stand
 * @param units units of the numbers below each title, by column
 * @param name name of its file, without a folder
 * @param notices takes what is wrong in it
 */
record MeasuredTable(
        CsvTable cells,
        Kind kind,
        Map<Column, Integer> places,
        Map<Column, Map<String, String>> units,
        String name,
        Notices notices) {
    /** The table in some cells; empty, with notices, if it holds no kind, several, or lacks columns. */
    static Optional<MeasuredTable> of(CsvTable cells, boolean needsSquad, String name, Notices notices) {
        return kind(cells, notices).flatMap(kind -> {
            Map<Column, Integer> places = cells.places(kind.columns(), notices, kind.read());
            List<Column> missing = new ArrayList<>(kind.required());
            if (needsSquad && !places.containsKey(Column.TIME)) {
                missing.add(Column.SQUAD);
            }
            missing.removeAll(places.keySet());
            missing.forEach(column -> cells.columnMissing(notices, column.word(), kind.rule()));
            kind.drawnIfMissing().stream()
                    .filter(column -> !places.containsKey(column))
                    .forEach(column -> leftOut(cells, column, notices));
            boolean sound = !countsGamesOtherwise(cells, kind, places, notices) && missing.isEmpty();
            return sound
                    ? Optional.of(new MeasuredTable(cells, kind, places, kind.units(), name, notices))
                    : Optional.empty();
        });
    }

    private static Optional<Kind> kind(CsvTable cells, Notices notices) {
        List<Kind> sure = new ArrayList<>();
        boolean pinsAlone = false;
        int second = 0;
        for (int place = 0; place < cells.header().cells().size(); place++) {
            String title = CsvTable.plain(cells.header().cells().get(place));
            List<Kind> told = Arrays.stream(Kind.values())
                    .filter(kind -> kind.isToldBy(title))
                    .toList();
            pinsAlone |= told.size() > 1;
            if (told.size() == 1 && !sure.contains(told.get(0))) {
                sure.add(told.get(0));
                second = place;
            }
        }
        if (sure.size() > 1) {
            twoKinds(cells, second, sure, notices);
            return Optional.empty();
        }
        if (sure.isEmpty() && !pinsAlone) {
            noKind(cells, notices);
        }
        // A table of balls says where they were laid down: pins without that are what somebody knocked over.
        return sure.isEmpty() && pinsAlone
                ? Optional.of(Kind.SCORES)
                : sure.stream().findFirst();
    }

    private static void noKind(CsvTable cells, Notices notices) {
        ofHeader(
                cells,
                0,
                notices,
                NoticeCode.TABLE_KIND_UNKNOWN,
                ", and what the table holds cannot be told from it; it must name a column"
                        + " `units` for tapes, `laydown`, `arrows`, `passed` or `met` for balls, `score` for scores, or"
                        + " `ended` for times of games. Name the columns so.");
    }

    private static void twoKinds(CsvTable cells, int second, List<Kind> kinds, Notices notices) {
        ofHeader(
                cells,
                second,
                notices,
                NoticeCode.TABLE_OF_TWO_KINDS,
                ", with columns of "
                        + kinds.stream().map(Kind::word).collect(Collectors.joining(" and of "))
                        + "; a table must hold one of them. Make a table of each.");
    }

    /** A title that was misspelt would else be missed in silence. */
    private static void leftOut(CsvTable cells, Column column, Notices notices) {
        ofHeader(
                cells,
                0,
                notices,
                NoticeCode.COLUMN_LEFT_OUT,
                " and has no column `" + column.word()
                        + "`; in its place whatever bowlers of the squad may have done is taken, so that the balls teach"
                        + " less. Add the column if it is known.");
    }

    /** Games of a squad say when, but whether before or after a game only a column made for it tells. */
    private static boolean countsGamesOtherwise(
            CsvTable cells, Kind kind, Map<Column, Integer> places, Notices notices) {
        boolean otherwise = kind != Kind.SCORES
                && kind != Kind.ENDS
                && !places.containsKey(Column.TIME)
                && !places.containsKey(Column.AFTER)
                && cells.header().cells().stream()
                        .anyMatch(title -> Column.GAME.titles().containsKey(CsvTable.plain(title)));
        if (otherwise) {
            ofHeader(
                    cells,
                    0,
                    notices,
                    NoticeCode.COLUMN_MISSING,
                    ", and whether a reading was taken before or after its game cannot be"
                            + " told; the table must name `after`, games of the squad that were done on the lane's pair."
                            + " Name it so, with 0 for the lane as the squad found it.");
        }
        return otherwise;
    }

    /** Says something of the header, at one of its columns, to follow on its words. */
    private static void ofHeader(CsvTable cells, int column, Notices notices, NoticeCode code, String what) {
        String header = Notices.quote(
                String.join(String.valueOf(cells.separator()), cells.header().cells()));
        notices.add(
                code,
                new Place(cells.header().line(), column + 1),
                "",
                header,
                "The header is `" + header + "`" + what);
    }

    /** The rows that have no more cells than the header; notices tell of the others. */
    List<CsvTable.Row> rows() {
        return cells.rows().stream()
                .filter(
                        row -> cells.fits(
                                row,
                                notices,
                                "Write decimals with a point, or put semicolons between the cells of every row, the header too."))
                .toList();
    }

    /** Whether a row says anything in a column. */
    boolean says(CsvTable.Row row, Column column) {
        return places.containsKey(column) && !row.cell(places.get(column)).isEmpty();
    }

    /** What a row says in a column that the table has, as a scenario would write it: a number with its unit. */
    Value value(CsvTable.Row row, Column column) {
        int place = places.get(column);
        String cell = cells.number(row.cell(place));
        String title = CsvTable.plain(cells.header().cells().get(place));
        String unit = units.get(column).get(title);
        boolean bare = !cell.isEmpty() && !Character.isLetter(cell.charAt(cell.length() - 1));
        return value(row, column, bare && !unit.isEmpty() ? cell + " " + unit : cell);
    }

    /** The first cell of a row in which something stands that is read. */
    Value first(CsvTable.Row row) {
        return places.keySet().stream()
                .filter(column -> says(row, column))
                .map(column -> value(row, column))
                .findFirst()
                .orElseThrow();
    }

    /** The same with something else written into the cell. */
    Value value(CsvTable.Row row, Column column, String written) {
        return new Value(row.node(places.get(column), written), column.word(), "", notices);
    }

    /** Where a row stands, for what is said of it. */
    String place(CsvTable.Row row) {
        return name + " line " + row.line();
    }
}
