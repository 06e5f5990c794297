package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.cli.preview.PreviewStudy.Trial;
import lanetide.cli.preview.PreviewStudy.Tried;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** What shots would do on other lanes than forecast, by medians over the playings and both lanes. */
final class Trials {
    private static final int BALLS_ON_FIRST = 6;
    private static final int BALLS_ON_SECOND = 4;
    /** Lines less than this apart cannot be told apart in practice (boards). */
    private static final double APART_BOARDS = 1;

    private final Map<Trial, Double> boardsHigh;

    Trials(List<PreviewStudy.PlayingMet> playings) {
        boardsHigh = playings.stream()
                .flatMap(playing -> playing.tried().stream())
                .collect(Collectors.groupingBy(
                        Tried::trial, Collectors.collectingAndThen(Collectors.toList(), Trials::median)));
    }

    private static double median(List<Tried> tried) {
        return new Percentile()
                .evaluate(tried.stream().mapToDouble(Tried::boardsHigh).toArray());
    }

    /** The strongest sign on either side: the fresh pattern, and of the later games the one that shows most. */
    List<Preview.Sign> signs() {
        List<Preview.Sign> signs = boardsHigh.entrySet().stream()
                .filter(trial -> trial.getKey().line() == 1)
                .map(trial -> new Preview.Sign(trial.getKey().lanes(), trial.getValue()))
                .sorted(Comparator.comparingInt(Preview.Sign::asGame))
                .toList();
        List<Preview.Sign> told = new ArrayList<>();
        signs.stream().filter(sign -> sign.asGame() == 0).forEach(told::add);
        signs.stream()
                .filter(sign -> sign.asGame() > 0)
                .max(Comparator.comparingDouble(sign -> Math.abs(sign.boardsHigh())))
                .ifPresent(told::add);
        return told;
    }

    /** The line of the first game, and that of the game whose line is furthest from it. */
    Optional<Practice> practice(List<GameForecast> games) {
        return games.get(0)
                .start()
                .map(first -> furthest(first, games)
                        .map(later -> practice(first, later, later.start().orElseThrow()))
                        .orElseGet(() -> practice(first)));
    }

    private Optional<GameForecast> furthest(GameForecast.Start first, List<GameForecast> games) {
        return games.stream()
                .skip(1)
                .filter(game -> apart(first, game) >= APART_BOARDS)
                .filter(game -> boardsHigh.containsKey(new Trial(game.game(), 1)))
                .max(Comparator.comparingDouble(game -> apart(first, game)));
    }

    private static double apart(GameForecast.Start first, GameForecast game) {
        return game.start()
                .map(start -> Math.abs(start.laydownBoard() - first.laydownBoard()))
                .orElse(0.0);
    }

    private Practice practice(GameForecast.Start first, GameForecast later, GameForecast.Start second) {
        int game = later.game();
        return new Practice(
                lines(first, game, second.laydownBoard(), second.arrowsBoard()),
                List.of(
                        new Practice.Found(1, List.of(0.0, boardsHigh.get(new Trial(game, 1)))),
                        new Practice.Found(
                                0, List.of(boardsHigh.get(new Trial(1, 0)), boardsHigh.get(new Trial(game, 0)))),
                        new Practice.Found(game, List.of(boardsHigh.get(new Trial(1, game)), 0.0))));
    }

    private Practice practice(GameForecast.Start first) {
        return new Practice(
                lines(
                        first,
                        Practice.DEEPER,
                        first.laydownBoard() + Practice.DEEPER_BOARDS,
                        first.arrowsBoard() + Practice.DEEPER_BOARDS / 2),
                List.of(
                        new Practice.Found(1, List.of(0.0, boardsHigh.get(new Trial(Practice.DEEPER, 1)))),
                        new Practice.Found(
                                0,
                                List.of(
                                        boardsHigh.get(new Trial(1, 0)),
                                        boardsHigh.get(new Trial(Practice.DEEPER, 0))))));
    }

    private static List<Practice.Throw> lines(
            GameForecast.Start first, int game, double laydownBoard, double arrowsBoard) {
        return List.of(
                new Practice.Throw(1, first.laydownBoard(), first.arrowsBoard(), BALLS_ON_FIRST),
                new Practice.Throw(game, laydownBoard, arrowsBoard, BALLS_ON_SECOND));
    }
}
