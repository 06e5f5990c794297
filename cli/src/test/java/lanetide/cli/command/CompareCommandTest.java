package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class CompareCommandTest {
    @TempDir
    Path folder;

    private Path first;
    private Path second;

    @BeforeEach
    void write() throws Exception {
        first = Files.writeString(folder.resolve("first.yaml"), Scenarios.SOUND);
        second = Files.writeString(folder.resolve("second.yaml"), Scenarios.SOUND.replace("23 mL", "28 mL"));
    }

    @Test
    void theTextSaysWhatDiffersInThePlanAndWhatIsReal() {
        Program.Outcome outcome = Program.run("compare", first, second, "--replications", 4, "--sets", "usual");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .startsWith("A: Practice night (" + first + ")\nB: Practice night (" + second + ")\n")
                .contains("What really differs, B against A:", "oil laid: +20.0 mL")
                .contains("How the plans differ", "23 mL", "28 mL")
                .contains("not a lane inspection and not a ruling");
        assertThat(outcome.out().lines().skip(2))
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void theJsonHasTheAgreedFieldsAndTheSameBytesForAnyNumberOfThreads() {
        Program.Outcome outcome =
                Program.run("compare", first, second, "--replications", 4, "--format", "json", "--threads", 1);

        JsonNode answer = outcome.answer();
        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256")
                .contains("otherScenarioSha256", "differences");
        assertThat(answer.get("differences").get(0).propertyNames())
                .contains("quantity", "a", "b", "difference", "ci95");
        assertThat(Program.run("compare", first, second, "--replications", 4, "--format", "json", "--threads", 3)
                        .out())
                .isEqualTo(outcome.out());
    }

    @Test
    void aScenarioDoesNotDifferFromItself() {
        String text = Program.run("compare", first, first, "--replications", 3).out();

        assertThat(text).contains("No real difference was found.", "Not in what a plan is told by");
        assertThat(Program.run("compare", first, first, "--replications", 3, "--format", "csv")
                        .out()
                        .lines()
                        .skip(1))
                .allSatisfy(row -> assertThat(row).endsWith(",0.0000,0.0000,0.0000,1.000000,1.000,false,none"));
    }

    @Test
    void aSecondScenarioWithErrorsIsToldAndNotCompared() {
        Path faulty = Scenarios.FOLDER.resolve("faulty").resolve("length-61-ft.yaml");

        Program.Outcome outcome = Program.run("compare", first, faulty);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("pattern.length is `61 ft`", "has errors; see above");
    }

    @Test
    void aSecondScenarioThatIsNotThereIsFileTrouble() {
        assertThat(Program.run("compare", first, folder.resolve("none.yaml")).exitCode())
                .isEqualTo(3);
    }
}
