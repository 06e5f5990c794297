package lanetide.cli.command;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import lanetide.cli.options.Candidates;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.NamedOption;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.Weights;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.rotate.LateChanges;
import lanetide.cli.rotate.RotateCsv;
import lanetide.cli.rotate.RotateJson;
import lanetide.cli.rotate.RotateText;
import lanetide.cli.rotate.RotationAnswer;
import lanetide.cli.rotate.RotationMap;
import lanetide.cli.rotate.RotationMapWriter;
import lanetide.cli.rotate.RotationNote;
import lanetide.cli.rotate.SearchOrder;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Sessions;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RotationSearch;
import lanetide.squads.rotation.design.SearchObjective;
import lanetide.squads.rotation.design.Searched;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks a rotation and compares it with others. */
@Command(
        name = "rotate",
        header = "Checks the rotation and compares it with others",
        description = {
            "Tells who bowls on which pair, what repeats, who follows whom, how far groups walk, what is impossible, and how other designs stand beside it. With --without, --no-shows or --late it tells the least change that answers what went wrong on the day.",
            "",
            HelpText.WHERE
        },
        exitCodeList = {HelpText.DONE, HelpText.WRONG_SCENARIO, HelpText.FILE_TROUBLE, HelpText.INTERRUPTED},
        footer = {
            "  lanetide rotate scenarios/championship.yaml",
            "  lanetide rotate scenarios/championship.yaml --design apart",
            "  lanetide rotate scenarios/club-final.yaml --search",
            "  lanetide rotate scenarios/busy-day.yaml --without 3-4",
            "  lanetide rotate scenarios/club-final.yaml --no-shows A=3 --late B=1h",
            "  lanetide rotate scenarios/club-final.yaml --format csv -o moves.csv",
            "  lanetide rotate scenarios/club-final.yaml --dot rotation.dot"
        })
public final class RotateCommand implements Callable<Integer> {
    private static final int MAX_GAMES_OR_PAIRS = 100;

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--design",
            paramLabel = "DESIGN",
            completionCandidates = Candidates.Designs.class,
            description =
                    "Another design in place of the scenario's: ${COMPLETION-CANDIDATES} (default: the scenario's).")
    private String design;

    @Option(
            names = "--move",
            paramLabel = "N",
            description =
                    "With --design right, left, turning or apart: pairs at each move, from 1 to 100 (default: 1; turning 2).")
    private Integer move;

    @Option(
            names = "--every",
            paramLabel = "N",
            description =
                    "With --design right or left: games on a pair before the next move, from 1 to 100 (default: 1).")
    private Integer every;

    @Option(
            names = "--search",
            description = "Also design a rotation by search, from the best of the others; takes some seconds.")
    private boolean search;

    @Option(
            names = "--weights",
            paramLabel = "WHAT=N",
            split = ",",
            description =
                    "What rotations are ranked and searched by, each from 0 to 1000000: repeats, carry-over, wear, walking (default: repeats=10,carry-over=1,wear=1,walking=0.25).")
    private Map<String, Double> weights = Map.of();

    @Mixin
    private ChangeOptions changeOptions;

    @Option(
            names = "--graphml",
            paramLabel = "FILE",
            description = "Also write the rotation as a graph to FILE, in GraphML (default: none is written).")
    private Path graphMl;

    @Option(
            names = "--dot",
            paramLabel = "FILE",
            description = "Also write the rotation as a drawing to FILE, in DOT (default: none is written).")
    private Path dot;

    @Override
    public Integer call() {
        SearchObjective objective = Weights.objective(weights);
        Optional<AnswerFile> graphMlFile = options.file("--graphml", graphMl);
        Optional<AnswerFile> dotFile = options.file("--dot", dot);
        return options.answer((reading, scenario) -> {
            Planned planned = planned(scenario, objective);
            Optional<LateChanges> changes =
                    changeOptions.apply(planned.event(), planned.note(), scenario.seed(), scenario.waiting());
            Event event = changes.map(late -> late.change().event()).orElse(planned.event());
            RotationNote note = changes.map(LateChanges::note).orElse(planned.note());
            RotationAnswer rotation = rotation(event, note, objective, scenario.seed());
            String answer = render(reading, scenario, rotation, changes);
            graphMlFile.ifPresent(file -> file.write(RotationMapWriter.graphMl(map(event))));
            dotFile.ifPresent(file -> file.write(RotationMapWriter.dot(map(event))));
            return answer;
        });
    }

    private RotationAnswer rotation(Event event, RotationNote note, SearchObjective objective, long seed) {
        if (!search) {
            return RotationAnswer.of(event, note, objective, Optional.empty());
        }
        int rounds = RotationAnswer.searches(event) * RotationSearch.ROUNDS;
        return options.progressing(
                "rounds of search",
                rounds,
                told -> RotationAnswer.of(event, note, objective, Optional.of(new SearchOrder(seed, told))));
    }

    /** An event and where its rotations come from. */
    private record Planned(Event event, RotationNote note) {}

    private Planned planned(Scenario scenario, SearchObjective objective) {
        if (design == null) {
            refuseWithoutDesign("--move", move);
            refuseWithoutDesign("--every", every);
            return new Planned(scenario.event(), RotationNote.of(scenario.designs(), scenario.event()));
        }
        try {
            RotationDesign other = other(scenario.seed(), objective);
            Event event = RotationAnswer.redesigned(scenario.event(), other);
            return new Planned(
                    event, RotationNote.of(Collections.nCopies(event.squads().size(), other), event));
        } catch (ImpossibleRotationException e) {
            throw CommandFailure.wrongUse("This event cannot have the design `" + design + "`. " + e.getMessage());
        }
    }

    private RotationDesign other(long seed, SearchObjective objective) {
        Map<String, String> known = RotationDesigns.byRule();
        String name = NamedOption.of("--design", design, known);
        int usual = RotationDesigns.usualMove(name);
        if (usual == 0) {
            refuseFor(name, "--move", move);
        }
        if (!name.equals("right") && !name.equals("left")) {
            refuseFor(name, "--every", every);
        }
        if (name.equals("searched")) {
            return new Searched(objective, seed, OptionalInt.empty());
        }
        return RotationDesigns.of(name, whole("--move", move, Math.max(1, usual)), whole("--every", every, 1), seed);
    }

    private static int whole(String option, Integer value, int otherwise) {
        if (value == null) {
            return otherwise;
        }
        OptionCheck.requireRange(option, value, 1, MAX_GAMES_OR_PAIRS);
        return value;
    }

    private static void refuseFor(String name, String option, Integer value) {
        if (value != null) {
            throw CommandFailure.wrongUse(option + " is " + value + ", but means nothing in the design " + name
                    + ". Leave it out or choose another design.");
        }
    }

    private static void refuseWithoutDesign(String option, Integer value) {
        OptionCheck.refuseWithout("--design", option, value, "Add it, such as `--design right`.");
    }

    private static RotationMap map(Event event) {
        List<List<String>> groups = event.squads().stream()
                .map(squad -> squad.groups().stream().map(Group::id).toList())
                .toList();
        List<String> pairs = event.centre().pairs().stream().map(LanePair::id).toList();
        return RotationMap.of(Sessions.of(event), groups, pairs);
    }

    private String render(Reading reading, Scenario scenario, RotationAnswer answer, Optional<LateChanges> changes) {
        return switch (options.format()) {
            case TEXT -> RotateText.write(scenario, answer, changes);
            case JSON -> RotateJson.write(reading, answer, changes);
            case CSV -> RotateCsv.write(answer);
        };
    }
}
