package lanetide.cli.report;

import java.io.IOException;
import java.util.List;
import lanetide.cli.rotate.RotationAnswer;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import org.apache.commons.csv.CSVPrinter;

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
        return CsvAnswer.write(HEAD, printer -> {
            for (int squad = 0; squad < answer.event().squads().size(); squad++) {
                squad(printer, answer, squad);
            }
        });
    }

    private static void squad(CSVPrinter printer, RotationAnswer answer, int at) throws IOException {
        Squad squad = answer.event().squads().get(at);
        Rotation rotation = answer.event().rotations().get(at);
        for (int group = 0; group < rotation.groups(); group++) {
            Group of = squad.groups().get(group);
            for (int game = 0; game < rotation.games(); game++) {
                var pair = answer.pairs().pairs().get(rotation.pairOf(game, group));
                printer.printRecord(
                        squad.id(), of.id(), of.bowlers().size(), game + 1, pair.id(), pair.left(), pair.right());
            }
        }
    }
}
