package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.PaceOfPlay;

/** Reads how long things take. */
final class PaceReader {
    private static final double LONGEST_MS = 30 * 60_000;
    private static final double LONGEST_APPROACH_MS = 60_000;

    private final Notices notices;
    private final Assumptions assumptions;

    PaceReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<PaceOfPlay> read(Section scenario) {
        return scenario.has("pace") ? scenario.block("pace", Block.PACE).flatMap(this::pace) : usual();
    }

    private Optional<PaceOfPlay> usual() {
        assumptions.add("pace.firstShot", Defaults.FIRST_SHOT);
        assumptions.add("pace.spareShot", Defaults.SPARE_SHOT);
        assumptions.add("pace.spread", Defaults.SHOT_SPREAD);
        assumptions.add("pace.pinsetter", Defaults.PINSETTER);
        assumptions.add("pace.ballReturn", Defaults.BALL_RETURN);
        assumeCourtesy("pace.courtesy");
        assumptions.add("pace.approach", Defaults.APPROACH);
        assumptions.add("pace.movePerPair", Defaults.MOVE_PER_PAIR);
        assumptions.add("pace.settle", Defaults.SETTLE);
        return Optional.of(PaceOfPlay.USUAL);
    }

    private void assumeCourtesy(String path) {
        assumptions.add(path, Defaults.COURTESY + " lane", "common practice, no source");
    }

    private Optional<PaceOfPlay> pace(Section section) {
        int before = notices.errors();
        long firstShot = timeMs(section, "firstShot", Defaults.FIRST_SHOT);
        long spareShot = timeMs(section, "spareShot", Defaults.SPARE_SHOT);
        double spread =
                section.quantity("spread", Measure.SHARE, Range.between(0, 1), Defaults.SHOT_SPREAD, assumptions);
        long pinsetter = timeMs(section, "pinsetter", Defaults.PINSETTER);
        long ballReturn = timeMs(section, "ballReturn", Defaults.BALL_RETURN);
        Optional<LaneCourtesy> courtesy = courtesy(section);
        long move = timeMs(section, "movePerPair", Defaults.MOVE_PER_PAIR);
        long settle = timeMs(section, "settle", Defaults.SETTLE);
        return section.build(
                before,
                () -> new PaceOfPlay(
                        firstShot, spareShot, spread, pinsetter, ballReturn, move, settle, courtesy.orElseThrow()));
    }

    private Optional<LaneCourtesy> courtesy(Section section) {
        double approachMs = section.quantity(
                "approach", Measure.TIME, Range.between(0, LONGEST_APPROACH_MS), Defaults.APPROACH, assumptions);
        if (!section.has("courtesy")) {
            assumeCourtesy(section.pathOf("courtesy"));
        }
        Optional<Integer> lanes = section.has("courtesy")
                ? section.get("courtesy").flatMap(value -> value.oneOf(Names.COURTESY, "courtesy"))
                : Optional.of(Names.COURTESY.get(Defaults.COURTESY));
        return Double.isNaN(approachMs)
                ? Optional.empty()
                : lanes.map(known -> new LaneCourtesy(known, Math.round(approachMs)));
    }

    private long timeMs(Section section, String key, Default otherwise) {
        return Math.round(section.quantity(key, Measure.TIME, Range.between(0, LONGEST_MS), otherwise, assumptions));
    }
}
