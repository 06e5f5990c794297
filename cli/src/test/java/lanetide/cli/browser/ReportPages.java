package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lanetide.cli.command.Program;

/** Pages of shipped scenarios, written as people have them written, from few playings. */
final class ReportPages {
    private ReportPages() {}

    static Path write(Path folder, Path scenario) {
        Path file = folder.resolve(scenario.getFileName() + ".html");
        Program.Outcome outcome = Program.run(
                "report", scenario, "--replications", 2, "--fairness", 8, "--remedies", 4, "--reoil", 4, "-o", file);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return file;
    }
}
