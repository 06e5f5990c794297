package lanetide.cli.scenario.measured;

import java.nio.file.Path;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Event;

/**
 * Reads tables of what was measured at an event, each of tapes, of balls thrown or of scores: its columns tell which. A
 * header, then one reading a row; capitals, spaces and signs in the header do not matter, and a unit in it holds for
 * the whole column.
 */
public final class MeasuredReader {
    private final EventNames names;
    private final TapesTaken tapes;
    private final BallsThrown balls;
    private final ScoresMade scores;

    /**
     * A reader of tables that add to what is known.
     *
     * @param event where it was measured
     * @param before what was measured at it already
     */
    public MeasuredReader(Event event, Measurements before) {
        names = new EventNames(event);
        tapes = new TapesTaken(before.tapes());
        balls = new BallsThrown(before.balls());
        scores = new ScoresMade(before.scores());
    }

    /**
     * Reads a table. Rows that are wrong add nothing, and a notice for each fault.
     *
     * @param file its path, as notices show it
     * @param bytes its bytes
     * @param around takes what is wrong
     */
    public void read(String file, byte[] bytes, Notices around) {
        Notices notices = around.in(file);
        String name = Notices.quote(Path.of(file).getFileName().toString());
        CsvTable.read(bytes, notices, "lane,squad,after,distance,board,units", "5,A,3,22,10,31")
                .flatMap(cells -> MeasuredTable.of(cells, !names.hasOneSquad(), name, notices))
                .ifPresent(table -> read(new Rows(table, names)));
    }

    private void read(Rows rows) {
        switch (rows.table().kind()) {
            case TAPES -> tapes.read(rows);
            case BALLS -> balls.read(rows);
            case SCORES -> scores.read(rows);
        }
    }

    /** All that is known: what was before, and what every table added. */
    public Measurements measurements() {
        return new Measurements(tapes.all(), balls.all(), scores.all());
    }
}
