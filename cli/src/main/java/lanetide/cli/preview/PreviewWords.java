package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownWords;
import lanetide.cli.words.WearWords;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Event;

/**
 * What a bowler should know of the games to come, in sentences.
 *
 * @param preview the forecast to put into words
 */
public record PreviewWords(Preview preview) {
    /** A start that is known to this is sure, as far as a bowler could notice (boards). */
    private static final double SURE_BOARDS = 1.5;

    private static final double FAIRLY_SURE_BOARDS = 3;

    /** A miss at the pins that a bowler sees (boards). */
    private static final double SEEN_BOARDS = 1;

    /** What to do in a game. */
    public String game(GameForecast game) {
        String where = "Game " + game.game() + " on " + game.pair().id() + ": ";
        return where
                + game.start()
                        .map(start -> move(game) + " " + line(start))
                        .orElse("on most lanes no move of two and one brings an average shot to the pocket; change the"
                                + " angle, the speed or the ball.")
                + change(game);
    }

    private static String line(GameForecast.Start start) {
        return "Lay down on board " + board(start.laydownBoard()) + ", cross the arrows on "
                + board(start.arrowsBoard()) + ", leave the pattern on " + board(start.exitBoard()) + window(start)
                + " " + sure(start);
    }

    private static String window(GameForecast.Start start) {
        String low = board(start.lowBoard());
        String high = board(start.highBoard());
        return low.equals(high)
                ? " (from no other board does it hit the pocket)."
                : " (" + low + " to " + high + " still hit the pocket).";
    }

    /** What would tell in practice that the forecast is wrong. */
    public List<String> signs() {
        List<String> signs = new ArrayList<>();
        Optional<GameForecast.Start> start = preview.games().get(0).start();
        if (start.isEmpty()) {
            return signs;
        }
        GameForecast.Start first = start.get();
        String good = "Play board " + board(first.laydownBoard()) + " over " + board(first.arrowsBoard())
                + " in practice, and watch where shots that cross the arrows there meet the pins.";
        signs.add(good);
        for (Preview.Sign sign : preview.signs()) {
            if (Math.abs(sign.boardsHigh()) >= SEEN_BOARDS) {
                signs.add(sign(sign));
            }
        }
        if (signs.size() == 1) {
            signs.add(
                    "Neither fresher nor more worn lanes would show on this line by a board; practice cannot tell them"
                            + " apart.");
        }
        return signs;
    }

    /** What the wear he meets in a game asks of him; it must be known. */
    public String why(GameForecast game) {
        return WearWords.advice(game.why().orElseThrow(), preview.bringsSmoother());
    }

    /** The same of all games of which it is known; games in a row with one sentence together. */
    public List<String> whys() {
        List<GameForecast> told =
                preview.games().stream().filter(game -> game.why().isPresent()).toList();
        List<String> sentences = new ArrayList<>();
        for (int first = 0, next; first < told.size(); first = next) {
            String why = why(told.get(first));
            next = first + 1;
            while (next < told.size() && why(told.get(next)).equals(why)) {
                next++;
            }
            int from = told.get(first).game();
            int to = told.get(next - 1).game();
            sentences.add((from == to ? "Game " + from : "Games " + from + " to " + to) + ": " + why);
        }
        return sentences;
    }

    /** A line to throw at in practice. */
    public static String shots(Practice.Throw line, int number) {
        String where = board(line.laydownBoard()) + " over " + board(line.arrowsBoard());
        String what = line.game() == Practice.DEEPER
                ? "moved in by " + Figures.plain(Practice.DEEPER_BOARDS, 1) + " boards and the target by half as many"
                : "that of game " + line.game();
        return "Line " + number + ", " + what + ": lay down on board " + where + ", " + line.balls()
                + " balls, half on each lane.";
    }

    /** What it means if the shots of practice meet the pins as they would on such lanes. */
    public String found(Practice practice, Practice.Found found) {
        String seen = IntStream.range(0, found.boardsHigh().size())
                .mapToObj(i -> "line " + (i + 1) + " " + miss(found.boardsHigh().get(i)))
                .collect(Collectors.joining(", "));
        return English.capital(seen) + ": " + meaning(practice, found);
    }

    private static String miss(double boardsHigh) {
        String boards = Figures.fixed(Math.abs(boardsHigh), 1);
        if (boards.equals("0.0")) {
            return "in the pocket";
        }
        return "by " + boards + (boards.equals("1.0") ? " board " : " boards ") + (boardsHigh > 0 ? "high" : "light");
    }

    private String meaning(Practice practice, Practice.Found found) {
        Practice.Found forecast = practice.lanes().get(0);
        if (found.asGame() == 1) {
            return "the lanes are as forecast. Start with line 1.";
        }
        if (!found.partsFrom(forecast, SEEN_BOARDS)) {
            return (found.asGame() == 0 ? "as freshly oiled" : "as forecast before game " + found.asGame())
                    + ", which these shots cannot tell from the forecast.";
        }
        return found.asGame() == 0
                ? "nearly as freshly oiled. Start as on the fresh pattern, and move later than told."
                : "already as forecast before game " + found.asGame()
                        + ". Start with line 2, and expect the later moves early.";
    }

