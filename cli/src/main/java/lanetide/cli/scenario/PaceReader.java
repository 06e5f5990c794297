package lanetide.cli.scenario;

import java.util.Optional;
import lanetide.squads.model.PaceOfPlay;

/** Reads how long things take. */
final class PaceReader {
    private static final double LONGEST_MS = 30 * 60_000;

    private final Notices notices;
    private final Assumptions assumptions;

    PaceReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<PaceOfPlay> read(Section scenario) {
        return scenario.has("pace")
                ? scenario.get("pace")
                        .flatMap(value -> value.section(Block.PACE))
                        .flatMap(this::pace)
                : usual();
    }

    private Optional<PaceOfPlay> usual() {
        assumptions.add("pace.firstShot", Defaults.FIRST_SHOT);
        assumptions.add("pace.spareShot", Defaults.SPARE_SHOT);
        assumptions.add("pace.reset", Defaults.RESET);
        assumptions.add("pace.movePerPair", Defaults.MOVE_PER_PAIR);
        assumptions.add("pace.settle", Defaults.SETTLE);
        return Optional.of(PaceOfPlay.USUAL);
    }

    private Optional<PaceOfPlay> pace(Section section) {
        int before = notices.errors();
        long firstShot = timeMs(section, "firstShot", Defaults.FIRST_SHOT);
        long spareShot = timeMs(section, "spareShot", Defaults.SPARE_SHOT);
        long reset = timeMs(section, "reset", Defaults.RESET);
        long move = timeMs(section, "movePerPair", Defaults.MOVE_PER_PAIR);
        long settle = timeMs(section, "settle", Defaults.SETTLE);
        return notices.build(
                before,
                section.place(),
                section.path(),
                () -> new PaceOfPlay(firstShot, spareShot, reset, move, settle));
    }

    private long timeMs(Section section, String key, Default otherwise) {
        return Math.round(section.quantity(key, Measure.TIME, Range.between(0, LONGEST_MS), otherwise, assumptions));
    }
}
