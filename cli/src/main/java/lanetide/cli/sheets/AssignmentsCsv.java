package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lanetide.cli.preview.Place;
import lanetide.cli.preview.Seating;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;
import lanetide.squads.qualifying.Teams;

/**
 * Who bowls where, as a table: one row for each bowler and game. A hand or a style that was drawn is left out: programs
 * that read the table would take it for known.
 */
final class AssignmentsCsv {
    private static final List<String> HEAD =
            List.of("event", "squad", "practice", "group", "bowler", "hand", "style", "game", "lanes");

    private AssignmentsCsv() {}

    static String write(Event event, DrawnTraits drawn) {
        boolean together = !new Teams(event).names().isEmpty();
        List<String> head = new ArrayList<>(HEAD);
        if (together) {
            head.add("partners");
        }
        return CsvRows.table(head, rows -> {
            for (Seating seating : Seating.of(event)) {
                bowler(rows, event, seating, drawn, together);
            }
        });
    }

    private static void bowler(CsvRows rows, Event event, Seating seating, DrawnTraits drawn, boolean together) {
        Place place = seating.place();
        Bowler bowler = seating.bowler();
        Squad squad = event.squads().get(place.squad());
        Set<Trait> guessed = drawn.of(squad.id(), bowler.id());
        for (int game = 0; game < place.rotation(event).games(); game++) {
            List<Object> cells = new ArrayList<>(List.of(
                    event.name(),
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    squad.groups().get(place.group()).id(),
                    bowler.id(),
                    guessed.contains(Trait.HAND) ? "" : ConstantName.of(bowler.hand()),
                    guessed.contains(Trait.STYLE) ? "" : bowler.style().id(),
                    game + 1,
                    CsvRows.pair(place.pair(event, game))));
            if (together) {
                cells.add(bowler.partners().orElse(""));
            }
            rows.row(cells);
        }
    }
}
