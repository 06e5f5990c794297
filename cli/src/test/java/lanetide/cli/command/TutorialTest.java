package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Works through the tutorial as a reader would, and compares what is printed. */
class TutorialTest {
    private static final String PROMPT = "$ lanetide ";
    private static final String ELLIPSIS = "...";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern FILE = Pattern.compile("(?:scenarios/.*|page\\.html|print)");

    @TempDir
    Path folder;

    @Test
    void everyCommandOfTheTutorialPrintsWhatIsShown() throws IOException {
        copyScenarios();
        String tutorial = Files.readString(Scenarios.FOLDER.resolve("README.md"));
        Matcher blocks = Pattern.compile("```text\n(.*?)```", Pattern.DOTALL).matcher(tutorial);
        int commands = 0;
        while (blocks.find()) {
            List<String> lines = blocks.group(1).lines().toList();
            run(lines.get(0), lines.subList(1, lines.size()));
            commands++;
        }
        assertThat(commands).isGreaterThanOrEqualTo(8);
        assertThat(folder.resolve("page.html")).isNotEmptyFile();
        assertThat(folder.resolve("print/calendar.ics")).isNotEmptyFile();
    }

    @Test
    @Tag("slow")
    void everyLongCommandOfTheSpreadsheetPrintsWhatIsShown() throws IOException {
        copyScenarios();

        assertThat(runsLongCommands(section("From a spreadsheet"))).isOne();
        assertThat(Jsoup.parse(Files.readString(folder.resolve("print/cards.html")))
                        .select(".card"))
                .hasSize(352)
                .allSatisfy(card -> assertThat(card.text()).contains("(drawn)", "was not in the entries"));
    }

    @Test
    @Tag("slow")
    void everyLongCommandOfOnesOwnLanesPrintsWhatIsShown() throws IOException {
        copyScenarios();
        String section = section("Your own lanes");
        Matcher centre =
                Pattern.compile("```yaml\n(centre:.*?)```", Pattern.DOTALL).matcher(section);
        assertThat(centre.find()).isTrue();
        String shown = centre.group(1);
        String without = shown.replaceFirst("  fitted: .*\n", "");
        String evening = Files.readString(folder.resolve("scenarios/measured-night.yaml"));
        assertThat(evening).contains(without);
        Files.writeString(
                folder.resolve("scenarios/next-week.yaml"),
                evening.replace(without, shown).replaceAll("(?m)^measured: .*\n", ""));

        assertThat(runsLongCommands(section)).isEqualTo(3);
    }

    private static String section(String title) throws IOException {
        String tutorial = Files.readString(Scenarios.FOLDER.resolve("README.md"));
        int from = tutorial.indexOf("## " + title);
        return tutorial.substring(from, tutorial.indexOf("\n## ", from));
    }

    private int runsLongCommands(String section) {
        Matcher blocks = Pattern.compile("```console\n(.*?)```", Pattern.DOTALL).matcher(section);
        int commands = 0;
        while (blocks.find()) {
            List<String> lines = blocks.group(1).lines().toList();
            run(lines.get(0), lines.subList(1, lines.size()));
            commands++;
        }
        return commands;
    }

    @Test
    void everyTableShownIsTheBeginningOfOne() throws IOException {
        Matcher shown = Pattern.compile("```csv\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Scenarios.FOLDER.resolve("README.md")));

        for (String table : List.of("club-final.csv", "two-day-open.csv", "measured-tapes.csv")) {
            assertThat(shown.find()).isTrue();
            assertThat(Files.readString(Scenarios.FOLDER.resolve(table))).startsWith(shown.group(1));
        }
        assertThat(shown.find()).isFalse();
    }

    private void run(String command, List<String> shown) {
        assertThat(command).startsWith(PROMPT);
        Program.Outcome outcome = Program.run(words(command.substring(PROMPT.length())));

        assertThat(outcome.exitCode()).as(command + "\n" + outcome.err()).isZero();
        String printed = outcome.out().replace(folder + "/", "");
        if (!shown.contains(ELLIPSIS)) {
            assertThat(printed.lines().toList()).as(command).isEqualTo(shown);
            return;
        }
        int from = 0;
        for (String line : shown) {
            if (!line.isBlank() && !line.equals(ELLIPSIS)) {
                int at = printed.indexOf(line + "\n", from);
                assertThat(at)
                        .as("%s prints, after the lines before: %s", command, line)
                        .isNotNegative();
                from = at + line.length();
            }
        }
    }

    /** The words of a command, its files in this test's folder. */
    private Object[] words(String command) {
        List<Object> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            String plain = word.group(1) == null ? word.group(2) : word.group(1);
            words.add(FILE.matcher(plain).matches() ? folder.resolve(plain) : plain);
        }
        return words.toArray();
    }

    private void copyScenarios() throws IOException {
        Files.createDirectory(folder.resolve("scenarios"));
        try (Stream<Path> files = Files.list(Scenarios.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve("scenarios").resolve(file.getFileName()));
            }
        }
    }
}
