package lanetide.cli.pattern;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;

/**
 * What an answer about a pattern rests on: the pattern, its surface, and the styles, cover and level it is looked at
 * with.
 */
final class PatternAssumptions {
    private PatternAssumptions() {}

    static List<Assumption> of(Scenario scenario) {
        Coverstock cover = scenario.names().covers().get(PatternFacts.COVER);
        Level level = Levels.shipped().get(PatternFacts.LEVEL);
        Stream<Assumption> stated = scenario.assumptions().stream()
                .filter(taken ->
                        taken.name().startsWith("pattern.") || taken.name().startsWith("surface "));
        Stream<Assumption> styles = scenario.names().styles().values().stream().map(PatternAssumptions::style);
        Stream<Assumption> others = Stream.of(
                new Assumption("cover " + cover.id(), "roughness " + cover.roughnessUm() + " um", cover.source()),
                new Assumption("level " + level.id(), "its scatter, for the windows", level.source()));
        return Stream.of(stated, styles, others).flatMap(all -> all).toList();
    }

    private static Assumption style(PlayingStyle style) {
        String angle = Figures.plain(StrictMath.toDegrees(style.naturalLaunchRad()), 1);
        return new Assumption("style " + style.id(), "natural launch angle " + angle + " degrees", style.source());
    }
}
