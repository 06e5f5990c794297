package lanetide.cli.scenario.measured;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.score.ScoreCard;

/** Scores, one of each bowler in a game. */
final class ScoresMade {
    private static final Form<Integer> PINS = Form.count(Measure.PINS, "pins", 0, ScoreCard.PERFECT);

    private final Once<ScoreMade> scores;

    ScoresMade(List<ScoreMade> before) {
        scores = new Once<>(Turn::of, ScoreMade::place, before);
    }

    /** A bowler's game. */
    private record Turn(String squad, int game, String bowler) {
        static Turn of(ScoreMade score) {
            return new Turn(score.squad(), score.game(), score.bowler());
        }
    }

    void read(Rows rows) {
        rows.table().rows().forEach(row -> read(rows, row));
    }

    private void read(Rows rows, CsvTable.Row row) {
        Optional<Integer> squad = rows.squad(row);
        Optional<Integer> game = rows.game(row, squad);
        Optional<String> bowler = rows.bowler(row, squad);
        Optional<Integer> pins = rows.read(row, Column.SCORE, PINS);
        if (game.isPresent() && bowler.isPresent() && pins.isPresent()) {
            ScoreMade score = new ScoreMade(
                    rows.names().squad(squad.orElseThrow()),
                    game.get(),
                    bowler.get(),
                    pins.get(),
                    rows.table().place(row));
            scores.add(score).ifPresent(earlier -> twice(rows, row, score, earlier));
        }
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
        return scores.all();
    }
}
