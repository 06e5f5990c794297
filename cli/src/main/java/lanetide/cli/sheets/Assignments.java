package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.LaidWords;
import lanetide.cli.words.WaitingWords;
import lanetide.squads.change.WaitingList.Waiting;
import lanetide.squads.draw.Partners;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/** Who bowls where in which game, to hang on the wall. */
final class Assignments {
    private Assignments() {}

    static List<SheetModel.Part> parts(Event event, List<Waiting> waiting) {
        return IntStream.range(0, event.squads().size())
                .mapToObj(s -> squad(event, s, waiting))
                .toList();
    }

    private static SheetModel.Part squad(Event event, int index, List<Waiting> waiting) {
        Squad squad = event.squads().get(index);
        List<String> notes = new ArrayList<>();
        notes.add("Practice from " + TimeOfDay.write(squad.startMs())
                + " on the pair of the first game. A group moves when its game is done."
                + (event.patterns().size() > 1 ? " Oil pattern: " + LaidWords.onLanes(event, index) + "." : ""));
        notes.addAll(WaitingWords.of(
                waiting.stream().filter(one -> one.squad().equals(squad.id())).toList()));
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
        List<Group> groups = event.squads().get(index).groups();
        List<Integer> games = IntStream.range(0, rotation.games()).boxed().toList();
        return Table.rows(
                Table.row("Group", games, game -> "Game " + (game + 1)),
                IntStream.range(0, rotation.groups()).boxed().toList(),
                g -> Table.row(
                        groups.get(g).id(),
                        games,
                        game -> event.centre()
                                .pairs()
                                .get(rotation.pairOf(game, g))
                                .id()));
    }

    private static List<List<String>> groups(Squad squad) {
        return Table.rows(
                List.of("Group", "Bowlers"),
                squad.groups(),
                group -> List.of(
                        group.id(),
                        Partners.together(group.bowlers(), Function.identity()).stream()
                                .map(Assignments::names)
                                .collect(Collectors.joining(" \u00b7 "))));
    }

    private static String names(List<Bowler> together) {
        String names = together.stream().map(Bowler::id).collect(Collectors.joining(" & "));
        return together.get(0).partners().map(team -> names + " (" + team + ")").orElse(names);
    }
}
