package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.ball.BallLimit;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Grits;

/** Reads a cover that a scenario defines, and holds it and the ball beneath to the governing body's limits. */
final class CoverReader {
    /** Absorption time of a cover that takes in none (s). */
    private static final double NEVER_S = OwnKeys.MAX_ABSORPTION_MS / 1000;

    /** Absorption times in which 95 % of a drop are gone. */
    private static final double TIMES_TO_VANISH = 3;

    private static final Grits GRITS = Grits.shipped();

    private CoverReader() {}

    static Optional<Coverstock> read(String id, Section section) {
        Optional<Double> roughnessUm = roughnessUm(section);
        section.find(OwnKeys.ABSORPTION)
                .flatMap(timeMs -> timeMs)
                .ifPresent(timeMs -> checkAbsorption(section, timeMs));
        checkBall(section, OwnKeys.DIAMETER, BallLimit.DIAMETER);
        checkBall(section, OwnKeys.RG, BallLimit.GYRATION);
        checkBall(section, OwnKeys.WEIGHT, BallLimit.WEIGHT);
        checkBall(section, OwnKeys.DIFFERENTIAL, BallLimit.DIFFERENTIAL);
        BallCore usual = BallCore.DEFAULT;
        return section.build(() -> new Coverstock(
                id,
                section.get(OwnKeys.FRICTION_FACTOR),
                roughnessUm.orElseThrow(),
                section.get(OwnKeys.FLARE_OVERLAP),
                section.get(OwnKeys.ABSORPTION).map(timeMs -> timeMs / 1000.0).orElse(NEVER_S),
                section.get(OwnKeys.SOURCE),
                new BallCore(
                        section.find(OwnKeys.DIAMETER).orElse(2 * usual.radiusM()) / 2,
                        section.find(OwnKeys.RG).orElse(usual.gyrationRadiusM()),
                        section.find(OwnKeys.WEIGHT).orElse(usual.massKg()))));
    }

    /** By its roughness, or by the abrasive that made it. */
    private static Optional<Double> roughnessUm(Section section) {
        Optional<Value> grit = section.value(OwnKeys.GRIT);
        Optional<Value> stated = section.value(OwnKeys.ROUGHNESS);
        if (grit.isEmpty()) {
            if (stated.isEmpty()) {
                section.missing(OwnKeys.ROUGHNESS);
            }
            Optional<Double> roughnessUm = section.find(OwnKeys.ROUGHNESS);
            roughnessUm.ifPresent(known -> warnOfRoughness(stated.orElseThrow(), known));
            return roughnessUm;
        }
        stated.ifPresent(both -> both.say(
                NoticeCode.CONFLICTING_KEYS,
                both.plain(),
                both.path() + " is `" + both.plain() + "` beside a grit of `"
                        + grit.get().plain() + "`; a finish must be given by one of the two. Remove one."));
        Optional<Double> roughnessUm = section.find(OwnKeys.GRIT).map(GRITS::roughnessUm);
        roughnessUm.ifPresent(known -> {
            warnOfRoughness(grit.get(), known);
            section.assume(
                    OwnKeys.ROUGHNESS,
                    Range.round(known) + " um by grit " + grit.get().plain(),
                    Grits.SOURCE);
        });
        return roughnessUm;
    }

    private static void warnOfRoughness(Value value, double roughnessUm) {
        BallLimit broken = roughnessUm > BallLimit.ROUGHNESS.most() ? BallLimit.ROUGHNESS : BallLimit.MODEL_ROUGHNESS;
        if (roughnessUm > broken.most()) {
            value.refuse(
                    NoticeCode.BEYOND_PUBLISHED_LIMIT,
                    ", a roughness Ra of " + Range.round(roughnessUm) + " um, and balls must be made with "
                            + broken.words() + " (" + broken.source() + "); a ball sanded later may be rougher. Check"
                            + " the reading.");
        }
    }

    private static void checkAbsorption(Section section, long timeMs) {
        Value value = section.value(OwnKeys.ABSORPTION).orElseThrow();
        double timeS = timeMs / 1000.0;
        BallLimit limit = BallLimit.ABSORPTION;
        String rule = "the rules want " + limit.words() + " (" + limit.source() + ")";
        if (!limit.allows(TIMES_TO_VANISH * timeS)) {
            value.refuse(
                    NoticeCode.BALL_BEYOND_RULES,
                    "; a drop of oil would be gone, to 95 %, in three times that, and " + rule + "." + value.advice());
        } else if (!limit.allows(timeS)) {
            value.refuse(
                    NoticeCode.BEYOND_PUBLISHED_LIMIT,
                    ", the time in which 63 % are taken in; until a whole drop is gone " + rule
                            + ". A ball so thirsty may still be legal: check its test.");
        }
    }

    /** Holds a measure that the scenario states to the limit of the rules. */
    private static void checkBall(Section section, Key<Double> key, BallLimit limit) {
        if (section.has(key) && !section.find(key).map(limit::allows).orElse(true)) {
            Value value = section.value(key).orElseThrow();
            value.mustBe(NoticeCode.BALL_BEYOND_RULES, limit.words() + " (" + limit.source() + ")", value.advice());
        }
    }
}
