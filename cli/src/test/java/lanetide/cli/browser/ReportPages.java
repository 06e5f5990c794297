package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import lanetide.cli.Lanetide;

/** Pages of shipped scenarios, written as people have them written, from few playings. */
final class ReportPages {
    private ReportPages() {}

    static Path write(Path folder, Path scenario) {
        Path file = folder.resolve(scenario.getFileName() + ".html");
        StringWriter err = new StringWriter();
        int code = Lanetide.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                ("report|" + scenario + "|--replications|2|--fairness|8|--remedies|4|--reoil|4|-o|" + file)
                        .split("\\|"));
        assertThat(code).as(err.toString()).isZero();
        return file;
    }
}
