package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import org.junit.jupiter.api.Test;

/**
 * The README says what the program does now. After a change of the model, write its table anew with {@code mvn -pl
 * squads -am test -Dtest='lanetide.squads.play.ReadmeTest' -Dsurefire.failIfNoSpecifiedTests=false
 * -Dlanetide.writeReadme=true} and read what changed before committing it.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final String START = "| check | source | published | ours | |\n|---|---|---|---|---|\n";
    private static final String END = "| oil applied";

    @Test
    void theValidationTableIsWhatThePlayGives() throws IOException {
        String table = Validation.all().stream().map(Validation.Check::row).collect(Collectors.joining("\n")) + "\n";
        String text = readme();
        int from = text.indexOf(START) + START.length();
        int to = text.indexOf(END, from);
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.substring(0, from) + table + text.substring(to));
            return;
        }

        assertThat(text.substring(from, to)).isEqualTo(table);
    }

    /** By what the rows say of their source. Figures of oil, fairness and the like in other tables are own checks. */
    @Test
    void theReadmeClosesWithHowManyRowsAreMet() throws IOException {
        String text = readme();
        List<String> rows = text.lines()
                .filter(line -> line.endsWith("| met |") || line.endsWith("| OPEN |"))
                .toList();
        String counts = "Met of all: "
                + count("published", rows)
                + "; trade facts " + count("trade", rows)
                + "; calibration " + count("calibration", rows)
                + "; own checks " + count("own", rows) + ".";
        if (Boolean.getBoolean("lanetide.writeReadme")) {
            Files.writeString(README, text.replaceAll("(?m)^Met of all: .*$", counts));
            return;
        }

        assertThat(text).contains("\n" + counts + "\n");
    }

    private static String count(String use, List<String> rows) {
        List<String> those = rows.stream().filter(row -> use(row).equals(use)).toList();
        long met = those.stream().filter(row -> row.endsWith("| met |")).count();
        return (use.equals("published") ? "published " : "") + met + " of " + those.size();
    }

    private static String use(String row) {
        String source = row.split(" \\| ", -1)[1];
        if (row.contains("(calibration)")) {
            return "calibration";
        }
        if (source.startsWith("common practice")) {
            return "trade";
        }
        return List.of("own", "conservation", "symmetry", "the published scatter").stream()
                        .anyMatch(source::startsWith)
                ? "own"
                : "published";
    }

    @Test
    void everyOtherCheckIsHeldByTheTestThatComputesItsFigure() throws IOException {
        StringBuilder tests = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                tests.append(Files.readString(file));
            }
        }
        String text = readme();
        int from = text.indexOf(START);
        String computed = text.substring(from, text.indexOf(END, from));
        List<String> others = ReadmeRow.checks().stream()
                .filter(check -> !computed.contains("| " + check + " |"))
                .toList();

        assertThat(others)
                .hasSizeGreaterThan(40)
                .allSatisfy(check ->
                        assertThat(tests).contains('"' + check.substring(0, Math.min(12, check.length()))));
    }

    @Test
    void theTimesOfPlayAreTheUsualOnes() throws IOException {
        PaceOfPlay pace = PaceOfPlay.USUAL;

        assertThat(readme())
                .contains("| first ball | " + pace.firstShotMs() / 1000 + " s |")
                .contains("| next ball | " + pace.spareShotMs() / 1000 + " s |")
                .contains("| pinsetter | " + pace.pinsetterMs() / 1000 + " s |")
                .contains("| ball return | " + pace.ballReturnMs() / 1000 + " s |")
                .contains("| approach | " + pace.courtesy().approachMs() / 1000 + " s |")
                .contains("| walk | " + pace.movePerPairMs() / 1000 + " s |")
                .contains("| settling | " + pace.settleMs() / 1000 + " s |");
    }

    @Test
    void theLevelsAreTheShippedOnes() throws IOException {
        for (Level level : Levels.shipped().values()) {
            Adaptation adaptation = level.adaptation();
            ReleaseSpread spread = level.spread();
            double arrowsM = Math.hypot(spread.laydownM(), spread.launchRad() * LaneGeometry.ARROWS_M);
            String row = String.format(
                    Locale.ROOT,
                    "| %s | %.2f | %.1f %% | %.0f %% | %.1f | %.1f | %.1f | %d | %.1f | %.1f | %s | %s |",
                    level.id(),
                    arrowsM / LaneGeometry.BOARD_M,
                    100 * spread.speedShare(),
                    100 * spread.spinShare(),
                    adaptation.seesBoards(),
                    adaptation.deadBandBoards(),
                    adaptation.gain(),
                    adaptation.patienceShots(),
                    adaptation.reckoning().driftBoards(),
                    adaptation.reckoning().deeperBoards(),
                    adaptation.reckoning().looks()
                            ? number(adaptation.reckoning().othersBoards())
                            : "-",
                    adaptation.reckoning().listens()
                            ? number(adaptation.reckoning().toldBoards())
                            : "-");
            assertThat(readme()).contains(row);
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String readme() throws IOException {
        return Files.readString(README);
    }
}
