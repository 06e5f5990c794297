package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.LineQuality;
import lanetide.squads.model.Event;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** Brings together what the playings tell. */
record Summary(Event event, Place place) {
    /** A line that meets the pocket on fewer lanes is no advice. */
    private static final double MIN_FOUND = 0.5;

    private static final double TENTH = 10;
    private static final double MEDIAN = 50;

    GameForecast fresh(PreviewStudy.Met met) {
        return forecast(0, List.of(met), Optional.empty());
    }

    List<GameForecast> games(GameForecast fresh, List<PreviewStudy.PlayingMet> playings) {
        List<GameForecast> games = new ArrayList<>();
        Optional<GameForecast.Start> before = fresh.start();
        for (int game = 0; game < place.rotation(event).games(); game++) {
            int g = game;
            List<PreviewStudy.Met> met = playings.stream()
                    .flatMap(playing -> playing.games().get(g).stream())
                    .toList();
            Optional<GameForecast.Start> last = before;
            GameForecast forecast = forecast(game + 1, met, last);
            games.add(forecast);
            before = forecast.start().or(() -> last);
        }
        return games;
    }

    private GameForecast forecast(int game, List<PreviewStudy.Met> met, Optional<GameForecast.Start> before) {
        List<PreviewStudy.Met> lines =
                met.stream().filter(lane -> lane.window().isPresent()).toList();
        double found = (double) lines.size() / met.size();
        Optional<GameForecast.Start> start =
                lines.isEmpty() || found < MIN_FOUND ? Optional.empty() : Optional.of(start(lines));
        return new GameForecast(
                game,
                place.pair(event, Math.max(0, game - 1)),
                start,
                found,
                start.stream()
                        .flatMap(now -> before.stream()
                                .map(earlier -> Math.rint(2 * (now.laydownBoard() - earlier.laydownBoard())) / 2))
                        .mapToDouble(Double::doubleValue)
                        .findFirst(),
                change(met),
                why(met));
    }

    private static GameForecast.Start start(List<PreviewStudy.Met> met) {
        List<ExitWindow> told =
                met.stream().flatMap(lane -> lane.window().stream()).toList();
        return new GameForecast.Start(
                percentile(MEDIAN, told, ExitWindow::lowBoard),
                percentile(MEDIAN, told, ExitWindow::highBoard),
                percentile(MEDIAN, told, ExitWindow::exitBoard),
                percentile(MEDIAN, told, window -> window.played().laydownBoard()),
                new GameForecast.Spread(
                        percentile(TENTH, told, window -> window.played().laydownBoard()),
                        percentile(100 - TENTH, told, window -> window.played().laydownBoard())),
                percentile(MEDIAN, told, window -> window.played().arrowsBoard()),
                quality(met.stream().flatMap(lane -> lane.quality().stream()).toList()));
    }

    private static Optional<LineQuality> quality(List<LineQuality> told) {
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(new LineQuality(
                        percentile(MEDIAN, told, LineQuality::strikeShare),
                        percentile(MEDIAN, told, LineQuality::pocketShare)));
    }

    /** The ball that helps on more than half of the lanes on which balls were compared, with its middle gain. */
    private static Optional<BallChange> change(List<PreviewStudy.Met> met) {
        Map<String, List<BallChange>> byCover = met.stream()
                .flatMap(lane -> lane.change().stream())
                .collect(Collectors.groupingBy(change -> change.cover().id(), LinkedHashMap::new, Collectors.toList()));
        long compared = met.stream().filter(PreviewStudy.Met::compared).count();
        return byCover.values().stream()
                .filter(changes -> 2L * changes.size() > compared)
                .map(changes -> changes.stream()
                        .sorted(Comparator.comparingDouble(BallChange::gain))
                        .toList()
                        .get(changes.size() / 2))
                .findFirst();
    }

    /** The mean over the lanes, to tenths of a board. */
    private static Optional<ByStretch> why(List<PreviewStudy.Met> met) {
        List<ByStretch> shifts =
                met.stream().flatMap(lane -> lane.why().stream()).toList();
        return shifts.isEmpty()
                ? Optional.empty()
                : Optional.of(ByStretch.mean(shifts).inTenths());
    }

    private static <T> double percentile(double share, List<T> all, ToDoubleFunction<T> value) {
        return new Percentile(share).evaluate(all.stream().mapToDouble(value).toArray());
    }
}
