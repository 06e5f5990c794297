package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.cli.scenario.centre.CentreFileFromJson;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.lanes.PairsReader;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;

/** Reads the lanes, their surface and the lane machines. */
record CentreReader(Names names, RandomStreams streams, NamedFiles files) {
    /**
     * A centre, if all of it is right, its pairs in any case, so that what depends on them can be looked at, its centre
     * file, if it names one, and when it closes, if it says so.
     */
    record Found(
            Optional<Centre> centre, Lanes lanes, Optional<CentreFile> fitted, Optional<ClockCheck.Closing> closes) {
        static final Found NOTHING = new Found(Optional.empty(), Lanes.UNKNOWN, Optional.empty(), Optional.empty());
    }

    Found read(Section section) {
        Lanes lanes = PairsReader.read(section);
        Optional<CentreFile> fitted = section.value(CentreKeys.FITTED)
                .flatMap(value -> files.read(value).flatMap(bytes -> CentreFileFromJson.read(bytes, value)));
        Optional<ClockCheck.Closing> closes = section.value(CentreKeys.CLOSES)
                .flatMap(value -> section.find(CentreKeys.CLOSES).map(hour -> new ClockCheck.Closing(value, hour)));
        return new Found(centre(section, lanes), lanes, fitted, closes);
    }

    private Optional<Centre> centre(Section section, Lanes lanes) {
        Optional<LaneSurface> surface = section.oneOf(CentreKeys.SURFACE, names.surfaces());
        surface.ifPresent(section.notices().assumptions()::addSurface);
        Optional<LaneMachines> machines = MachinesReader.read(section);
        Optional<Map<Integer, Topography>> shapes = section.has(CentreKeys.LEVEL)
                ? section.block(CentreKeys.LEVEL).flatMap(new TopographyReader(lanes.pairs(), streams)::read)
                : Optional.of(Map.of());
        return section.build(() -> new Centre(
                lanes.pairs(),
                surface.orElseThrow(),
                machines.orElseThrow(),
                shapes.orElseThrow(),
                List.copyOf(lanes.spare())));
    }
}
