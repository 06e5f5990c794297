package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/** Who bowls where in which game, to hang on the wall. */
final class Assignments {
    private Assignments() {}

    static List<SheetModel.Part> parts(Event event) {
        List<SheetModel.Part> parts = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            parts.add(squad(event, s));
        }
        return parts;
    }

    private static SheetModel.Part squad(Event event, int index) {
        Squad squad = event.squads().get(index);
        List<String> notes = List.of("Practice from " + TimeOfDay.write(squad.startMs())
                + " on the pair of the first game. A group moves when its game is done.");
        return new SheetModel.Part(
                "Squad " + squad.id(),
                notes,
                List.of(
                        Table.of("pairs-" + (index + 1), "Lanes of each group, game by game", pairs(event, index), 1),
                        Table.of(
                                "groups-" + (index + 1), "Bowlers of each group, in bowling order", groups(squad), 2)));
    }

    private static List<List<String>> pairs(Event event, int index) {
        Rotation rotation = event.rotations().get(index);
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("Group"));
        for (int game = 1; game <= rotation.games(); game++) {
            head.add("Game " + game);
        }
        rows.add(head);
        for (int g = 0; g < rotation.groups(); g++) {
            List<String> row = new ArrayList<>(
                    List.of(event.squads().get(index).groups().get(g).id()));
            for (int game = 0; game < rotation.games(); game++) {
                row.add(event.centre().pairs().get(rotation.pairOf(game, g)).id());
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<List<String>> groups(Squad squad) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Group", "Bowlers"));
        for (Group group : squad.groups()) {
            rows.add(List.of(
                    group.id(), group.bowlers().stream().map(Bowler::id).collect(Collectors.joining(" \u00b7 "))));
        }
        return rows;
    }
}
