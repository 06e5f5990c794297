package lanetide.cli.scenario.measured;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Event;
import lanetide.squads.study.DayClock;

/**
 * Reads tables of what was measured at an event, each of tapes, of balls thrown, of scores or of times: its columns
 * tell which. A header, then one reading a row; capitals, spaces and signs in the header do not matter, and a unit in
 * it holds for the whole column.
 */
public final class MeasuredReader {
    private final EventNames names;
    private final TapesTaken tapes;
    private final BallsThrown balls;
    private final ScoresMade scores;
    private final GamesEnded ends;
    private final List<Rows> toRead = new ArrayList<>();

    /**
     * A reader of tables that add to what is known.
     *
     * @param event where it was measured
     * @param clock when its squads are done, for times of day; asked for only where a table tells such
     * @param before what was measured at it already; ends of games tell the clock
     */
    public MeasuredReader(Event event, Supplier<DayClock> clock, Measurements before) {
        names = new EventNames(event, clock, this::ends);
        tapes = new TapesTaken(before.tapes());
        balls = new BallsThrown(before.balls());
        scores = new ScoresMade(before.scores());
        ends = new GamesEnded(before.ends());
    }

    /**
     * Opens a table. Its rows are read when all that is known is asked for: times of games come first, since times of
     * day in other tables are told by them.
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
                .ifPresent(table -> toRead.add(new Rows(table, names)));
    }

    private void read(Rows rows) {
        switch (rows.table().kind()) {
            case TAPES -> tapes.read(rows);
            case BALLS -> balls.read(rows);
            case SCORES -> scores.read(rows);
            case ENDS -> ends.read(rows);
        }
    }

    private List<GameEnded> ends() {
        return ends.all();
    }

    /**
     * All that is known: what was before, and what every table added. Rows that are wrong add nothing, and a notice for
     * each fault.
     */
    public Measurements measurements() {
        toRead.sort(Comparator.comparing(rows -> rows.table().kind() != Kind.ENDS));
        toRead.forEach(this::read);
        toRead.clear();
        return new Measurements(tapes.all(), balls.all(), scores.all(), ends.all());
    }
}
