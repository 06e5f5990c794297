package lanetide.cli.report.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import lanetide.cli.report.SafeCell;
import lanetide.cli.scenario.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Who bowls where, as a table: one row for each bowler and game. */
final class AssignmentsCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader("event", "squad", "practice", "group", "bowler", "hand", "style", "game", "lanes")
            .get();

    private AssignmentsCsv() {}

    static String write(Event event) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (int s = 0; s < event.squads().size(); s++) {
                List<Group> groups = event.squads().get(s).groups();
                for (int g = 0; g < groups.size(); g++) {
                    for (Bowler bowler : groups.get(g).bowlers()) {
                        bowler(printer, event, s, g, bowler);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }

    private static void bowler(CSVPrinter printer, Event event, int s, int g, Bowler bowler) throws IOException {
        Squad squad = event.squads().get(s);
        for (int game = 0; game < event.rotations().get(s).games(); game++) {
            printer.printRecord(
                    SafeCell.of(event.name()),
                    SafeCell.of(squad.id()),
                    TimeOfDay.write(squad.startMs()),
                    SafeCell.of(squad.groups().get(g).id()),
                    SafeCell.of(bowler.id()),
                    bowler.hand().name().toLowerCase(java.util.Locale.ROOT),
                    SafeCell.of(bowler.style().id()),
                    game + 1,
                    event.centre()
                            .pairs()
                            .get(event.rotations().get(s).pairOf(game, g))
                            .id());
        }
    }
}
