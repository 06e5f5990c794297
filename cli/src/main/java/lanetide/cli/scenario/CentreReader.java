package lanetide.cli.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;

/** Reads the lanes, their surface and the lane machines. */
final class CentreReader {
    private static final int MOST_MACHINES = 20;
    private static final double LONGEST_LANE_TIME_MS = 30 * 60_000;

    private final Notices notices;
    private final Names names;
    private final Assumptions assumptions;
    private final RandomStreams streams;

    CentreReader(Notices notices, Names names, Assumptions assumptions, RandomStreams streams) {
        this.streams = streams;
        this.notices = notices;
        this.names = names;
        this.assumptions = assumptions;
    }

    Optional<Centre> read(Section section) {
        int before = notices.errors();
        List<LanePair> pairs = PairsReader.pairs(section);
        Optional<LaneSurface> surface =
                section.require("surface").flatMap(value -> value.oneOf(names.surfaces(), "surface"));
        surface.ifPresent(known ->
                assumptions.add("surface " + known.id(), "dry friction " + known.dryFriction(), known.source()));
        int machines = machines(section);
        long stripMs = laneTimeMs(section, "stripTime", Defaults.STRIP_TIME);
        long oilMs = laneTimeMs(section, "oilTime", Defaults.OIL_TIME);
        Map<Integer, Topography> shapes = section.get("topography")
                .flatMap(value -> value.section(Block.TOPOGRAPHY))
                .map(block -> new TopographyReader(assumptions, pairs, streams).read(block))
                .orElse(Map.of());
        return notices.build(
                before,
                section.place(),
                section.path(),
                () -> new Centre(pairs, surface.orElseThrow(), new LaneMachines(machines, stripMs, oilMs), shapes));
    }

    private int machines(Section section) {
        if (section.has("machines")) {
            return section.whole("machines", 1, MOST_MACHINES);
        }
        assumptions.add(section.pathOf("machines"), Defaults.MACHINES);
        return (int) Defaults.MACHINES.base();
    }

    private long laneTimeMs(Section section, String key, Default otherwise) {
        return Math.round(
                section.quantity(key, Measure.TIME, Range.between(0, LONGEST_LANE_TIME_MS), otherwise, assumptions));
    }
}
