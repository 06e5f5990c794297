package lanetide.cli.scenario.measured;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.score.ScoreCard;

/** Scores, one of each bowler in a game. */
final class ScoresMade {
    private static final Form<Integer> PINS = Form.count(Measure.PINS, "pins", 0, ScoreCard.PERFECT);

    private final List<ScoreMade> scores = new ArrayList<>();
    private final Map<Turn, String> placeOf = new HashMap<>();

    ScoresMade(List<ScoreMade> before) {
        before.forEach(this::add);
    }

    /** A bowler's game. */
    private record Turn(String squad, int game, String bowler) {
        static Turn of(ScoreMade score) {
            return new Turn(score.squad(), score.game(), score.bowler());
        }
    }

    /** Adds a score; returns where the same bowler has one of the same game already, if he has. */
    private Optional<String> add(ScoreMade score) {
        String earlier = placeOf.putIfAbsent(Turn.of(score), score.place());
        if (earlier == null) {
            scores.add(score);
        }
        return Optional.ofNullable(earlier);
    }

    void read(Rows rows) {
        rows.table().rows().forEach(row -> read(rows, row));
    }

    private void read(Rows rows, CsvTable.Row row) {
        Optional<Integer> squad = rows.squad(row);
        Optional<Integer> game = game(rows, row, squad);
        Optional<String> bowler = rows.bowler(row, squad);
        Optional<Integer> pins = rows.read(row, Column.SCORE, PINS);
        if (game.isPresent() && bowler.isPresent() && pins.isPresent()) {
            ScoreMade score = new ScoreMade(
                    rows.names().squad(squad.orElseThrow()),
                    game.get(),
                    bowler.get(),
                    pins.get(),
                    rows.table().place(row));
            add(score).ifPresent(earlier -> twice(rows, row, score, earlier));
        }
    }

    private static Optional<Integer> game(Rows rows, CsvTable.Row row, Optional<Integer> squad) {
        int games = squad.map(rows.names()::games).orElse(EventKeys.MAX_GAMES);
        return rows.bare(row, Column.GAME, "(game)? ?").read(Form.whole(1, games));
    }

    private static void twice(Rows rows, CsvTable.Row row, ScoreMade score, String earlier) {
        rows.table()
                .value(row, Column.BOWLER)
                .refuse(
                        NoticeCode.SCORE_TWICE,
                        ", who has a score of game " + score.game() + " in squad " + score.squad() + " already, in "
                                + earlier + "; there must be one. Remove one of the two.");
    }

    List<ScoreMade> all() {
        return scores;
    }
}
