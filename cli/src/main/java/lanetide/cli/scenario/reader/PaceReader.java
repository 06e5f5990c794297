package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.PaceKeys;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.PaceOfPlay;

/** Reads how long things take. */
final class PaceReader {
    private PaceReader() {}

    static Optional<PaceOfPlay> read(Section scenario) {
        return scenario.blockOrUsual(EventKeys.PACE).flatMap(PaceReader::pace);
    }

    private static Optional<PaceOfPlay> pace(Section section) {
        return section.build(() -> {
            long firstShotMs = section.get(PaceKeys.FIRST_SHOT);
            long spareShotMs = section.get(PaceKeys.SPARE_SHOT);
            double spread = section.get(PaceKeys.SPREAD);
            long pinsetterMs = section.get(PaceKeys.PINSETTER);
            long ballReturnMs = section.get(PaceKeys.BALL_RETURN);
            LaneCourtesy courtesy = courtesy(section);
            long moveMs = section.get(PaceKeys.MOVE_PER_PAIR);
            long settleMs = section.get(PaceKeys.SETTLE);
            return new PaceOfPlay(
                    firstShotMs, spareShotMs, spread, pinsetterMs, ballReturnMs, moveMs, settleMs, courtesy);
        });
    }

    private static LaneCourtesy courtesy(Section section) {
        int lanes = section.get(PaceKeys.COURTESY);
        if (!section.has(PaceKeys.COURTESY)) {
            section.assume(PaceKeys.COURTESY, "one lane", "common practice, no source");
        }
        return new LaneCourtesy(lanes, section.get(PaceKeys.APPROACH));
    }
}
