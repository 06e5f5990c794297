package lanetide.cli.report.sheets;

import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.cli.scenario.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/** Who bowls where, as a table: one row for each bowler and game. */
final class AssignmentsCsv {
    private static final List<String> HEAD =
            List.of("event", "squad", "practice", "group", "bowler", "hand", "style", "game", "lanes");

    private AssignmentsCsv() {}

    static String write(Event event) {
        return CsvRows.table(HEAD, rows -> {
            for (int s = 0; s < event.squads().size(); s++) {
                List<Group> groups = event.squads().get(s).groups();
                for (int g = 0; g < groups.size(); g++) {
                    for (Bowler bowler : groups.get(g).bowlers()) {
                        bowler(rows, event, s, g, bowler);
                    }
                }
            }
        });
    }

    private static void bowler(CsvRows rows, Event event, int s, int g, Bowler bowler) {
        Squad squad = event.squads().get(s);
        Rotation rotation = event.rotations().get(s);
        for (int game = 0; game < rotation.games(); game++) {
            rows.row(
                    event.name(),
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    squad.groups().get(g).id(),
                    bowler.id(),
                    ConstantName.of(bowler.hand()),
                    bowler.style().id(),
                    game + 1,
                    CsvRows.pair(event.centre().pairs().get(rotation.pairOf(game, g))));
        }
    }
}
