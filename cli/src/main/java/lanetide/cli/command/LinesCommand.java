package lanetide.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanetide.cli.lines.FreshLines;
import lanetide.cli.lines.Question;
import lanetide.cli.lines.StartLine;
import lanetide.cli.report.LinesCsv;
import lanetide.cli.report.LinesJson;
import lanetide.cli.report.LinesText;
import lanetide.cli.scenario.Names;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.catalogue.Grits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells where each style starts on the fresh pattern. */
@Command(
        name = "lines",
        description =
                "Where each style starts on the fresh pattern, on each surface: laydown, arrows, exit window, room to"
                        + " miss, another ball. Several covers or finishes stand side by side.",
        footer = {
            "",
            "Examples:",
            "  lanetide lines scenarios/club-night.yaml",
            "  lanetide lines scenarios/club-night.yaml --style straight,power --surface wood",
            "  lanetide lines scenarios/one-pair.yaml --level league --cover urethane",
            "  lanetide lines scenarios/one-pair.yaml --style tweener --grit 500,3000 --surface hard-synthetic",
            "  lanetide lines scenarios/championship.yaml --format json -o lines.json",
            "",
            "Boards are counted from the bowler's own gutter.",
            "Exit codes: 0 done; 2 wrong use, or a scenario with errors; 3 a file cannot be read or written."
        })
public final class LinesCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Option(
            names = "--style",
            paramLabel = "NAME",
            split = ",",
            description = "Styles to look at (default: those of the scenario).")
    private List<String> styles = List.of();

    @Option(
            names = "--hand",
            paramLabel = "NAME",
            split = ",",
            description = "right or left (default: those on which the scenario's bowlers play).")
    private List<String> hands = List.of();

    @Option(
            names = "--cover",
            paramLabel = "NAME",
            split = ",",
            description = "Covers of everybody's ball, side by side (default: the commonest of each style).")
    private List<String> covers = List.of();

    @Option(
            names = "--grit",
            paramLabel = "N",
            split = ",",
            description = "Abrasives with which the ball is sanded, side by side (default: its own finish).")
    private List<Integer> grits = List.of();

    @Option(
            names = "--level",
            paramLabel = "NAME",
            description = "Level of everybody (default: the commonest of each style).")
    private String level;

    @Option(
            names = "--surface",
            paramLabel = "NAME",
            split = ",",
            description = "Surfaces to look at (default: the scenario's, then all others it knows).")
    private List<String> surfaces = List.of();

    @Override
    public Integer call() {
        return options.answer(
                (reading, scenario) -> render(reading, scenario, FreshLines.of(scenario, question(scenario.names()))));
    }

    private Question question(Names names) {
        return new Question(
                NamedOption.all("--surface", surfaces, names.surfaces()),
                NamedOption.all("--style", styles, names.styles()),
                NamedOption.all("--hand", hands, Names.HANDS),
                NamedOption.all("--cover", covers, names.covers()),
                knownGrits(),
                Optional.ofNullable(level).map(name -> NamedOption.of("--level", name, names.levels())));
    }

    /** The grits, each of a roughness that is known. */
    private List<Integer> knownGrits() {
        Grits known = Grits.shipped();
        for (int grit : grits) {
            if (grit < known.coarsest() || grit > known.finest()) {
                throw CommandFailure.wrongUse("--grit is " + grit + "; it must be a whole number from "
                        + (int) known.coarsest() + " to " + (int) known.finest() + ". Typical: 500 to 4000.");
            }
        }
        return grits;
    }

    private String render(Reading reading, Scenario scenario, List<StartLine> lines) {
        return switch (options.format()) {
            case TEXT -> LinesText.write(scenario, lines, options.metric());
            case JSON -> LinesJson.write(reading, lines);
            case CSV -> LinesCsv.write(lines);
        };
    }
}