    /** How he plays, marked where it was drawn. */
    String kind(Set<Trait> drawn) {
        return Trait.STYLE.shown(preview.kind().style().id(), drawn) + ", "
                + Trait.HAND.shown(hand(preview.kind().hand()), drawn) + ", "
                + Trait.LEVEL.shown(preview.kind().level().id(), drawn) + ", "
                + Trait.COVER.shown(preview.kind().cover().id(), drawn);
    }

    /** What the forecast takes him for, in a sentence. */
    public String plays(Set<Trait> drawn) {
        return "You are taken for: " + kind(drawn) + "."
                + (drawn.isEmpty()
                        ? ""
                        : " What is marked as drawn was not in the entries; if you play otherwise, these boards are not"
                                + " yours.");
    }

    /** How sure the forecast is. */
    public List<String> sureness(Event event) {
        List<String> sentences = new ArrayList<>(List.of(UnknownWords.intervals(preview.sets(), event)));
        if (preview.sets() > 1) {
            sentences.add(
                    "Where your line lies on fresh oil you find in practice. Boards are told from the one that is usual for"
                            + " your style, so trust the moves more than the boards: if you start two boards further"
                            + " in, add two to all.");
        }
        return sentences;
    }

    /** Where to start and with which ball. */
    public String start() {
        GameForecast first = preview.games().get(0);
        return "Lanes " + first.pair().id()
                + first.start()
                        .map(start -> ", your " + preview.kind().cover().id() + " ball: lay down on board "
                                + board(start.laydownBoard()) + ", cross the arrows on " + board(start.arrowsBoard())
                                + ".")
                        .orElse(
                                ": no move of two and one brings your ball to the pocket; change the angle, the speed or"
                                        + " the ball.");
    }

    /** When to move, and which way. */
    public String moves() {
        String moves = preview.games().stream()
                .skip(1)
                .filter(game -> game.moveBoards().orElse(0) != 0)
                .map(game -> feet(game.moveBoards().getAsDouble()) + " before game " + game.game())
                .collect(Collectors.joining(", "));
        return moves.isEmpty()
                ? "No move of half a board or more is expected."
                : "With the feet " + moves + "; with the target half as far.";
    }

    private String feet(double boards) {
        boolean left = boards > 0 == (preview.kind().hand() == Hand.RIGHT);
        return Figures.plain(Math.abs(boards), 1) + (left ? " left" : " right");
    }

    /** When to change the ball, among those he brings. */
    public String balls() {
        String own = preview.kind().cover().id();
        String changes = preview.games().stream()
                .flatMap(game -> game.change().stream()
                        .map(change -> change.cover().id() + " in game " + game.game() + ", board "
                                + board(change.line().laydownBoard()) + " over "
                                + board(change.line().arrowsBoard())))
                .collect(Collectors.joining("; "));
        if (!changes.isEmpty()) {
            return English.capital(changes) + "; else " + own + ".";
        }
        return preview.bag().size() == 1
                ? "Your " + own + " ball is the only one in the entry; stay with it."
                : "Stay with " + own + ": no other helps more than a move.";
    }

    /** The delivery side in words. */
    public static String hand(Hand hand) {
        return hand == Hand.RIGHT ? "right-handed" : "left-handed";
    }

    /** A board as a bowler plays it. */
    public static String board(double board) {
        return Figures.fixed(board, 0);
    }

    private String move(GameForecast game) {
        if (game.moveBoards().isEmpty()) {
            return "start here.";
        }
        double boards = game.moveBoards().getAsDouble();
        String since = game.game() == 1 ? "the fresh pattern" : "the game before";
        if (boards == 0) {
            return game.game() == 1 ? "start as on the fresh pattern." : "stay where you are.";
        }
        boolean left = boards > 0 == (preview.kind().hand() == Hand.RIGHT);
        String amount = Figures.plain(Math.abs(boards), 1);
        return "move the feet " + amount + (Math.abs(boards) <= 1 ? " board " : " boards ") + (left ? "left" : "right")
                + " and the target half as far, against " + since + ".";
    }

    private static String sure(GameForecast.Start start) {
        double width = start.laydownSpread().high() - start.laydownSpread().low();
        String spread = "in four playings out of five the start lay between boards "
                + Figures.fixed(start.laydownSpread().low(), 1) + " and "
                + Figures.fixed(start.laydownSpread().high(), 1) + ".";
        if (width <= SURE_BOARDS) {
            return "Sure: " + spread;
        }
        return width <= FAIRLY_SURE_BOARDS ? "Fairly sure: " + spread : "Open: " + spread;
    }

    private static String change(GameForecast game) {
        return game.change()
                .map(change -> " " + capital(change.cover().id()) + " would help more than a move, by about "
                        + Figures.fixed(100 * change.gain(), 0) + " more strikes in 100 first balls: lay down on "
                        + board(change.line().laydownBoard()) + ", arrows "
                        + board(change.line().arrowsBoard()) + ".")
                .orElse("");
    }

    private static String sign(Preview.Sign sign) {
        String miss =
                Figures.fixed(Math.abs(sign.boardsHigh()), 1) + " boards " + (sign.boardsHigh() > 0 ? "high" : "light");
        return sign.asGame() == 0
                ? "If they meet the pins " + miss
                        + " of the pocket, the oil is nearly as fresh as laid: start where you"
                        + " would on the fresh pattern, and believe these rows less."
                : "If they meet the pins " + miss + " of the pocket, the lanes are already as forecast before game "
                        + sign.asGame() + ": start with that game's row, and expect the later rows early.";
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
    }
}
