package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import lanetide.cli.command.Program;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Opens and prints the page for a protest as a director does. */
@Tag("browser")
class ProtestPageBrowserTest {
    @TempDir
    static Path folder;

    private static Path page;
    private static Browser browser;

    @BeforeAll
    static void writeAndOpen() {
        page = folder.resolve("protest.html");
        Program.Outcome outcome = Program.run(
                "fairness",
                Scenarios.FOLDER.resolve("club-final.yaml"),
                "--replications",
                12,
                "--remedies",
                8,
                "--bounds",
                0,
                "--sets",
                "usual",
                "--format",
                "html",
                "-o",
                page);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @ParameterizedTest
    @CsvSource({"light,390", "dark,1280"})
    void itOpensFitsAndPassesAnAudit(String colours, int width) {
        browser.audit(page, "protest", colours, width);
    }

    @Test
    void itPrintsOnOnePageOfA4() throws IOException {
        browser.size(Browser.A4, 900).colours("light").visit(page);
        PrintedPage printed = PrintedPage.of(browser, "protest-A4", 8.27, 11.69);

        printed.keepsMargin(14);
        printed.has("This page decides nothing.");
        printed.has(browser.find("footer").getText());
        assertThat(printed.pages()).isEqualTo(1);
    }
}
