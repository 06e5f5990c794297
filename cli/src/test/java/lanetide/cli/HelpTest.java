package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.output.ExitCode;
import lanetide.cli.report.Cautions;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Holds the help of every command to what the command does. */
class HelpTest {
    private static final int COLUMNS = 80;
    private static final Path SCENARIO = Scenarios.FOLDER.resolve("club-final.yaml");
    private static final Pattern RANGE = Pattern.compile("from (\\d+) to (\\d+)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** Options that mean something only beside others. */
    private static final Map<String, List<String>> BESIDE = Map.of(
            "--move", List.of("--design", "right"),
            "--every", List.of("--design", "right"));

    @ParameterizedTest
    @MethodSource("commands")
    void itFitsEightyColumnsAndHasAllItsParts(CommandSpec command) {
        String help = help(command);

        assertThat(help.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(COLUMNS));
        assertThat(help)
                .containsSubsequence(
                        command.usageMessage().header()[0] + "\n\nUsage: " + command.qualifiedName(),
                        "\nOptions:\n",
                        "\nExit codes:\n",
                        "\nExamples:\n",
                        "\nCautions:\n")
                .doesNotContain("@|", "%n", "${");
        assertThat(unwrapped(help)).contains("standard output").contains(Cautions.ALL);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyExampleStandsOnALineOfItsOwn(CommandSpec command) {
        assertThat(Commands.examples(command)).hasSizeGreaterThanOrEqualTo(2);
        assertThat(help(command).lines().map(String::strip)).containsAll(Commands.examples(command));
    }

    /** What they do is seen by the slow tests. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsUnderstood(String example) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(example.replaceAll(".*<\\(lanetide|^lanetide|>.*|\\)$", ""));
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }

        CommandLine.ParseResult parsed = Lanetide.commands(Optional.empty()).parseArgs(words.toArray(String[]::new));

        assertThat(parsed.errors()).isEmpty();
        assertThat(words.stream().filter(each -> each.startsWith("scenarios/")))
                .allSatisfy(file -> assertThat(Path.of("..").resolve(file)).exists());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyValueIsRequiredOrHasADefaultThatIsTold(CommandSpec command) {
        for (OptionSpec option : command.options()) {
            String told = told(option);
            assertThat(told).as(option.longestName()).isNotEmpty().endsWith(".");
            if (option.arity().max() > 0) {
                assertThat(told).as(option.longestName()).containsPattern("\\(default: |Required\\.");
            }
            if (option.defaultValue() != null && option.arity().max() > 0) {
                assertThat(told).as(option.longestName()).contains("default: " + option.defaultValue());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyExitCodeIsOneThatTheProgramHas(CommandSpec command) throws IllegalAccessException {
        List<String> known = new ArrayList<>();
        for (Field code : ExitCode.class.getFields()) {
            known.add(String.valueOf(code.getInt(null)));
        }
        assertThat(command.usageMessage().exitCodeList().keySet())
                .isSubsetOf(known)
                .contains(String.valueOf(ExitCode.DONE), String.valueOf(ExitCode.CANNOT_RUN));
    }

    /** One below and one above the range that is told is refused, and not for another reason. */
    @ParameterizedTest
    @MethodSource("ranges")
    void theRangeThatIsToldIsTheOneThatHolds(String command, String option, long outside) {
        List<Object> words = new ArrayList<>(List.of(command, SCENARIO, option + "=" + outside));
        words.addAll(BESIDE.getOrDefault(option, List.of()));
        words.addAll(command.equals("sheets") ? List.of("--into", "nowhere") : List.of());
        words.addAll(command.equals("compare") ? List.of(SCENARIO) : List.of());
        words.addAll(command.equals("preview") ? List.of("--bowler", "Amber") : List.of());

        Program.Outcome outcome = Program.run(words.toArray());

        assertThat(outcome.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains(option + " is " + outside);
    }

    static List<CommandSpec> commands() {
        return Commands.all();
    }

    static Stream<String> examples() {
        return Commands.all().stream().flatMap(command -> Commands.examples(command).stream());
    }

    static List<Object[]> ranges() {
        List<Object[]> ranges = new ArrayList<>();
        for (CommandSpec command : Commands.all()) {
            for (OptionSpec option : command.options()) {
                Matcher range = RANGE.matcher(told(option));
                if (range.find()
                        && option.paramLabel().equals("N")
                        && !command.name().equals("new")) {
                    String name = option.longestName();
                    ranges.add(new Object[] {command.name(), name, Long.parseLong(range.group(2)) + 1});
                    ranges.add(new Object[] {command.name(), name, Long.parseLong(range.group(1)) - 1});
                }
            }
        }
        assertThat(ranges).hasSizeGreaterThan(50);
        return ranges;
    }

    private static String told(OptionSpec option) {
        return String.join(" ", option.description());
    }

    private static String help(CommandSpec command) {
        Object[] words = command.parent() == null ? new Object[] {"--help"} : new Object[] {command.name(), "--help"};
        Program.Outcome outcome = Program.run(words);
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        return outcome.out();
    }

    private static String unwrapped(String help) {
        return Arrays.stream(help.split("\\s+", -1)).reduce("", (text, word) -> text + " " + word);
    }
}
