package lanetide.cli.command;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.function.BinaryOperator;
import lanetide.cli.report.CheckReport;
import lanetide.cli.report.Page;
import lanetide.cli.report.Starter;
import lanetide.cli.scenario.Notice;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a scenario to begin with, by options, or by asking on a terminal. */
@Command(
        name = "new",
        header = "Writes a scenario to begin with, every key explained",
        description = {
            "What no option says is asked for on a terminal, where an empty line takes the value in brackets and end of input (Ctrl-D) stops without writing anything. Elsewhere, and with --yes, that value is taken.",
            "",
            "The scenario goes to standard output, or to FILE with --out. Questions and failures go to standard error."
        },
        exitCodeList = {
            HelpText.DONE,
            "2:wrong use, answers that make no scenario, or end of input before the last one",
            HelpText.FILE_TROUBLE
        },
        footer = {
            "  lanetide new -o my-event.yaml",
            "  lanetide new --lanes \"1 to 12\" --games 6 --yes -o cup.yaml",
            "  lanetide new --entries entries.csv --starts 09:00,14:00 -o final.yaml"
        })
public final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    @Option(names = "--name", paramLabel = "TEXT", description = "What the event is called (default: My event).")
    private String name;

    @Option(
            names = "--lanes",
            paramLabel = "RANGE",
            description = "Lanes in use, paired from the left, such as \"1 to 8\" (default: 1 to 8).")
    private String lanes;

    @Option(
            names = "--surface",
            paramLabel = "NAME",
            completionCandidates = Candidates.Surfaces.class,
            description = "What the lanes are made of: ${COMPLETION-CANDIDATES} (default: hard-synthetic).")
    private String surface;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Where the oil ends, in ft or m, such as \"40 ft\" (default: 40 ft).")
    private String length;

    @Option(
            names = "--volume",
            paramLabel = "VOLUME",
            description = "Oil on one lane in mL, such as \"24 mL\" (default: 24 mL).")
    private String volume;

    @Option(
            names = "--ratio",
            paramLabel = "RATIO",
            description = "Oil on the middle five boards over that on boards 3 to 7, such as 3:1 (default: 5:1).")
    private String ratio;

    @Option(
            names = "--games",
            paramLabel = "N",
            description = "Games a bowler plays in one squad, from 1 to 100 (default: 4).")
    private String games;

    @Option(
            names = "--practice",
            paramLabel = "TIME",
            description = "Practice before the first game, in min, such as \"10 min\" (default: 10 min).")
    private String practice;

    @Option(
            names = "--rotation",
            paramLabel = "NAME",
            completionCandidates = Candidates.Designs.class,
            description = "How groups move over the pairs: ${COMPLETION-CANDIDATES} (default: stay).")
    private String rotation;

    @Option(
            names = "--starts",
            paramLabel = "TIMES",
            description =
                    "When the practice of each squad starts, with commas between, such as 09:00,14:00; at most 8 (default: 19:30).")
    private String starts;

    @Option(
            names = "--oil",
            paramLabel = "NAME",
            completionCandidates = Candidates.Oilings.class,
            description =
                    "Oil before each later squad: fresh (cleaned, then oiled), over (oiled over what is left) or none (default: fresh).")
    private String oil;

    @Option(
            names = "--bowlers",
            paramLabel = "N",
            description = "Bowlers in each squad, spread evenly over the pairs; without --entries (default: 24).")
    private String bowlers;

    @Option(
            names = "--entries",
            paramLabel = "FILE",
            description =
                    "A CSV table of the bowlers, in the folder of the scenario (default: none; bowlers are drawn by shares).")
    private String entries;

    @Option(names = "--yes", description = "Ask nothing.")
    private boolean yes;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description =
                    "Write the scenario to FILE, in one step; an older file there is never replaced (default: standard output).")
    private Path out;

    @Override
    public Integer call() {
        Optional<AnswerFile> file = Optional.ofNullable(out).map(NewCommand::fresh);
        String scenario = Starter.write(answers(asking()));
        String where = out == null ? "scenario.yaml" : out.toString();
        Reading reading =
                new ScenarioReader(OptionalLong.empty()).read(where, scenario.getBytes(StandardCharsets.UTF_8));
        if (reading.scenario().isEmpty()) {
            tell(where, reading);
            return ExitCode.CANNOT_RUN;
        }
        PrintWriter writer = command.commandLine().getOut();
        if (file.isPresent()) {
            file.get().write(scenario);
            writer.println("Written to " + out + ". Look it over, then: lanetide check " + out);
        } else {
            writer.print(scenario);
        }
        writer.flush();
        return ExitCode.DONE;
    }

    private static AnswerFile fresh(Path path) {
        if (Files.exists(path)) {
            throw CommandFailure.wrongUse("There is a file " + path + " already; name another one.");
        }
        return AnswerFile.at(path);
    }

    /** Asks on a terminal, with the value that an empty answer takes. */
    private BinaryOperator<String> asking() {
        Console console = yes || !Progress.isTerminal() ? null : System.console();
        return (question, otherwise) -> {
            String answer = console == null ? "" : console.readLine("%s [%s]: ", question, otherwise);
            return answer == null || answer.isBlank() ? otherwise : answer.strip();
        };
    }

    private Map<String, String> answers(BinaryOperator<String> ask) {
        Map<String, String> answers = new LinkedHashMap<>();
        put(answers, ask, "name", name, "What is the event called?", "My event");
        put(answers, ask, "lanes", lanes, "Which lanes are in use?", "1 to 8");
        put(answers, ask, "surface", surface, "What are the lanes made of?", "hard-synthetic");
        put(answers, ask, "length", length, "Where does the oil end?", "40 ft");
        put(answers, ask, "volume", volume, "How much oil is on one lane?", "24 mL");
        put(answers, ask, "ratio", ratio, "How much more is on the middle boards?", "5:1");
        put(answers, ask, "starts", starts, "When do the squads start (times with commas between)?", "19:30");
        put(answers, ask, "oil", oil, "What is done before later squads (fresh, over, none)?", "fresh");
        put(answers, ask, "games", games, "How many games does a squad play?", "4");
        put(answers, ask, "practice", practice, "How long is practice?", "10 min");
        put(answers, ask, "rotation", rotation, "How do groups move (stay, right)?", "stay");
        put(answers, ask, "entries", entries, "Which CSV table lists the bowlers (empty for none)?", "");
        put(answers, ask, "bowlers", bowlers, "How many bowlers are in a squad?", "24");
        if (answers.get("starts").split(",", -1).length > Starter.MOST_SQUADS) {
            throw CommandFailure.wrongUse("--starts has more than " + Starter.MOST_SQUADS
                    + " times; add further squads to the file by hand.");
        }
        return answers;
    }

    private static void put(
            Map<String, String> answers,
            BinaryOperator<String> ask,
            String key,
            String given,
            String question,
            String otherwise) {
        answers.put(key, given == null ? ask.apply(question, otherwise) : given);
    }

    private void tell(String where, Reading reading) {
        List<Notice> errors = reading.notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .toList();
        Page page = new Page().line("These answers make no scenario; nothing was written.");
        CheckReport.notices(page, where, errors);
        command.commandLine().getErr().print(page.text());
        command.commandLine().getErr().flush();
    }
}
