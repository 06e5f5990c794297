package lanetide.cli.scenario.reader;

import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.BallLimit;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.lane.LaneSurface;

/** Holds the friction of a scenario's own covers, on the lanes they are played on, to the governing body's limit. */
record FrictionCheck(LaneSurface surface) {
    /** The measured friction of a ball may stray a tenth beyond its limit; more is no bowling ball (assumption). */
    private static final double MAX_FRICTION = 0.35;

    static void check(Section scenario, LaneSurface surface, Names names) {
        FrictionCheck check = new FrictionCheck(surface);
        scenario.value(EventKeys.COVERS)
                .ifPresent(covers -> names.covers()
                        .forEach((id, cover) -> covers.child(id)
                                .flatMap(own -> own.child(OwnKeys.FRICTION_FACTOR))
                                .ifPresent(factor -> check.check(factor, cover))));
        scenario.value(EventKeys.SURFACES)
                .flatMap(surfaces -> surfaces.child(surface.id()))
                .flatMap(own -> own.child(OwnKeys.DRY_FRICTION))
                .ifPresent(friction -> check.check(friction, surface.dryFriction(), "a medium cover"));
    }

    private void check(Value factor, Coverstock cover) {
        check(factor, surface.dryFriction() * cover.frictionFactor(), "this cover");
    }

    private void check(Value value, double friction, String what) {
        BallLimit limit = BallLimit.FRICTION;
        String problem = ", which makes the friction of " + what + " on dry " + surface.id() + " "
                + Range.round(friction) + "; the rules want " + limit.words() + " (" + limit.source() + ")";
        if (friction > MAX_FRICTION) {
            value.refuse(
                    NoticeCode.BALL_BEYOND_RULES,
                    problem + ", and more than " + MAX_FRICTION + " is refused." + value.advice() + " Lower it.");
        } else if (!limit.allows(friction)) {
            value.refuse(NoticeCode.BEYOND_PUBLISHED_LIMIT, problem + ". Check the measurement.");
        }
    }
}
