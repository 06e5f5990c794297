package lanetide.cli.simulate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import lanetide.cli.report.Figures;
import lanetide.cli.report.OilUnits;
import lanetide.cli.report.Table;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;

/**
 * Tables about lanes, as text answers and pages show them: rows of cells, the first of them the head.
 *
 * @param units units of oil
 */
public record LaneTables(OilUnits units) {
    /** The oil of a squad's lanes game by game, means over the lanes. */
    public List<List<String>> oil(SquadLanes squad) {
        return Table.rows(
                List.of(
                        "After",
                        "Volume mL",
                        "Heads " + units.shortName(),
                        "Worn heads " + units.shortName(),
                        "Past the end mL"),
                squad.games(),
                game -> List.of(
                        name(game),
                        Figures.fixed(squad.mean(game, LaneState::volumeMl), 1),
                        units.film(squad.mean(game, LaneState::headUnits)),
                        units.film(squad.mean(game, LaneState::headUnitsLow)),
                        Figures.fixed(squad.mean(game, LaneState::carrydownMl), 2)));
    }

    /** The middle windows over a squad's lanes: a row for each style and hand, a column for each game. */
    public static List<List<String>> windows(SquadLanes squad, List<Integer> games) {
        return Table.rows(
                Table.row("Exit board", games, game -> game == 0 ? "start" : "game " + game),
                squad.kinds(),
                kind -> Table.row(
                        kind.words(),
                        games,
                        game -> squad.window(game, kind).map(LaneTables::span).orElse("-")));
    }

    /**
     * Every lane when each squad has left: a row for each lane, three columns for each squad, empty on lanes that it
     * did not have.
     */
    public List<List<String>> laneByLane(List<SquadLanes> squads) {
        TreeMap<Integer, List<String>> byLane = new TreeMap<>();
        List<String> head = new ArrayList<>(List.of("Lane"));
        squads.forEach(squad -> squad.atTheEnd()
                .forEach(state -> byLane.put(state.lane(), new ArrayList<>(List.of(String.valueOf(state.lane()))))));
        for (SquadLanes squad : squads) {
            head.addAll(List.of(squad.squad() + ": mL", "worn " + units.shortName(), "past mL"));
            for (LaneState state : squad.atTheEnd()) {
                byLane.get(state.lane())
                        .addAll(List.of(
                                Figures.fixed(state.volumeMl(), 1),
                                units.film(state.headUnitsLow()),
                                Figures.fixed(state.carrydownMl(), 2)));
            }
            byLane.values().forEach(row -> row.addAll(Collections.nCopies(head.size() - row.size(), "")));
        }
        List<List<String>> rows = new ArrayList<>(List.of(head));
        rows.addAll(byLane.values());
        return rows;
    }

    /** What a game's column or row is called. */
    public static String name(int game) {
        return game == 0 ? "as found" : "game " + game;
    }

    private static String span(StyleWindow.Boards window) {
        String low = Figures.fixed(window.low(), 0);
        String high = Figures.fixed(window.high(), 0);
        return low.equals(high) ? low : low + "-" + high;
    }
}
