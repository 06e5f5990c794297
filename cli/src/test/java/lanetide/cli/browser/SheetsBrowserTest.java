package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
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
import org.openqa.selenium.logging.LogType;

/** Opens and prints the sheets in a browser. */
@Tag("browser")
class SheetsBrowserTest {
    @TempDir
    static Path folder;

    private static Browser browser;

    @BeforeAll
    static void writeAndOpen() {
        for (String paper : new String[] {"a4", "letter"}) {
            Program.Outcome outcome = Program.run(
                    "sheets",
                    Scenarios.FOLDER.resolve("club-final.yaml"),
                    "--replications",
                    1,
                    "--paper",
                    paper,
                    "--into",
                    folder.resolve(paper));
            assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        }
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @ParameterizedTest
    @CsvSource({
        "a4,assignments,8.27,11.69", "a4,oiling,8.27,11.69", "a4,cards,8.27,11.69",
        "letter,assignments,8.5,11", "letter,oiling,8.5,11", "letter,cards,8.5,11"
    })
    void aSheetOpensPassesAnAuditAndPrintsUncut(String paper, String sheet, double width, double height)
            throws IOException {
        browser.log(LogType.BROWSER);
        browser.size(Browser.PHONE, 800).visit(folder.resolve(paper).resolve(sheet + ".html"));
        assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(Browser.PHONE);

        browser.size(Browser.LAPTOP, 900);
        browser.picture(sheet + "-" + paper);
        assertThat(browser.log(LogType.BROWSER)).isEmpty();
        if (paper.equals("a4")) { // on a screen the sheets for both papers are alike
            assertThat(browser.violations()).isEmpty();
        }

        PrintedPage printed = PrintedPage.of(browser, sheet + "-" + paper, width, height);
        printed.keepsMargin(12);
        printed.hasAllRows(browser);
    }

    /** Two squads of sixteen groups: each squad on a page, from the first one, and six cards on each. */
    @Test
    void noPageIsLeftBlankAndNoFifthOfIt() throws IOException {
        Path scenario = Files.writeString(folder.resolve("large.yaml"), """
                name: Large
                seed: 1
                centre: {lanes: 1 to 32, surface: hard-synthetic}
                pattern: {length: 40 ft, volume: 25 mL, ratio: 4:1}
                games: 6
                rotation: right
                squads: [{id: A, start: "09:00", oil: fresh}, {id: B, start: "14:00", oil: fresh}]
                field:
                  perSquad: 32
                  hands: {right: 100 %}
                  styles: {stroker: 100 %}
                  levels: {scratch: 100 %}
                  covers: {medium-reactive: 100 %}
                """);
        Path into = folder.resolve("large");
        Program.Outcome outcome =
                Program.run("sheets", scenario, "--replications", 1, "--sets", "usual", "--into", into);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();

        browser.visit(into.resolve("assignments.html"));
        PrintedPage assignments = PrintedPage.of(browser, "assignments-large", 8.27, 11.69);
        assertThat(assignments.pages()).isEqualTo(2);
        assignments.beginsWith("Lanes of each group, game by game");
        assignments.beginsWith("16" + "A-31 \u00b7 A-32");

        browser.visit(into.resolve("cards.html"));
        PrintedPage cards = PrintedPage.of(browser, "cards-large", 8.27, 11.69);
        assertThat(cards.pages()).isLessThanOrEqualTo(2 * 32 / 6 + 2);
    }
}
