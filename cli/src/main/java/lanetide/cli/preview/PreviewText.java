package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.words.LaidWords;
import lanetide.cli.words.WearWords;

/** What {@code preview} answers, for people. */
public final class PreviewText {
    private PreviewText() {}

    /**
     * Writes the answer.
     *
     * @param scenario what was played
     * @param preview what the bowler will meet
     * @param drawn what was drawn of the bowler, so that it is not known
     * @return the page
     */
    public static String write(Scenario scenario, Preview preview, Set<Trait> drawn) {
        Page page = new Page();
        PreviewWords words = new PreviewWords(preview);
        String squad = scenario.event().squads().get(preview.place().squad()).id();
        page.line(scenario.event().name());
        page.line("Squad " + squad + " from pair "
                + preview.games().get(0).pair().id()
                + preview.place().bowler().map(name -> ", " + name).orElse("") + ": " + words.kind(drawn) + ".");
        if (!drawn.isEmpty()) {
            page.line("What is marked as drawn was not in the entries; tell it with "
                    + drawn.stream().map(trait -> "--" + trait.id()).collect(Collectors.joining(", ")) + ".");
        }
        page.line("Expected from "
                + (preview.replications() == 1 ? "one playing" : preview.replications() + " playings")
                + " of the event with seed " + scenario.seed() + "; each game as its lanes are before it.");
        if (scenario.event().patterns().size() > 1) {
            page.line(
                    "On " + LaidWords.onLanes(scenario.event(), preview.place().squad()) + "; \"fresh\" is what lies on"
                            + " the first pair.");
        }
        page.heading("Game by game (boards from your own gutter)");
        page.table(rows(preview), 2);
        page.heading("What to do");
        preview.games().forEach(game -> page.item(words.game(game)));
        why(page, preview, words);
        page.heading("What to watch in practice");
        words.signs().forEach(page::item);
        preview.practice().ifPresent(practice -> practice(page, practice, words));
        page.heading("How sure it is");
        words.sureness(scenario.event()).forEach(page::item);
        Ending.entriesAndCautions(page, scenario);
        return page.text();
    }

    private static void why(Page page, Preview preview, PreviewWords words) {
        List<GameForecast> told =
                preview.games().stream().filter(game -> game.why().isPresent()).toList();
        if (!told.isEmpty()) {
            page.heading("Why (boards at the pins)");
            page.table(whyRows(told), 1);
            words.whys().forEach(page::item);
            page.item(WearWords.NOTE);
        }
    }

    /** What wear does in each game, as a table. */
    public static List<List<String>> whyRows(List<GameForecast> told) {
        return Table.rows(
                Table.row("Game", WearWords.COLUMNS.keySet(), column -> column),
                told,
                game -> Table.row(
                        String.valueOf(game.game()),
                        WearWords.COLUMNS.values(),
                        part -> Figures.signed(part.applyAsDouble(game.why().orElseThrow()), 1)));
    }

    private static void practice(Page page, Practice practice, PreviewWords words) {
        page.heading("Ten balls for practice");
        for (int line = 0; line < practice.lines().size(); line++) {
            page.item(PreviewWords.shots(practice.lines().get(line), line + 1));
        }
        practice.lanes().forEach(found -> page.item(words.found(practice, found)));
    }

    /** The forecast as a table, the fresh pattern first. */
    public static List<List<String>> rows(Preview preview) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Game", "Lanes", "Laydown", "4 of 5 between", "Arrows", "Exit", "Window", "Pocket", "Move"));
        rows.add(row(preview.fresh(), "fresh", "", ""));
        for (GameForecast game : preview.games()) {
            rows.add(row(game, String.valueOf(game.game()), game.pair().id(), move(game)));
        }
        return rows;
    }

    private static List<String> row(GameForecast game, String name, String lanes, String move) {
        return List.of(
                name,
                lanes,
                told(game, start -> Figures.fixed(start.laydownBoard(), 1)),
                game.game() == 0
                        ? ""
                        : game.start()
                                .map(GameForecast.Start::laydownSpread)
                                .map(spread -> Figures.fixed(spread.low(), 1) + "-" + Figures.fixed(spread.high(), 1))
                                .orElse(""),
                told(game, start -> Figures.fixed(start.arrowsBoard(), 1)),
                told(game, start -> Figures.fixed(start.exitBoard(), 1)),
                told(game, start -> PreviewWords.board(start.lowBoard()) + "-" + PreviewWords.board(start.highBoard())),
                told(game, start -> Figures.fixed(100 * start.pocketShare(), 0) + " %"),
                move);
    }

    private static String told(GameForecast game, Function<GameForecast.Start, String> words) {
        return game.start().map(words).orElse("-");
    }

    /** The move of a game with its sign; a dash without one. */
    public static String move(GameForecast game) {
        return game.moveBoards().isPresent() ? signed(game.moveBoards().getAsDouble()) : "-";
    }

    private static String signed(double boards) {
        return boards == 0 ? "0" : (boards > 0 ? "+" : "") + Figures.plain(boards, 1);
    }
}
