package lanetide.cli.scenario.reader;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LaneShapes;

/** Reads how far the lanes are from level, and draws the lanes that were not measured. */
final class TopographyReader {
    private static final double MOST_LIMIT_M = 0.2 * 0.0254;
    private static final int HIGHEST_LANE = 999_999;

    private final Assumptions assumptions;
    private final List<LanePair> pairs;
    private final RandomStreams streams;
    private final Map<Integer, NavigableMap<Double, Station>> readings = new HashMap<>();

    TopographyReader(Assumptions assumptions, List<LanePair> pairs, RandomStreams streams) {
        this.assumptions = assumptions;
        this.pairs = pairs;
        this.streams = streams;
    }

    /** Shapes by lane; what is wrong has a notice. */
    Map<Integer, Topography> read(Section section) {
        Range limits = Range.between(0, MOST_LIMIT_M);
        double limitM = section.quantity("limit", Measure.LENGTH, limits, Defaults.TOPOGRAPHY_LIMIT, assumptions);
        double spreadM = section.quantity("spread", Measure.LENGTH, limits, Defaults.TOPOGRAPHY_SPREAD, assumptions);
        section.get("readings")
                .flatMap(Value::list)
                .ifPresent(list -> list.forEach(
                        item -> item.section(Block.SHAPE).ifPresent(reading -> add(item, reading, limitM))));
        if (spreadM > 0) {
            assumptions.add(
                    section.pathOf("readings"),
                    "tilt and crown of lanes without readings drawn by the seed at 0, 20, 40 and 60 ft, each by itself",
                    "assumption");
        }
        Map<Integer, LaneSurvey> measured = new HashMap<>();
        readings.forEach((lane, stations) -> measured.put(lane, new LaneSurvey(List.copyOf(stations.values()))));
        return Double.isNaN(limitM) || Double.isNaN(spreadM)
                ? Map.of()
                : LaneShapes.of(pairs, measured, spreadM, limitM, streams);
    }

    private void add(Value item, Section reading, double limitM) {
        int lane = reading.whole("lane", 1, HIGHEST_LANE);
        double mostM = Double.isNaN(limitM) ? MOST_LIMIT_M : limitM;
        Range within = Range.between(-mostM, mostM);
        double alongM = optional(reading, "at", Range.between(0, LaneGeometry.HEAD_PIN_M));
        double tiltM = optional(reading, "tilt", within);
        double crownM = optional(reading, "crown", within);
        if (lane == 0 || pairs.isEmpty() || Double.isNaN(alongM + tiltM + crownM)) {
            return;
        }
        if (pairs.stream().noneMatch(pair -> pair.left() == lane || pair.right() == lane)) {
            reading.get("lane")
                    .ifPresent(value -> value.refuse(
                            NoticeCode.UNKNOWN_LANE,
                            ", which is no lane in use. Change it, or add the lane to the centre."));
            return;
        }
        Station other = readings.computeIfAbsent(lane, number -> new TreeMap<>())
                .putIfAbsent(alongM, new Station(alongM, tiltM, crownM));
        if (other != null) {
            item.say(
                    NoticeCode.READING_TWICE,
                    item.plain(),
                    item.path() + " is a second reading of lane " + lane + " at "
                            + Range.round(alongM / LaneGeometry.FOOT_M) + " ft; there must be one. Remove one.");
        }
    }

    private static double optional(Section reading, String key, Range range) {
        return reading.has(key) ? reading.quantity(key, Measure.LENGTH, range) : 0;
    }
}
