package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import lanetide.cli.check.CheckText;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.squads.measured.Measurements;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of measurements that a scenario names. */
class MeasuredFilesTest {
    @TempDir
    Path folder;

    @BeforeEach
    void writesTables() throws IOException {
        Files.writeString(folder.resolve("tapes.csv"), "lane,distance,board,units\n1,22,10,31\n1,22,20,44\n");
        Files.writeString(folder.resolve("scores.csv"), "game,bowler,score\n1,A-01,187\n");
        Files.writeString(folder.resolve("copy.csv"), "game,bowler,score\n1,A-01,187\n");
        Files.writeString(folder.resolve("faulty.csv"), "game,bowler,score\n1,A-01,387\n9,A-02,200\n");
    }

    @Test
    void aScenarioNamesOneTableOrSeveral() throws IOException {
        assertThat(measured("measured: tapes.csv\n").tapes()).hasSize(2);
        Measurements all = measured("measured: [tapes.csv, scores.csv]\n");
        assertThat(all.tapes()).hasSize(2);
        assertThat(all.scores()).hasSize(1);
        assertThat(measured("")).isEqualTo(Measurements.NONE);
    }

    @Test
    void itsTablesArePartOfTheScenario() throws IOException {
        Reading reading = read("measured: [tapes.csv, scores.csv]\n");

        assertThat(reading.namedFiles()).containsOnlyKeys("scores.csv", "tapes.csv");
        assertThat(reading.inputs())
                .containsExactly(
                        folder.resolve("event.yaml"), folder.resolve("tapes.csv"), folder.resolve("scores.csv"));
    }

    @Test
    void checkTellsHowMuchWasMeasured() throws IOException {
        assertThat(CheckText.write("event.yaml", read("measured: [tapes.csv, scores.csv]\n"), false, false))
                .contains("Measured: 2 tape readings, 1 score.");
        assertThat(CheckText.write("event.yaml", read(""), false, false)).doesNotContain("Measured");
    }

    @Test
    void allFaultsOfAllTablesAreToldTableByTable() throws IOException {
        Reading reading = read("measured: [faulty.csv, none.csv, scores.csv, copy.csv]\n");

        assertThat(reading.scenario()).isEmpty();
        assertThat(reading.notices())
                .extracting(notice -> Path.of(notice.file()).getFileName() + " " + notice.code() + " " + notice.field())
                .containsExactly(
                        "event.yaml NAMED_FILE_MISSING measured[2]",
                        "event.yaml TABLE_TWICE measured[4]",
                        "faulty.csv OUT_OF_RANGE score",
                        "faulty.csv OUT_OF_RANGE game");
    }

    @Test
    void aTableElsewhereIsRefused() throws IOException {
        assertThat(read("measured: ../tapes.csv\n").notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.BAD_TEXT);
    }

    @Test
    void tablesOfAFaultyEventAreOpenedButNotJudged() throws IOException {
        Reading reading = read("measured: [faulty.csv, none.csv]\n", "games: 0");

        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsExactlyInAnyOrder(NoticeCode.ZERO_VALUE, NoticeCode.NAMED_FILE_MISSING);
        assertThat(reading.inputs()).contains(folder.resolve("faulty.csv"), folder.resolve("none.csv"));
    }

    @Test
    void tablesBesideTheScenarioAddToItsOwn() throws IOException {
        Reading reading = read("measured: tapes.csv\n");
        Path elsewhere = Files.createDirectory(folder.resolve("side")).resolve("tapes.csv");
        Files.writeString(elsewhere, "lane,distance,board,units\n2,22,10,31\n");

        Reading all = MeasuredBeside.add(reading, List.of(table(elsewhere), table(folder.resolve("scores.csv"))));

        Measurements known = all.scenario().orElseThrow().measurements();
        assertThat(known.tapes()).extracting(tape -> tape.lane()).containsExactly(1, 1, 2);
        assertThat(known.scores()).hasSize(1);
        assertThat(all.namedFiles()).containsOnlyKeys("scores.csv", "tapes.csv", "tapes.csv (2)");
        assertThat(all.inputs()).containsAll(reading.inputs()).contains(elsewhere, folder.resolve("scores.csv"));
        assertThat(all.sha256()).isEqualTo(reading.sha256());
    }

    @Test
    void aTableThatIsReadAlreadyIsRefusedBesideTheScenarioToo() throws IOException {
        Reading reading = read("measured: scores.csv\n");

        Reading all = MeasuredBeside.add(reading, List.of(table(folder.resolve("copy.csv"))));

        assertThat(all.scenario()).isEmpty();
        assertThat(all.notices()).extracting(Notice::code).containsExactly(NoticeCode.TABLE_TWICE);
    }

    private static MeasuredBeside table(Path file) throws IOException {
        return new MeasuredBeside(file, Files.readAllBytes(file));
    }

    private Measurements measured(String more) throws IOException {
        return read(more).scenario().orElseThrow().measurements();
    }

    private Reading read(String more) throws IOException {
        return read(more, "games: 3");
    }

    private Reading read(String more, String games) throws IOException {
        Path scenario = folder.resolve("event.yaml");
        Files.writeString(scenario, Scenarios.SOUND.replace("games: 3", games) + more);
        return new ScenarioReader(OptionalLong.empty()).read(scenario.toString(), Files.readAllBytes(scenario));
    }
}
