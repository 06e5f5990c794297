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

/** Opens and prints a bowler's page as he does. */
@Tag("browser")
class BowlerPageBrowserTest {
    @TempDir
    static Path folder;

    private static Path page;
    private static Browser browser;

    @BeforeAll
    static void writeAndOpen() {
        page = folder.resolve("me.html");
        Program.Outcome outcome = Program.run(
                "preview",
                Scenarios.FOLDER.resolve("championship.yaml"),
                "--bowler",
                "C-20",
                "--replications",
                2,
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
        browser.audit(page, "bowler", colours, width);
    }

    @Test
    void onA4NothingIsCutAndWhatIsFoldedOpens() throws IOException {
        browser.size(Browser.A4, 900).colours("light").visit(page);
        PrintedPage printed = PrintedPage.of(browser, "bowler-A4", 8.27, 11.69);

        printed.keepsMargin(14);
        printed.hasAllRows(browser);
        printed.has("Game 8 on 21-22:");
        assertThat(printed.pages()).isLessThanOrEqualTo(3);
    }
}
