package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;

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

    /** A centre, if all of it is right, and its pairs in any case, so that what depends on them can be looked at. */
    record Found(Optional<Centre> centre, Lanes lanes) {
        static final Found NOTHING = new Found(Optional.empty(), Lanes.UNKNOWN);
    }

    Found read(Section section) {
        int before = notices.errors();
        Lanes lanes = PairsReader.read(section);
        return new Found(centre(section, lanes, before), lanes);
    }

    private Optional<Centre> centre(Section section, Lanes lanes, int before) {
        Optional<LaneSurface> surface =
                section.require("surface").flatMap(value -> value.oneOf(names.surfaces(), "surface"));
        surface.ifPresent(known ->
                assumptions.add("surface " + known.id(), "dry friction " + known.dryFriction(), known.source()));
        Optional<LaneMachines> machines = new MachinesReader(notices, assumptions).read(section);
        Map<Integer, Topography> shapes = section.block("topography", Block.TOPOGRAPHY)
                .map(block -> new TopographyReader(assumptions, lanes.pairs(), streams).read(block))
                .orElse(Map.of());
        return section.build(
                before,
                () -> new Centre(
                        lanes.pairs(),
                        surface.orElseThrow(),
                        machines.orElseThrow(),
                        shapes,
                        List.copyOf(lanes.spare())));
    }
}
