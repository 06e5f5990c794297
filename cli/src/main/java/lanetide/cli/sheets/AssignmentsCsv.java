package lanetide.cli.sheets;

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

/**
 * Who bowls where, as a table: one row for each bowler and game. A hand or a style that was drawn is left out: programs
 * that read the table would take it for known.
 */
final class AssignmentsCsv {
    private static final List<String> HEAD =
            List.of("event", "squad", "practice", "group", "bowler", "hand", "style", "game", "lanes");

    private AssignmentsCsv() {}

    static String write(Event event, DrawnTraits drawn) {
        return CsvRows.table(HEAD, rows -> {
            for (Seating seating : Seating.of(event)) {
                bowler(rows, event, seating.place(), seating.bowler(), drawn);
            }
        });
    }

    private static void bowler(CsvRows rows, Event event, Place place, Bowler bowler, DrawnTraits drawn) {
        Squad squad = event.squads().get(place.squad());
        Set<Trait> guessed = drawn.of(squad.id(), bowler.id());
        for (int game = 0; game < place.rotation(event).games(); game++) {
            rows.row(
                    event.name(),
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    squad.groups().get(place.group()).id(),
                    bowler.id(),
                    guessed.contains(Trait.HAND) ? "" : ConstantName.of(bowler.hand()),
                    guessed.contains(Trait.STYLE) ? "" : bowler.style().id(),
                    game + 1,
                    CsvRows.pair(place.pair(event, game)));
        }
    }
}
