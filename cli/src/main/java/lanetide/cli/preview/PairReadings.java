package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineAdvisor;

/** Reads the lanes that a bowler meets in one playing, each by the pattern that lies there. */
final class PairReadings {
    private final IntFunction<LaneReading> readings;
    private final List<List<MetFilms.LaneMet>> lanes;

    /**
     * Nothing read yet.
     *
     * @param readings reads a lane, by its number; the same for all lanes with one pattern
     * @param lanes both lanes before each game
     */
    PairReadings(IntFunction<LaneReading> readings, List<List<MetFilms.LaneMet>> lanes) {
        this.readings = readings;
        this.lanes = lanes;
    }

    /** What the playing tells. */
    PreviewStudy.PlayingMet playing(boolean withBalls) {
        Map<LaneReading, Optional<LineAdvisor>> advisors = new HashMap<>();
        List<List<PreviewStudy.Met>> games = new ArrayList<>();
        for (List<MetFilms.LaneMet> pair : lanes) {
            games.add(pair.stream()
                    .map(lane -> {
                        LaneReading reading = readings.apply(lane.lane());
                        return reading.told(
                                lane,
                                advisors.computeIfAbsent(
                                        reading, of -> withBalls ? Optional.of(of.advisor()) : Optional.empty()));
                    })
                    .toList());
        }
        return new PreviewStudy.PlayingMet(games, tried(games));
    }

    /** What the line of the first game, that moved in, and those of the other games do on other films. */
    private List<PreviewStudy.Tried> tried(List<List<PreviewStudy.Met>> games) {
        List<PreviewStudy.Tried> tried = new ArrayList<>();
        for (int lane = 0; lane < lanes.get(0).size(); lane++) {
            Optional<Line> first = games.get(0).get(lane).played();
            if (first.isPresent()) {
                MetFilms.LaneMet met = lanes.get(0).get(lane);
                LaneReading reading = readings.apply(met.lane());
                tried.add(tried(reading, 1, 0, reading.freshFilm(), first.get()));
                tried.add(tried(reading, Practice.DEEPER, 0, reading.freshFilm(), Practice.deeper(first.get())));
                tried.add(tried(reading, Practice.DEEPER, 1, met.film(), Practice.deeper(first.get())));
                for (int game = 1; game < lanes.size(); game++) {
                    MetFilms.LaneMet later = lanes.get(game).get(lane);
                    if (readings.apply(later.lane()) == reading) {
                        tried.addAll(tried(
                                reading,
                                game,
                                met,
                                later,
                                first.get(),
                                games.get(game).get(lane)));
                    }
                }
            }
        }
        return tried;
    }

    private static List<PreviewStudy.Tried> tried(
            LaneReading reading,
            int game,
            MetFilms.LaneMet before,
            MetFilms.LaneMet later,
            Line first,
            PreviewStudy.Met met) {
        List<PreviewStudy.Tried> tried = new ArrayList<>(List.of(tried(reading, 1, game + 1, later.film(), first)));
        met.played().ifPresent(line -> {
            tried.add(tried(reading, game + 1, 0, reading.freshFilm(), line));
            tried.add(tried(reading, game + 1, 1, before.film(), line));
        });
        return tried;
    }

    private static PreviewStudy.Tried tried(LaneReading reading, int line, int lanes, OilFilm film, Line played) {
        return new PreviewStudy.Tried(new PreviewStudy.Trial(line, lanes), reading.boardsHigh(film, played));
    }
}
