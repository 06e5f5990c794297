package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.ball.BallLimit;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Grits;

/** Reads a cover that a scenario defines, and holds it and the ball beneath to the governing body's limits. */
final class CoverReader {
    /** Absorption time of a cover that takes in none (s): 30 years. */
    private static final double NEVER_S = 1e9;

    /** Absorption times in which 95 % of a drop are gone. */
    private static final double TIMES_TO_VANISH = 3;

    private static final Grits GRITS = Grits.shipped();

    private final Notices notices;
    private final Assumptions assumptions;

    CoverReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<Coverstock> read(String id, Section section) {
        int before = notices.errors();
        double friction = section.quantity("frictionFactor", Measure.NUMBER, Range.between(0.3, 1.6));
        double roughnessUm = roughnessUm(section);
        double overlap = section.quantity("flareOverlap", Measure.SHARE, Range.between(0, 1));
        double absorptionS = absorptionS(section);
        double radiusM = measured(section, "diameter", Measure.LENGTH, BallLimit.DIAMETER, 2 * usual().radiusM()) / 2;
        double gyrationM = measured(section, "rg", Measure.LENGTH, BallLimit.GYRATION, usual().gyrationRadiusM());
        double massKg = measured(section, "weight", Measure.WEIGHT, BallLimit.WEIGHT, usual().massKg());
        measured(section, "differential", Measure.LENGTH, BallLimit.DIFFERENTIAL, 0);
        String source = section.text("source");
        return section.build(
                before,
                () -> new Coverstock(
                        id,
                        friction,
                        roughnessUm,
                        overlap,
                        absorptionS,
                        source,
                        new BallCore(radiusM, gyrationM, massKg)));
    }

    private static BallCore usual() {
        return BallCore.DEFAULT;
    }

    /** By its roughness, or by the abrasive that made it. */
    private double roughnessUm(Section section) {
        Optional<Value> grit = section.get("grit");
        if (grit.isEmpty()) {
            double roughnessUm = section.quantity("roughness", Measure.ROUGHNESS, Range.between(0.05, 4));
            section.get("roughness").ifPresent(value -> warnOfRoughness(value, roughnessUm));
            return roughnessUm;
        }
        section.get("roughness")
                .ifPresent(both -> both.say(
                        NoticeCode.CONFLICTING_KEYS,
                        both.plain(),
                        both.path() + " is `" + both.plain() + "` beside a grit of `"
                                + grit.get().plain() + "`; a finish must be given by one of the two. Remove one."));
        OptionalDouble number = grit.get().quantity(Measure.NUMBER, Range.between(GRITS.coarsest(), GRITS.finest()));
        if (number.isEmpty()) {
            return Double.NaN;
        }
        double roughnessUm = GRITS.roughnessUm(number.getAsDouble());
        warnOfRoughness(grit.get(), roughnessUm);
        assumptions.add(
                section.pathOf("roughness"),
                Range.round(roughnessUm) + " um by grit " + grit.get().plain(),
                Grits.SOURCE);
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

    private static double absorptionS(Section section) {
        Optional<Value> value = section.require("absorption");
        if (value.isPresent() && value.get().written().equals("none")) {
            return NEVER_S;
        }
        OptionalDouble timeMs = value.map(time -> time.quantity(Measure.TIME, Range.above(0, NEVER_S * 1000)))
                .orElse(OptionalDouble.empty());
        if (timeMs.isEmpty()) {
            return Double.NaN;
        }
        checkAbsorption(value.get(), timeMs.getAsDouble() / 1000);
        return timeMs.getAsDouble() / 1000;
    }

    private static void checkAbsorption(Value value, double timeS) {
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

    /** A measure that the rules limit, if the scenario states it; NaN, with a notice, if it is wrong. */
    private static double measured(Section section, String key, Measure measure, BallLimit limit, double otherwise) {
        Optional<Value> value = section.get(key);
        if (value.isEmpty()) {
            return otherwise;
        }
        double least = limit == BallLimit.WEIGHT ? BallCore.MIN_MASS_KG : 0;
        OptionalDouble base = value.get().quantity(measure, Range.between(least, 100));
        if (base.isPresent() && !limit.allows(base.getAsDouble())) {
            value.get()
                    .refuse(
                            NoticeCode.BALL_BEYOND_RULES,
                            "; it must be " + limit.words() + " (" + limit.source() + ")."
                                    + value.get().advice());
        }
        return base.orElse(Double.NaN);
    }
}
