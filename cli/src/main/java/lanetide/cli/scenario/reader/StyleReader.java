package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.OwnKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.pattern.PatternReader;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.ToldLine;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Laws;

/**
 * Reads a style that a scenario defines: by its angles, for who has them measured, or by a line that the bowler tells.
 * A told line is taken to be one on the reference surface under the usual laws.
 */
record StyleReader(Names names, NamedFiles files) {
    private static final List<Key<Double>> MEASURED = List.of(OwnKeys.AXIS_ROTATION, OwnKeys.NATURAL_LAUNCH);

    Optional<PlayingStyle> read(String id, Section section) {
        if (section.has(OwnKeys.PLAYS)) {
            return section.block(OwnKeys.PLAYS).flatMap(plays -> told(id, section, plays));
        }
        MEASURED.forEach(section::require);
        return section.build(
                () -> style(id, section, section.get(OwnKeys.AXIS_ROTATION), section.get(OwnKeys.NATURAL_LAUNCH)));
    }

    private static PlayingStyle style(String id, Section section, double axisRotationRad, double launchRad) {
        return new PlayingStyle(
                id,
                new Release(
                        section.get(OwnKeys.SPEED),
                        section.get(OwnKeys.REV_RATE),
                        axisRotationRad,
                        section.get(OwnKeys.AXIS_TILT)),
                launchRad,
                section.get(OwnKeys.SOURCE));
    }

    private Optional<PlayingStyle> told(String id, Section section, Section plays) {
        MEASURED.forEach(key -> section.refuse(
                key,
                NoticeCode.CONFLICTING_KEYS,
                ", and `plays` tells it too. Keep the one you are surer of, and remove the other."));
        Optional<Coverstock> ball = plays.oneOf(OwnKeys.PLAYS_BALL, names.covers());
        Optional<OilPattern> pattern = plays.block(OwnKeys.PLAYS_PATTERN).flatMap(new PatternReader(files)::read);
        Optional<Line> line =
                plays.build(() -> Line.through(plays.get(OwnKeys.PLAYS_LAYDOWN), plays.get(OwnKeys.PLAYS_ARROWS)));
        if (ball.isEmpty()
                || pattern.isEmpty()
                || line.isEmpty()
                || section.notices().hasErrors()) {
            return Optional.empty();
        }
        OptionalDouble rotationRad = rotation(section, line.get(), ball.get(), pattern.get());
        if (rotationRad.isEmpty()) {
            plays.refuse(
                    OwnKeys.PLAYS_LAYDOWN,
                    NoticeCode.IMPOSSIBLE_COMBINATION,
                    ", and with this ball, speed and rev rate no axis rotation brings an average shot from there over the"
                            + " board at the arrows to the pocket on this pattern. If that is where the foot slides,"
                            + " the ball lies some six boards nearer the gutter; else check boards, ball and pattern, or"
                            + " give axisRotation and naturalLaunch.");
            return Optional.empty();
        }
        section.assume(
                OwnKeys.AXIS_ROTATION,
                OwnKeys.AXIS_ROTATION.form().write(rotationRad.getAsDouble()),
                "brings an average shot on the told line to the pocket on " + Catalogue.REFERENCE_SURFACE);
        return section.build(
                () -> style(id, section, rotationRad.getAsDouble(), line.get().launchRad()));
    }

    private OptionalDouble rotation(Section section, Line line, Coverstock ball, OilPattern pattern) {
        Physics physics = Physics.under(Laws.USUAL);
        LineFinder finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        ToldLine told = new ToldLine(line, physics.knownContact(ball), OilFilm.fresh(pattern, physics.grid()));
        return told.axisRotation(
                finder, section.get(OwnKeys.SPEED), section.get(OwnKeys.REV_RATE), section.get(OwnKeys.AXIS_TILT));
    }
}
