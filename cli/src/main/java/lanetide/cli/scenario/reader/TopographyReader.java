package lanetide.cli.scenario.reader;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LaneShapes;

/** Reads how far the lanes are from level, and draws the lanes that were not measured. */
final class TopographyReader {
    private final List<LanePair> pairs;
    private final RandomStreams streams;
    private final Map<Integer, NavigableMap<Double, Station>> readings = new HashMap<>();

    TopographyReader(List<LanePair> pairs, RandomStreams streams) {
        this.pairs = pairs;
        this.streams = streams;
    }

    /** Shapes by lane; empty, with a notice, if something is wrong. */
    Optional<Map<Integer, Topography>> read(Section section) {
        Optional<Double> limitM = section.find(CentreKeys.LIMIT);
        Optional<Double> spreadM = section.find(CentreKeys.SPREAD);
        section.blocks(CentreKeys.READINGS).forEach(reading -> add(reading, limitM));
        if (spreadM.orElse(0.0) > 0) {
            section.assume(
                    CentreKeys.READINGS,
                    "tilt and crown of lanes without readings drawn by the seed at 0, 20, 40 and 60 ft, each by itself",
                    "assumption");
        }
        Map<Integer, LaneSurvey> measured = new HashMap<>();
        readings.forEach((lane, stations) -> measured.put(lane, new LaneSurvey(List.copyOf(stations.values()))));
        return section.build(
                () -> LaneShapes.of(pairs, measured, spreadM.orElseThrow(), limitM.orElseThrow(), streams));
    }

    private void add(Section reading, Optional<Double> limitM) {
        limitM.map(most -> Range.between(-most, most)).ifPresent(range -> {
            reading.within(CentreKeys.TILT, range);
            reading.within(CentreKeys.CROWN, range);
        });
        if (!pairs.isEmpty() && !reading.notices().hasErrors()) {
            double alongM = reading.find(CentreKeys.AT).orElse(0.0);
            Station station = new Station(alongM, reading.get(CentreKeys.TILT), reading.get(CentreKeys.CROWN));
            add(reading, reading.get(CentreKeys.LANE), station);
        }
    }

    private void add(Section reading, int lane, Station station) {
        if (pairs.stream().noneMatch(pair -> pair.holds(lane))) {
            reading.refuse(
                    CentreKeys.LANE,
                    NoticeCode.UNKNOWN_LANE,
                    ", which is not a lane in use. Change it, or add the lane to the centre.");
            return;
        }
        Station other =
                readings.computeIfAbsent(lane, number -> new TreeMap<>()).putIfAbsent(station.alongM(), station);
        if (other != null) {
            reading.value()
                    .say(
                            NoticeCode.READING_TWICE,
                            "",
                            reading.path() + " is a second reading of lane " + lane + " at "
                                    + Range.round(station.alongM() / LaneGeometry.FOOT_M)
                                    + " ft; there must be one. Remove one.");
        }
    }
}
