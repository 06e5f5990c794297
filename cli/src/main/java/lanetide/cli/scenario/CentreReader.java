package lanetide.cli.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;

/** Reads the lanes, their surface and the lane machines. */
final class CentreReader {
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
        List<LanePair> spares = PairsReader.spares(section, pairs);
        List<LanePair> all = Stream.concat(pairs.stream(), spares.stream()).toList();
        Optional<LaneMachines> machines = new MachinesReader(notices, assumptions).read(section);
        Map<Integer, Topography> shapes = section.get("topography")
                .flatMap(value -> value.section(Block.TOPOGRAPHY))
                .map(block -> new TopographyReader(assumptions, all, streams).read(block))
                .orElse(Map.of());
        return notices.build(
                before,
                section.place(),
                section.path(),
                () -> new Centre(pairs, surface.orElseThrow(), machines.orElseThrow(), shapes, spares));
    }
}
