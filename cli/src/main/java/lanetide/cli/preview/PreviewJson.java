package lanetide.cli.preview;

import java.util.Optional;
import java.util.Set;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.words.WearWords;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What {@code preview} answers, for programs. */
public final class PreviewJson {
    private PreviewJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param preview what the bowler will meet
     * @param drawn what was drawn of the bowler, so that it is not known
     * @return the JSON text
     */
    public static String write(Reading reading, Preview preview, Set<Trait> drawn) {
        return JsonAnswer.write(tree(reading, preview, drawn));
    }

    /** The same as a tree. */
    public static ObjectNode tree(Reading reading, Preview preview, Set<Trait> drawn) {
        Scenario scenario = reading.scenario().orElseThrow();
        PreviewWords words = new PreviewWords(preview);
        ObjectNode answer = JsonAnswer.opening(reading);
        answer.put("replications", preview.replications());
        answer.put("sets", preview.sets());
        answer.put(
                "squad", scenario.event().squads().get(preview.place().squad()).id());
        answer.put("pair", preview.games().get(0).pair().id());
        answer.put("bowler", preview.place().bowler().orElse(null));
        answer.put("style", preview.kind().style().id());
        answer.put("hand", ConstantName.of(preview.kind().hand()));
        answer.put("level", preview.kind().level().id());
        answer.put("cover", preview.kind().cover().id());
        if (!drawn.isEmpty()) {
            drawn.stream().map(Trait::id).forEach(answer.putArray("drawn")::add);
        }
        numbers(answer.putObject("fresh"), preview.fresh());
        JsonAnswer.putAll(answer, "games", preview.games(), (node, game) -> game(node, game, preview, words));
        JsonAnswer.putAll(answer, "signs", preview.signs(), (node, sign) -> {
            node.put("asGame", sign.asGame());
            JsonAnswer.put(node, "boardsHigh", sign.boardsHigh(), 2);
        });
        JsonAnswer.put(answer, "practice", preview.practice(), (node, practice) -> practice(node, practice, words));
        words.signs().forEach(answer.putArray("watch")::add);
        JsonAnswer.putCautions(answer);
        return answer;
    }

    private static void game(ObjectNode node, GameForecast game, Preview preview, PreviewWords words) {
        node.put("game", game.game());
        node.put("pair", game.pair().id());
        numbers(node, game);
        JsonAnswer.put(node, "moveBoards", game.moveBoards(), 1);
        node.put("cover", preview.coverIn(game).id());
        node.put("text", words.game(game));
        JsonAnswer.put(node, "why", game.why(), (why, shift) -> {
            WearWords.FIELDS.forEach((part, boards) -> JsonAnswer.put(why, part, boards.applyAsDouble(shift), 1));
            why.put("text", words.why(game));
        });
    }

    private static void practice(ObjectNode node, Practice practice, PreviewWords words) {
        JsonAnswer.putAll(node, "lines", practice.lines(), (line, shot) -> {
            line.put("game", shot.game());
            JsonAnswer.put(line, "laydownBoard", shot.laydownBoard(), 2);
            JsonAnswer.put(line, "arrowsBoard", shot.arrowsBoard(), 2);
            line.put("balls", shot.balls());
        });
        JsonAnswer.putAll(node, "lanes", practice.lanes(), (lane, found) -> {
            lane.put("asGame", found.asGame());
            ArrayNode boards = lane.putArray("boardsHigh");
            found.boardsHigh().forEach(high -> boards.add(JsonAnswer.rounded(high, 1)));
            lane.put("text", words.found(practice, found));
        });
    }

    private static void numbers(ObjectNode node, GameForecast game) {
        Optional<GameForecast.Start> start = game.start();
        ObjectNode window = node.putObject("exitWindow");
        JsonAnswer.put(window, "low", start, GameForecast.Start::lowBoard, 2);
        JsonAnswer.put(window, "high", start, GameForecast.Start::highBoard, 2);
        JsonAnswer.put(node, "exitBoard", start, GameForecast.Start::exitBoard, 2);
        JsonAnswer.put(node, "laydownBoard", start, GameForecast.Start::laydownBoard, 2);
        ObjectNode spread = node.putObject("laydownSpread");
        JsonAnswer.put(spread, "low", start, line -> line.laydownSpread().low(), 2);
        JsonAnswer.put(spread, "high", start, line -> line.laydownSpread().high(), 2);
        JsonAnswer.put(node, "arrowsBoard", start, GameForecast.Start::arrowsBoard, 2);
        JsonAnswer.put(node, "pocketShare", start, GameForecast.Start::pocketShare, 3);
        JsonAnswer.put(node, "strikeShare", start, GameForecast.Start::strikeShare, 3);
        JsonAnswer.put(node, "foundShare", game.foundShare(), 3);
    }
}
