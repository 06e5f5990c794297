package lanetide.cli.rotate;

import java.util.List;
import lanetide.cli.report.CsvRows;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/** The rotation as a table: one row for each squad, group and game. */
public final class RotateCsv {
    private static final List<String> HEAD =
            List.of("squad", "group", "bowlers", "game", "pair", "leftLane", "rightLane");

    private RotateCsv() {}

    /**
     * Writes the table.
     *
     * @param answer what there is to say
     * @return the table with its head
     */
    public static String write(RotationAnswer answer) {
        return CsvRows.table(HEAD, rows -> {
            for (int squad = 0; squad < answer.event().squads().size(); squad++) {
                squad(rows, answer, squad);
            }
        });
    }

    private static void squad(CsvRows rows, RotationAnswer answer, int at) {
        Squad squad = answer.event().squads().get(at);
        Rotation rotation = answer.event().rotations().get(at);
        for (int group = 0; group < rotation.groups(); group++) {
            Group of = squad.groups().get(group);
            for (int game = 0; game < rotation.games(); game++) {
                var pair = answer.pairs().pairs().get(rotation.pairOf(game, group));
                rows.row(
                        squad.id(),
                        of.id(),
                        of.bowlers().size(),
                        game + 1,
                        CsvRows.pair(pair),
                        pair.left(),
                        pair.right());
            }
        }
    }
}
