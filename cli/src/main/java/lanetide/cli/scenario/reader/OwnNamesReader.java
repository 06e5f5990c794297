package lanetide.cli.scenario.reader;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.key.TextRule;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;
import lanetide.squads.model.Reckoning;

/** Reads the surfaces, covers, styles and levels that a scenario defines itself. */
final class OwnNamesReader {
    private OwnNamesReader() {}

    /** The shipped names with the scenario's own in front of them. */
    static Names read(Section scenario, NamedFiles files) {
        Names names = Names.shipped();
        addAll(scenario, EventKeys.SURFACES, OwnKeys.SURFACE, names.surfaces(), OwnNamesReader::surface);
        addAll(scenario, EventKeys.COVERS, OwnKeys.COVER, names.covers(), CoverReader::read);
        addAll(scenario, EventKeys.STYLES, OwnKeys.STYLE, names.styles(), new StyleReader(names, files)::read);
        addAll(scenario, EventKeys.LEVELS, OwnKeys.LEVEL, names.levels(), OwnNamesReader::level);
        return names;
    }

    private static <T> void addAll(
            Section scenario,
            Key<Void> key,
            Block block,
            Map<String, T> known,
            BiFunction<String, Section, Optional<T>> read) {
        scenario.value(key)
                .flatMap(Value::named)
                .ifPresent(all -> all.forEach((id, named) -> {
                    if (known.containsKey(id)) {
                        replaced(scenario.notices(), key.name() + "." + id, id, named.place());
                    }
                    if (!TextRule.isName(id)) {
                        named.refuse(NoticeCode.BAD_TEXT, "; it must be " + TextRule.NAME_IN_WORDS + ". Rename it.");
                    }
                    named.value()
                            .section(block)
                            .flatMap(section -> read.apply(id, section))
                            .ifPresentOrElse(value -> known.put(id, value), () -> standIn(id, known));
                }));
    }

    /**
     * A shipped value under the name of one that is wrong, so that the name is not told to be unknown wherever it
     * stands. The scenario has an error, so that nothing is ever played with it.
     */
    private static <T> void standIn(String id, Map<String, T> known) {
        known.values().stream().findFirst().ifPresent(any -> known.putIfAbsent(id, any));
    }

    private static void replaced(Notices notices, String path, String id, Place place) {
        notices.add(
                NoticeCode.SHIPPED_NAME_REPLACED,
                place,
                path,
                id,
                "`" + Notices.quote(id) + "` is also the name of values that come with the program; this scenario uses"
                        + " its own. Choose another name to keep both.");
    }

    private static Optional<LaneSurface> surface(String id, Section section) {
        return section.build(() -> new LaneSurface(
                id,
                section.get(OwnKeys.DRY_FRICTION),
                section.get(OwnKeys.LANE_ROUGHNESS),
                section.get(OwnKeys.SOURCE)));
    }

    private static Optional<Level> level(String id, Section section) {
        return section.build(() -> new Level(
                id,
                Levels.spread(
                        section.get(OwnKeys.ARROWS), section.get(OwnKeys.SPEED_SHARE), section.get(OwnKeys.SPIN_SHARE)),
                new Adaptation(
                        section.get(OwnKeys.SEES),
                        section.get(OwnKeys.DEAD_BAND),
                        section.get(OwnKeys.GAIN),
                        section.get(OwnKeys.PATIENCE),
                        new Reckoning(
                                section.get(OwnKeys.DRIFT),
                                section.get(OwnKeys.DEEPER),
                                section.get(OwnKeys.OTHERS),
                                section.get(OwnKeys.TOLD))),
                section.get(OwnKeys.FORM),
                section.get(OwnKeys.SOURCE)));
    }
}
