package lanetide.cli.scenario.reader;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TextRule;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;

/** Reads the surfaces, covers, styles and levels that a scenario defines itself. */
final class OwnNamesReader {
    private static final double RIGHT_ANGLE = StrictMath.PI / 2;

    private final Notices notices;
    private final Assumptions assumptions;

    OwnNamesReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    /** The shipped names with the scenario's own in front of them. */
    Names read(Section scenario) {
        Names names = Names.shipped();
        addAll(scenario, "surfaces", Block.SURFACE, names.surfaces(), this::surface);
        addAll(scenario, "covers", Block.COVER, names.covers(), new CoverReader(notices, assumptions)::read);
        addAll(scenario, "styles", Block.STYLE, names.styles(), this::style);
        addAll(scenario, "levels", Block.LEVEL, names.levels(), this::level);
        return names;
    }

    private <T> void addAll(
            Section scenario,
            String key,
            Block block,
            Map<String, T> known,
            BiFunction<String, Section, Optional<T>> read) {
        scenario.get(key)
                .flatMap(Value::named)
                .ifPresent(all -> all.forEach((id, named) -> {
                    if (known.containsKey(id)) {
                        replaced(key + "." + id, id, named.place());
                    }
                    if (!TextRule.isName(id)) {
                        named.refuse(NoticeCode.BAD_TEXT, TextRule.NAME_IN_WORDS + " Rename it.");
                    }
                    named.value()
                            .section(block)
                            .flatMap(section -> read.apply(id, section))
                            .ifPresent(value -> known.put(id, value));
                }));
    }

    private void replaced(String path, String id, Place place) {
        notices.add(
                NoticeCode.SHIPPED_NAME_REPLACED,
                place,
                path,
                id,
                "`" + Notices.quote(id) + "` is also the name of values that come with the program; this scenario uses"
                        + " its own. Choose another name to keep both.");
    }

    private Optional<LaneSurface> surface(String id, Section section) {
        int before = notices.errors();
        double friction = section.quantity("dryFriction", Measure.NUMBER, Range.between(0.05, 0.35));
        double roughnessUm = section.quantity("roughness", Measure.ROUGHNESS, Range.between(0.05, 3));
        String source = section.text("source");
        return section.build(before, () -> new LaneSurface(id, friction, roughnessUm, source));
    }

    private Optional<PlayingStyle> style(String id, Section section) {
        int before = notices.errors();
        double speedMps = section.quantity("speed", Measure.SPEED, Range.between(4, 13));
        double spinRadps = section.quantity("revRate", Measure.REV_RATE, Range.between(0, 75));
        double rotationRad = section.quantity("axisRotation", Measure.ANGLE, Range.between(0, RIGHT_ANGLE));
        double tiltRad = section.quantity("axisTilt", Measure.ANGLE, Range.between(0, 1.2));
        double launchRad = section.quantity("naturalLaunch", Measure.ANGLE, Range.between(-0.05, 0.1));
        String source = section.text("source");
        return section.build(
                before,
                () -> new PlayingStyle(id, new Release(speedMps, spinRadps, rotationRad, tiltRad), launchRad, source));
    }

    private Optional<Level> level(String id, Section section) {
        int before = notices.errors();
        double arrows = section.quantity("arrows", Measure.BOARDS, Range.above(0, 10));
        double speedShare = section.quantity("speedShare", Measure.SHARE, Range.between(0, 0.1));
        double spinShare = section.quantity("spinShare", Measure.SHARE, Range.between(0, 0.3));
        double sees = section.quantity("sees", Measure.BOARDS, Range.between(0, 5));
        double deadBand = section.quantity("deadBand", Measure.BOARDS, Range.between(0, 10));
        double gain = section.quantity("gain", Measure.NUMBER, Range.between(0, 1.5));
        long patience = section.require("patience")
                .map(value -> value.wholeLong(Measure.SHOTS, 1, 50))
                .orElse(OptionalLong.empty())
                .orElse(1);
        double drift = section.quantity("drift", Measure.BOARDS, Range.between(0, 3));
        double form = section.quantity("form", Measure.SHARE, Range.between(0, 0.5));
        String source = section.text("source");
        return section.build(
                before,
                () -> new Level(
                        id,
                        Levels.spread(arrows, speedShare, spinShare),
                        new Adaptation(sees, deadBand, gain, (int) patience, drift),
                        form,
                        source));
    }
}
