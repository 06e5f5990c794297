package lanetide.cli.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The README counts what {@code lines} tells now; a row that is open stays open there and fails nothing. After a change
 * of the model, write the column anew with {@code mvn -pl cli -am test -Dtest=CoachGridTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dlanetide.writeReadme=true}, and the same with {@code -Pslow}, and read what
 * changed before committing it. The column before it is kept as it stands.
 */
class CoachGridTest {
    private static final Path README = Path.of("README.md");
    private static final String HEAD = "| Answer | Before | Now | Aim | Standing |\n|---|---|---|---|---|\n";

    @Test
    void theReadmeCountsWhatTheSampleOfTheGridTells() throws IOException {
        CoachGrid grid = CoachGrid.sample();

        counts("sample", grid, grid.answers());
    }

    @Test
    @Tag("slow")
    void theReadmeCountsWhatTheGridTellsOnFreshLanes() throws IOException {
        CoachGrid grid = CoachGrid.full();
        List<GridAnswer> answers = grid.answers();

        counts("fresh", grid, answers);
        holds("without a line", MissingLines.markdown(grid, answers));
    }

    @Test
    @Tag("slow")
    void theReadmeCountsWhatTheGridTellsOnLanesWornByEightGames() throws IOException {
        CoachGrid grid = CoachGrid.worn(8);

        counts("8 games", grid, grid.answers());
    }

    @Test
    @Tag("slow")
    void theReadmeCountsWhatTheGridTellsOnLanesWornByTwentyFourGames() throws IOException {
        CoachGrid grid = CoachGrid.worn(24);

        counts("24 games", grid, grid.answers());
    }

    @Test
    void theReadmeClosesWithHowManyAimsAreMet() throws IOException {
        String text = Files.readString(README);
        String counts = "Aims met of all: "
                + Stream.of("fresh", "8 games", "24 games")
                        .map(table -> table + " " + met(between(table, text)))
                        .collect(Collectors.joining("; "))
                + ".\n";
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.replaceAll("(?m)^Aims met of all: .*\n", counts));
            return;
        }

        assertThat(text).contains(counts);
    }

    /** Reactive balls, and rows that count them with all others, and plastic and urethane balls apart. */
    private static String met(String table) {
        Map<Boolean, List<String>> smooth = table.lines()
                .filter(line -> line.endsWith("| met |") || line.endsWith("| **OPEN** |"))
                .collect(Collectors.partitioningBy(
                        line -> line.contains("plastic and urethane balls |") || line.contains("a urethane ball")));
        String apart = smooth.get(true).isEmpty() ? "" : ", plastic and urethane balls " + ofAll(smooth.get(true));
        return ofAll(smooth.get(false)) + apart;
    }

    private static String ofAll(List<String> rows) {
        return rows.stream().filter(row -> row.endsWith("| met |")).count() + " of " + rows.size();
    }

    private static void counts(String table, CoachGrid grid, List<GridAnswer> answers) throws IOException {
        String present = between(table, Files.readString(README));
        String rows = GridCounts.of(grid, answers).stream()
                .map(row -> row.markdown(before(row, present)))
                .collect(Collectors.joining());
        holds(table, HEAD + rows);
    }

    /** What the README says that the model gave before; of an answer that is new there, what it gives now. */
    private static String before(GridRow row, String table) {
        return table.lines()
                .filter(line -> line.startsWith("| " + row.answer() + " | "))
                .map(line -> line.split(" \\| ", -1)[1])
                .findFirst()
                .orElse(row.now());
    }

    private static void holds(String table, String computed) throws IOException {
        String text = Files.readString(README);
        String present = between(table, text);
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.replace(start(table) + present, start(table) + computed));
            return;
        }
        assertThat(present).isEqualTo(computed);
    }

    private static String between(String table, String text) {
        int from = text.indexOf(start(table)) + start(table).length();
        return text.substring(from, text.indexOf("<!-- end of table, " + table + " -->\n", from));
    }

    private static String start(String table) {
        return "<!-- table, " + table + ": computed by CoachGridTest -->\n";
    }
}
