package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import lanetide.cli.rotate.RotationAnswer;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The rotation as a table: one row for each squad, group and game. */
public final class RotateCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setHeader("squad", "group", "bowlers", "game", "pair", "leftLane", "rightLane")
            .get();

    private RotateCsv() {}

    /**
     * Writes the table.
     *
     * @param answer what there is to say
     * @return the table with its head
     */
    public static String write(RotationAnswer answer) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (int squad = 0; squad < answer.event().squads().size(); squad++) {
                squad(printer, answer, squad);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
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
