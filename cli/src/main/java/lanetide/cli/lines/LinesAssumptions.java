package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.pocket.PinCarry;

/** What the answer of {@code lines} rests on. */
final class LinesAssumptions {
    private LinesAssumptions() {}

    static List<Assumption> of(Scenario scenario, List<StartLine> lines) {
        List<Assumption> all = new ArrayList<>();
        scenario.assumptions().stream()
                .filter(taken -> taken.name().startsWith("pattern."))
                .forEach(all::add);
        all.addAll(scenario.ofEntries());
        List<PlayingStyle> styles = distinct(lines, line -> line.kind().style());
        all.addAll(Assumptions.of(
                distinct(lines, StartLine::surface),
                styles,
                distinct(lines, line -> line.kind().level()),
                distinct(lines, line -> line.kind().cover())));
        styles.forEach(style -> all.add(new Assumption(
                "natural launch angle of " + style.id(),
                Figures.plain(StrictMath.toDegrees(style.naturalLaunchRad()), 2) + " deg",
                style.source())));
        all.add(new Assumption(
                "where natural lines are known from",
                "the fresh pattern with " + Figures.plain(HomeLines.KNOWN_ML, 0) + " mL on "
                        + Catalogue.REFERENCE_SURFACE + ", with a " + Catalogue.REFERENCE_COVER
                        + " ball",
                "assumption"));
        if (scenario.event().centre().topographies().values().stream().anyMatch(shape -> !shape.isFlat())) {
            all.add(new Assumption(
                    "shape of the lanes",
                    "level: what a lane does otherwise shows only when it is played",
                    "assumption"));
        }
        all.add(new Assumption(
                "half width of the pocket",
                Figures.plain(PinCarry.POCKET_HALF_WIDTH_BOARDS, 2) + " boards either side of board "
                        + Figures.plain(PinCarry.POCKET_BOARD, 1),
                "place published, width assumption"));
        all.add(new Assumption(
                "another ball is advised from",
                Figures.plain(100 * LineAdvisor.MIN_GAIN, 1) + " more strikes in 100 first balls",
                "assumption"));
        return all;
    }

    private static <T> List<T> distinct(List<StartLine> lines, Function<StartLine, T> of) {
        return lines.stream().map(of).distinct().toList();
    }
}
