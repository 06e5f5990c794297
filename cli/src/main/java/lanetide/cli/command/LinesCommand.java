package lanetide.cli.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import lanetide.cli.lines.FreshLines;
import lanetide.cli.lines.LinesCsv;
import lanetide.cli.lines.LinesJson;
import lanetide.cli.lines.LinesText;
import lanetide.cli.lines.Question;
import lanetide.cli.lines.StartLine;
import lanetide.cli.options.Candidates;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.Format;
import lanetide.cli.options.NamedOption;
import lanetide.cli.options.PatternOption;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.Names;
import lanetide.oilflow.catalogue.Grits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells where each style starts on the fresh pattern. */
@Command(
        name = "lines",
        header = "Tells where each style starts on the fresh pattern",
        description = {
            "Tells for each style on each surface where to lay the ball down, where to cross the arrows, the window of exit boards, the room to miss, the line on the other track where there is one, and whether another ball is better. Several covers or finishes stand side by side. "
                    + HelpText.BOARDS,
            "",
            HelpText.WHERE
        },
        exitCodeList = {HelpText.DONE, HelpText.WRONG_SCENARIO, HelpText.FILE_TROUBLE},
        footer = {
            "  lanetide lines scenarios/club-night.yaml",
            "  lanetide lines scenarios/one-pair.yaml --style power --surface wood",
            "  lanetide lines scenarios/one-pair.yaml --level elite --cover urethane",
            "  lanetide lines scenarios/one-pair.yaml --grit 500,3000",
            "  lanetide lines scenarios/club-night.yaml --format json -o lines.json"
        })
public final class LinesCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions options;

    @Mixin
    private PatternOption pattern;

    @Option(
            names = "--style",
            paramLabel = "STYLE",
            split = ",",
            completionCandidates = Candidates.Styles.class,
            description =
                    "Playing styles to look at, with commas between: ${COMPLETION-CANDIDATES}, or the scenario's own (default: those of the scenario).")
    private List<String> styles = List.of();

    @Option(
            names = "--hand",
            paramLabel = "HAND",
            split = ",",
            completionCandidates = Candidates.Hands.class,
            description =
                    "${COMPLETION-CANDIDATES}, or both with a comma between (default: those of the scenario's bowlers).")
    private List<String> hands = List.of();

    @Option(
            names = "--cover",
            paramLabel = "COVER",
            split = ",",
            completionCandidates = Candidates.Covers.class,
            description =
                    "Covers of everybody's ball, side by side: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the commonest of each style).")
    private List<String> covers = List.of();

    @Option(
            names = "--grit",
            paramLabel = "N",
            split = ",",
            description =
                    "Grit numbers of abrasives with which the ball is sanded, side by side, each from 180 to 5000 (default: its own finish).")
    private List<Integer> grits = List.of();

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            completionCandidates = Candidates.Skills.class,
            description =
                    "Level of everybody: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the commonest of each style).")
    private String level;

    @Option(
            names = "--surface",
            paramLabel = "SURFACE",
            split = ",",
            completionCandidates = Candidates.Surfaces.class,
            description =
                    "Lane surfaces to look at: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the scenario's, then all others).")
    private List<String> surfaces = List.of();

    @Override
    public Integer call() {
        return options.answer(
                (reading, scenario) -> render(reading, pattern.chosen(scenario), question(scenario.names())));
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

    private String render(Reading reading, List<Scenario> chosen, Question question) {
        if (options.format() == Format.CSV) {
            PatternOption.only(chosen);
        }
        Map<Scenario, List<StartLine>> lines = new LinkedHashMap<>();
        chosen.forEach(each -> lines.put(each, FreshLines.of(each, question)));
        return switch (options.format()) {
            case TEXT ->
                chosen.stream()
                        .map(each -> LinesText.write(each, lines.get(each), options.metric()))
                        .collect(Collectors.joining("\n"));
            case JSON -> LinesJson.write(reading, lines);
            case CSV -> LinesCsv.write(lines.get(chosen.get(0)));
        };
    }
}
