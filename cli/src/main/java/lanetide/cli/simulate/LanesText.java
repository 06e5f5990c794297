package lanetide.cli.simulate;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lanetide.cli.report.Figures;
import lanetide.cli.report.OilUnits;
import lanetide.cli.report.Page;
import lanetide.cli.report.PatternWords;
import lanetide.cli.report.Table;
import lanetide.cli.report.WindowWords;
import lanetide.cli.words.UnknownWords;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Event;
import lanetide.squads.result.LaneState;
import lanetide.squads.study.StudyResult;

/**
 * The lanes game by game: each squad's lanes together, what changed in words, and single lanes where they are asked
 * for.
 */
final class LanesText {
    /** Columns of "game 12" with the gap before it. */
    private static final int WINDOW_COLUMN = 9;

    /** The lane as found and eight games: the commonest length of a squad in one row. */
    private static final int MAX_COLUMNS = 9;

    private static final int MAX_WORN = 4;

    /** Squads whose three columns fit beside each other. */
    private static final int SQUADS_ABREAST = 3;

    private final Page page;
    private final StudyResult study;
    private final List<LaneState> states;
    private final String example;
    private final OilUnits units;
    private final LaneTables tables;
    private final List<OilPattern> patterns;

    LanesText(Page page, StudyResult study, OilUnits units, Event event) {
        this.page = page;
        this.study = study;
        this.states = study.first().lanes();
        this.example = study.replications() == 1 ? "" : " (" + UnknownWords.example(study.sets(), event) + ")";
        this.units = units;
        this.tables = new LaneTables(units);
        this.patterns = event.patterns();
    }

    void add(LaneChoice choice) {
        List<SquadLanes> squads = SquadLanes.of(states);
        changes(squads);
        for (SquadLanes squad : squads) {
            page.heading("Squad " + squad.squad() + ": oil by game, means over its lanes");
            page.table(tables.oil(squad), 1);
            windows(squad);
        }
        moves();
        laneByLane(squads);
        legend(squads);
        states.stream()
                .collect(Collectors.groupingBy(LaneState::lane, TreeMap::new, Collectors.toList()))
                .forEach((lane, games) -> {
                    if (choice.shows(lane)) {
                        lane(lane, games);
                    }
                });
    }

    private void changes(List<SquadLanes> squads) {
        page.heading("What changes on the lanes" + example);
        LaneChanges changes = new LaneChanges(squads, units);
        changes.sentences().forEach(page::item);
        page.item(mostWorn());
    }

    private String mostWorn() {
        TreeMap<Integer, LaneState> last = new TreeMap<>();
        states.forEach(state -> last.put(state.lane(), state));
        String worn = last.values().stream()
                .sorted(Comparator.comparingDouble(LaneState::headUnitsLow))
                .limit(MAX_WORN)
                .map(state -> state.lane() + " (" + units.film(state.headUnitsLow()) + ")")
                .collect(Collectors.joining(", "));
        return "Most worn at the end, by the oil left on the most worn board of the heads in " + units.name()
                + ": lane " + worn + ".";
    }

    private void windows(SquadLanes squad) {
        List<Integer> games = squad.games();
        if (squad.kinds().isEmpty()) {
            return;
        }
        int fitting = columnsBeside(squad);
        for (int from = 0; from < games.size(); from += fitting) {
            List<Integer> shown = games.subList(from, Math.min(games.size(), from + fitting));
            page.line("");
            page.table(LaneTables.windows(squad, shown), 1);
        }
    }

    private void moves() {
        List<List<String>> rows = WindowMoves.rows(study);
        if (!rows.isEmpty()) {
            page.heading(WindowMoves.HEADING);
            page.table(rows, 2);
            page.paragraph(WindowMoves.NOTE);
        }
    }

    /** Games that fit into the width of the page, beside the names of styles. */
    private static int columnsBeside(SquadLanes squad) {
        int names = squad.kinds().stream()
                .mapToInt(kind -> kind.words().length())
                .max()
                .orElse(0);
        return Math.min(MAX_COLUMNS, (Page.WIDTH - names - 2) / WINDOW_COLUMN);
    }

    /** Every lane at the end of each squad, a few squads side by side. */
    private void laneByLane(List<SquadLanes> squads) {
        page.heading("Lane by lane, when each squad has left");
        for (int from = 0; from < squads.size(); from += SQUADS_ABREAST) {
            List<SquadLanes> shown = squads.subList(from, Math.min(squads.size(), from + SQUADS_ABREAST));
            if (from > 0) {
                page.line("");
            }
            page.table(tables.laneByLane(shown), 0);
        }
    }

    private void legend(List<SquadLanes> squads) {
        page.heading("How to read it");
        page.item("Heads: the first " + units.headsEnd()
                + ". \"Heads\" is the film on the thickest board there, \"worn heads\" that on the most worn one between the"
                + " tapers"
                + (patterns.size() > 1
                        ? " of its pattern."
                        : " (board " + PatternWords.flatFrom(patterns.get(0)) + " and inside)."));
        page.item("Past the end: oil that balls have carried beyond the pattern.");
        if (!squads.isEmpty() && !squads.get(0).kinds().isEmpty()) {
            page.item("Exit board: " + WindowWords.MEANING
                    + " Given is the middle value over the lanes; - where no line meets the pocket.");
            page.item(
                    "Boards are counted from the bowler's own gutter: a left-hander's from the left, a right-hander's from"
                            + " the right.");
        }
    }

    private void lane(int lane, List<LaneState> games) {
        page.heading("Lane " + lane);
        List<String> head =
                List.of("Squad", "After", "Games on oil", "Volume mL", "Heads " + units.shortName(), "Worn", "Past mL");
        page.table(Table.rows(head, games, this::row), 2);
        for (SquadLanes squad : SquadLanes.of(games)) {
            page.line("");
            page.line("  Squad " + squad.squad() + " on lane " + lane);
            windows(squad);
        }
    }

    private List<String> row(LaneState state) {
        return List.of(
                state.squad(),
                LaneTables.name(state.afterGame()),
                String.valueOf(state.gamesOnOil()),
                Figures.fixed(state.volumeMl(), 1),
                units.film(state.headUnits()),
                units.film(state.headUnitsLow()),
                Figures.fixed(state.carrydownMl(), 2));
    }
}
