package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * A row of a table of checks in the README, held by the test that computes its figure. After a change that moves
 * figures, run the tests with {@code -Dlanetide.writeReadme=true}, which writes them there, and read what changed
 * before committing it.
 */
public final class ReadmeRow {
    private static final Path README = Path.of("README.md");
    private static final String CELLS = " \\| ";

    private ReadmeRow() {}

    /**
     * Holds that the README gives a figure for a check.
     *
     * @param check first cell of the row
     * @param figure what the test has computed
     */
    public static void says(String check, String figure) {
        try {
            List<String> lines = Files.readAllLines(README);
            String row = lines.stream()
                    .filter(line -> line.startsWith("| " + check + " | "))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no row of the README: " + check));
            String[] cells = row.split(CELLS);
            int last = cells.length - 1;
            cells[last] = cells[last].replaceAll(" \\|$", "");
            // Of five columns the last says whether the check is met.
            int place = Math.min(last, 3);
            if (Boolean.getBoolean("lanetide.writeReadme")) {
                cells[place] = figure;
                lines.set(lines.indexOf(row), String.join(" | ", Arrays.asList(cells)) + " |");
                Files.write(README, lines);
                return;
            }
            assertThat(cells[place]).as(check).isEqualTo(figure);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How far off the worst of some numbers is, given by how much each is off. */
    public static String offBy(double... errors) {
        double worst = DoubleStream.of(errors).map(Math::abs).max().orElseThrow();
        return worst == 0 ? "exact" : String.format(Locale.ROOT, "off by %.0e", worst);
    }

    /** First cells of the rows of all tables of checks. */
    public static List<String> checks() throws IOException {
        List<String> checks = new ArrayList<>();
        boolean inTable = false;
        for (String line : Files.readAllLines(README)) {
            inTable = line.startsWith("| check | ") || (inTable && line.startsWith("|"));
            if (inTable && line.startsWith("| ") && !line.startsWith("| check | ")) {
                checks.add(line.split(CELLS, -1)[0].substring(2));
            }
        }
        return checks;
    }
}
