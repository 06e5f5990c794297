package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Blocks;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.simulate.ShotCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the documents to the code. */
class DocumentsTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+");
    private static final Pattern KEY = Pattern.compile("(?:^|[{,]|- )\\s*([A-Za-z]+):");

    @Test
    void theReadmeHasATableOfEveryKeyTheReaderKnows() throws IOException {
        assertThat(Files.readString(README))
                .as("put this table into %s:%n%n%s", README, table())
                .contains(table());
    }

    @Test
    void theReadmeHasATableOfEveryColumnOfTheShotLog() throws IOException {
        String table = ShotCsv.COLUMNS.stream()
                .map(column -> String.format(
                        Locale.ROOT, "| `%s` | %s | %s |\n", column.name(), column.unit(), column.meaning()))
                .collect(Collectors.joining());

        assertThat(Files.readString(README))
                .as("put this table into %s:%n%n%s", README, table)
                .contains("| column | unit | meaning |\n|---|---|---|\n" + table);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void theOpeningCommentsOfAScenarioNameEveryKeyItUses(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String comments = lines.stream().takeWhile(line -> line.startsWith("#")).collect(Collectors.joining("\n"));
        Set<String> named = new TreeSet<>();
        WORD.matcher(comments).results().forEach(word -> named.add(word.group()));

        Set<String> used = new TreeSet<>();
        for (String line : lines) {
            Matcher key = KEY.matcher(line.startsWith("#") ? "" : line);
            while (key.find()) {
                used.add(key.group(1));
            }
        }

        assertThat(used).isNotEmpty();
        assertThat(named).as("words of the opening comments of %s", file).containsAll(used);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyScenarioIsDescribedInItsFolder(Path file) throws IOException {
        assertThat(Files.readString(Scenarios.FOLDER.resolve("README.md")))
                .contains(file.getFileName().toString());
    }

    static List<Path> shipped() {
        return Scenarios.shipped();
    }

    private static String table() {
        List<String> rows = new ArrayList<>();
        rows.add("| key | value | limits | meaning | typical | if left out |");
        rows.add("|---|---|---|---|---|---|");
        for (Block block : Blocks.ALL) {
            for (Key<?> key : block.keys()) {
                rows.add(String.format(
                        Locale.ROOT,
                        "| `%s` | %s | %s | %s | %s | %s |",
                        block.path(key),
                        key.form().inWords(),
                        key.form().limits(),
                        key.meaning(),
                        key.typical(),
                        key.otherwise()));
            }
        }
        return String.join("\n", rows) + "\n";
    }
}
