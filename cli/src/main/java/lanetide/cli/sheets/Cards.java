package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.cli.preview.GameForecast;
import lanetide.cli.preview.Place;
import lanetide.cli.preview.Seating;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.LaidWords;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.result.TimetableEntry.Activity;
import lanetide.squads.study.TimetableStatistics;

/**
 * A card for every bowler: where he bowls, where he starts there with his own ball, how sure that is, and what to
 * expect.
 */
record Cards(
        Event event, DrawnTraits drawn, Map<Seating, List<GameForecast>> starts, List<TimetableStatistics> timetable) {
    private static final String CAPTION = "Boards from your own gutter; 4 of 5 starts lie between";
    private static final String DRAWN =
            "What is marked as drawn was not in the entries. If you play otherwise, these boards are not yours.";

    /** What a card takes besides its rows, and a row (mm), as measured in print. */
    private static final double FRAME_MM = 44;

    private static final double ROW_MM = 4.6;
    private static final double GAP_MM = 4;

    /** How high cards are made so that they fill a page (mm): some games and so much room for notes. */
    static double heightMm(int games, double pageMm) {
        double leastMm = FRAME_MM + ROW_MM * (games + 1) + GAP_MM;
        return pageMm / Math.max(1, Math.floor(pageMm / leastMm)) - GAP_MM;
    }

    List<SheetModel.Part> parts() {
        List<SheetModel.Part> cards = new ArrayList<>();
        starts.forEach((seating, games) -> cards.add(card(seating, games, cards.size() + 1)));
        return cards;
    }

    private SheetModel.Part card(Seating seating, List<GameForecast> games, int number) {
        List<List<String>> rows = Table.rows(
                List.of("Game", "About", "Lanes", "Lay down", "4 of 5", "Arrows", "Exit"),
                games,
                game -> List.of(
                        String.valueOf(game.game()),
                        about(seating.place(), game.game()),
                        game.pair().id(),
                        told(game, start -> board(start.laydownBoard())),
                        told(
                                game,
                                start -> boards(
                                        start.laydownSpread().low(),
                                        start.laydownSpread().high())),
                        told(game, start -> board(start.arrowsBoard())),
                        told(game, start -> boards(start.lowBoard(), start.highBoard()))));
        return new SheetModel.Part(
                seating.bowler().id(), notes(seating, games), List.of(Table.of("card-" + number, CAPTION, rows, 3)));
    }

    private List<String> notes(Seating seating, List<GameForecast> games) {
        String squad = event.squads().get(seating.place().squad()).id();
        Set<Trait> guessed = drawn.of(squad, seating.bowler().id());
        List<String> notes = new ArrayList<>();
        notes.add(where(seating, squad));
        partners(seating).ifPresent(notes::add);
        mates(seating).ifPresent(notes::add);
        notes.add(expect(seating.bowler(), guessed, games));
        if (guessed.contains(Trait.HAND) || guessed.contains(Trait.STYLE) || guessed.contains(Trait.COVER)) {
            notes.add(DRAWN);
        }
        return notes;
    }

    private String where(Seating seating, String squadId) {
        Squad squad = event.squads().get(seating.place().squad());
        Group group = squad.groups().get(seating.place().group());
        LanePair pair = seating.place().pair(event, 0);
        // The first half of a group, rounded up, starts on the left lane.
        boolean left = 2 * group.bowlers().indexOf(seating.bowler()) < group.size();
        return "Squad " + squad.id() + ", group " + group.id()
                + drawn.team(squadId, seating.bowler().id())
                        .map(team -> ", " + team)
                        .orElse("")
                + ". Practice from " + TimeOfDay.write(squad.startMs()) + " on " + pair.id() + "; you start on lane "
                + (left ? pair.left() : pair.right()) + "."
                + (event.patterns().size() > 1
                        ? " Oil pattern: "
                                + LaidWords.onLanes(event, seating.place().squad()) + "."
                        : "");
    }

    private Optional<String> mates(Seating seating) {
        List<String> names =
                event
                        .squads()
                        .get(seating.place().squad())
                        .groups()
                        .get(seating.place().group())
                        .bowlers()
                        .stream()
                        .filter(mate -> !mate.equals(seating.bowler()))
                        .map(Bowler::id)
                        .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of("With " + String.join(", ", names) + ".");
    }

    /** With whom his pins are added. */
    private Optional<String> partners(Seating seating) {
        return seating.bowler().partners().map(name -> {
            String others = event.squads().get(seating.place().squad()).everybody().stream()
                    .filter(other -> other.partners().equals(seating.bowler().partners()))
                    .filter(other -> !other.equals(seating.bowler()))
                    .map(Bowler::id)
                    .collect(Collectors.joining(", "));
            return "Your partners as " + name + ": " + (others.isEmpty() ? "none" : others) + ".";
        });
    }

    /** When a game begins on the first of its pairs, mean over the playings, by the clock of its day. */
    private String about(Place place, int game) {
        String squad = event.squads().get(place.squad()).id();
        return timetable.stream()
                .filter(entry -> entry.squad().equals(squad) && entry.what() == Activity.GAME && entry.game() == game)
                .map(entry -> TimeOfDay.write(entry.start().meanMs() % TimeUnit.DAYS.toMillis(1)))
                .findFirst()
                .orElse("-");
    }

    private static String told(GameForecast game, Function<GameForecast.Start, String> words) {
        return game.start().map(words).orElse("-");
    }

    private static String board(double board) {
        return Figures.fixed(board, 0);
    }

    private static String boards(double low, double high) {
        return board(low) + "-" + board(high);
    }

    private static String expect(Bowler bowler, Set<Trait> guessed, List<GameForecast> games) {
        String kind = Trait.STYLE.shown(bowler.style().id(), guessed) + ", "
                + Trait.HAND.shown(ConstantName.of(bowler.hand()) + " hand", guessed) + ", "
                + Trait.COVER.shown(bowler.cover().id(), guessed) + ": ";
        double[] laydowns = games.stream()
                .flatMap(game -> game.start().stream())
                .mapToDouble(GameForecast.Start::laydownBoard)
                .toArray();
        if (laydowns.length < games.size()) {
            return kind + "where no board stands, moves alone bring you to no pocket; change speed, angle or ball.";
        }
        double move = laydowns[laydowns.length - 1] - laydowns[0];
        return kind
                + (Math.abs(move) < 1
                        ? "expect to stay within a board of where you start."
                        : "expect to have moved the feet about " + Figures.fixed(Math.abs(move), 0)
                                + (move > 0 ? " deeper" : " nearer the gutter") + " by the last game.");
    }
}
