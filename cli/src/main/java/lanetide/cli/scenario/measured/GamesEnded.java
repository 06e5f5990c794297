package lanetide.cli.scenario.measured;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.measured.GameEnded;

/** When games of squads were done on their last pair, each once. */
final class GamesEnded {
    private static final long LONGEST_MS = 12 * 3_600_000L;

    /** A game of a squad. */
    private record Game(String squad, int game) {
        static Game of(GameEnded end) {
            return new Game(end.squad(), end.game());
        }
    }

    private final Once<GameEnded> ends;

    GamesEnded(List<GameEnded> before) {
        ends = new Once<>(Game::of, GameEnded::place, before);
    }

    void read(Rows rows) {
        rows.table().rows().forEach(row -> read(rows, row));
    }

    private void read(Rows rows, CsvTable.Row row) {
        Optional<Integer> squad = rows.squad(row);
        Optional<Integer> game = rows.game(row, squad);
        Optional<Long> ended = rows.read(row, Column.ENDED, new Form.Clock());
        if (squad.isEmpty() || game.isEmpty() || ended.isEmpty()) {
            return;
        }
        long endedMs = rows.names().onDayOf(squad.get(), ended.get());
        Value value = rows.table().value(row, Column.ENDED);
        long tookMs = endedMs - rows.names().startMs(squad.get());
        if (tookMs < 0 || tookMs > LONGEST_MS) {
            value.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    ", which is not within 12 h after squad " + rows.names().squad(squad.get())
                            + " starts. Correct the time, or write the day too, such as \"day 2 08:00\".");
            return;
        }
        GameEnded end = new GameEnded(
                rows.names().squad(squad.get()),
                game.get(),
                endedMs,
                GameEnded.USUAL_ERROR_MS,
                rows.table().place(row));
        ends.add(end)
                .ifPresent(earlier -> value.refuse(
                        NoticeCode.READING_TWICE,
                        ", but " + earlier + " says when game " + end.game() + " of squad " + end.squad()
                                + " was done; there must be one. Remove one of the two."));
    }

    List<GameEnded> all() {
        return ends.all();
    }
}
