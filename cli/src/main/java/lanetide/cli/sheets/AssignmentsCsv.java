package lanetide.cli.sheets;

import java.util.List;
import lanetide.cli.preview.Place;
import lanetide.cli.preview.Seating;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/** Who bowls where, as a table: one row for each bowler and game. */
final class AssignmentsCsv {
    private static final List<String> HEAD =
            List.of("event", "squad", "practice", "group", "bowler", "hand", "style", "game", "lanes");

    private AssignmentsCsv() {}

    static String write(Event event) {
        return CsvRows.table(HEAD, rows -> {
            for (Seating seating : Seating.of(event)) {
                bowler(rows, event, seating.place(), seating.bowler());
            }
        });
    }

    private static void bowler(CsvRows rows, Event event, Place place, Bowler bowler) {
        Squad squad = event.squads().get(place.squad());
        for (int game = 0; game < place.rotation(event).games(); game++) {
            rows.row(
                    event.name(),
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    squad.groups().get(place.group()).id(),
                    bowler.id(),
                    ConstantName.of(bowler.hand()),
                    bowler.style().id(),
                    game + 1,
                    CsvRows.pair(place.pair(event, game)));
        }
    }
}
