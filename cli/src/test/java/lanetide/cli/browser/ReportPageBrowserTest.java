package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Opens the report in a browser, as its readers do. */
@Tag("browser")
class ReportPageBrowserTest {
    @TempDir
    static Path folder;

    private static Path page;
    private static Browser browser;

    /** With two bowlers on a pair in place of five, since the page is the same and takes half the time. */
    @BeforeAll
    static void writeAndOpen() throws IOException {
        Path scenario = folder.resolve("championship.yaml");
        String text = Files.readString(Scenarios.FOLDER.resolve(scenario.getFileName()));
        assertThat(text).contains("perSquad: 60");
        page = ReportPages.write(folder, Files.writeString(scenario, text.replace("perSquad: 60", "perSquad: 24")));
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    /** A browser may lose its tab where memory is short; a page that makes it do so does it to the next one too. */
    @BeforeEach
    void startAfresh() {
        try {
            showsThePage();
        } catch (WebDriverException e) {
            assertThat(e).hasMessageContaining("tab crashed");
            browser.close();
            browser = Browser.open();
            showsThePage();
        }
    }

    private static void showsThePage() {
        browser.size(Browser.LAPTOP, 900).colours("light").show(page);
    }

    @Test
    void itOpensFromAFileWithNoErrorAndNoRequest() {
        browser.log(LogType.PERFORMANCE);
        browser.log(LogType.BROWSER);
        browser.show(page);

        assertThat(browser.log(LogType.BROWSER)).isEmpty();
        List<String> requests = browser.log(LogType.PERFORMANCE).stream()
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .filter(message -> !message.contains("\"url\":\"data:") && !message.contains("\"url\":\"blob:"))
                .toList();
        assertThat(requests).hasSize(1).first().asString().contains("championship.yaml.html");
    }

    @Test
    void theSliderChangesThePictureAndTheNumbers() {
        String picture = film();
        String numbers = browser.find("#lane-numbers").getText();
        String label = browser.find("#time-label").getText();

        browser.find("#time").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);

        assertThat(film()).isNotEqualTo(picture);
        assertThat(browser.find("#lane-numbers").getText()).isNotEqualTo(numbers);
        assertThat(browser.find("#time-label").getText())
                .isNotEqualTo(label)
                .isEqualTo(browser.find("#time").getDomAttribute("aria-valuetext"))
                .isEqualTo("Squad A, after game 2");
    }

    @Test
    void anotherLaneStyleAndHandCanBeChosen() {
        int paths = browser.all("#lane-picture .path").size();
        browser.find("#hand-choice").sendKeys("left");
        assertThat(browser.all("#lane-picture .path")).hasSizeLessThan(paths);
        assertThat(browser.find("#lane-numbers").getText())
                .contains("left hand")
                .doesNotContain("right hand");

        browser.all("#all-lanes button").get(4).click();
        assertThat(browser.find("#lane-numbers").getText()).contains("Lane 5");
        assertThat(browser.find("#lane-choice").getDomProperty("value")).isEqualTo("4");
    }

    @Test
    void playRunsThroughTheGamesAndStopsAtTheEnd() {
        int last = Integer.parseInt(browser.find("#time").getDomAttribute("max"));
        browser.find("#time").sendKeys(Keys.END, Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        browser.find("#play").click();
        assertThat(browser.find("#play").getText()).isEqualTo("Stop");

        new WebDriverWait(browser.driver(), Browser.PATIENCE)
                .until(any -> browser.find("#play").getText().equals("Play"));

        assertThat(browser.find("#time").getDomProperty("value")).isEqualTo(String.valueOf(last));
        assertThat(browser.find("#time-label").getText()).isEqualTo("Squad C, after game 8");
        String film = film();
        assertThat(browser.run("return laneView.timer")).isNull();
        assertThat(film()).isEqualTo(film);
    }

    @Test
    void theKeyboardAloneReachesAndWorksEverything() {
        unfold();
        Set<String> reached = new HashSet<>();
        WebElement body = browser.find("body");
        body.sendKeys(Keys.TAB);
        long all =
                (long) browser.run("return document.querySelectorAll('a,button,select,input,summary,.scroll').length");
        for (int i = 0; i < all + 5; i++) {
            reached.add((String) browser.run(
                    "const a = document.activeElement;" + " a.dataset.reached = 'yes'; return a.tagName + a.id"));
            browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
        }

        assertThat((Long) browser.run("return [...document.querySelectorAll('a,button,select,input,summary,.scroll')]"
                        + ".filter(e => e.dataset.reached !== 'yes').length"))
                .isZero();
        assertThat(reached).contains("INPUTtime", "BUTTONplay", "SELECTlane-choice", "SELECTgroup-choice");

        browser.all("#all-lanes button").get(2).sendKeys(Keys.SPACE);
        assertThat(browser.find("#lane-numbers").getText()).contains("Lane 3");
        browser.find("#play").sendKeys(Keys.ENTER);
        assertThat(browser.find("#play").getText()).isEqualTo("Stop");
        browser.find("#play").sendKeys(Keys.ENTER);
        assertThat(browser.find("#play").getText()).isEqualTo("Play");
    }

    /** Nothing runs, nothing is lost, and nothing grows wider than a phone. */
    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameStandsInABrowserAsText(String name) throws IOException {
        String squad = "A<script>'x'\" & =1";
        Path scenario = Files.writeString(
                folder.resolve("hostile.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("one-pair.yaml"))
                        .replace("name: Two bowlers on one pair", "name: " + Scenarios.quoted(name))
                        .replace("id: evening", "id: " + Scenarios.quoted(squad)));
        Path hostile = ReportPages.write(folder, scenario);
        browser.log(LogType.BROWSER);

        browser.size(Browser.PHONE, 800).show(hostile);

        assertThat(browser.log(LogType.BROWSER)).isEmpty();
        assertThat(browser.find("h1").getText()).isEqualTo(name.strip());
        assertThat(browser.find("#windows > h3").getText()).isEqualTo("Squad " + squad);
        assertThat(browser.find("#time-label").getText()).isEqualTo("As squad " + squad + " finds it");
        assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(Browser.PHONE);
        browser.picture("report-hostile-360");
    }

    @ParameterizedTest
    @ValueSource(ints = {320, Browser.PHONE, Browser.LAPTOP})
    void thePageDoesNotScrollSideways(int width) {
        browser.size(width, 800).show(page);

        assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(width);
        assertThat((Long) browser.run("return [...document.querySelectorAll('svg')].filter(s =>"
                        + " s.getBoundingClientRect().right > innerWidth).length"))
                .isZero();
    }

    @Test
    void onAPhoneNoColumnIsCut() {
        browser.size(Browser.PHONE, 800).show(page);
        unfold();

        assertThat(browser.run("return [...document.querySelectorAll('.scroll')]"
                        + ".filter(s => s.scrollWidth > s.clientWidth).map(s => s.querySelector('table').id).join()"))
                .isEqualTo("");
        browser.picture("report-phone-unfolded");
    }

    /** No colour of the page hangs on its width. */
    @ParameterizedTest
    @CsvSource({"light,360", "dark,1280"})
    void anAuditFindsNothing(String colours, int width) {
        browser.size(width, 800).colours(colours).show(page);
        browser.picture("report-" + colours + "-" + width);
        for (String section : List.of("fairness", "reoil", "scoring", "lane", "lanes", "windows", "rotation")) {
            browser.picture("report-" + colours + "-" + width + "-" + section, "#" + section);
        }

        List<Rule> violations =
                browser.violations("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

        assertThat(violations.stream().map(rule -> rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes()))
                .isEmpty();
    }

    /** WCAG 2.2, 1.4.3 and 1.4.11: text at least 4.5:1, what must be seen of drawings 3:1. */
    @ParameterizedTest
    @CsvSource({
        "light,--ink,4.5", "light,--quiet,4.5", "light,--mark,4.5", "light,--rule,3",
        "dark,--ink,4.5", "dark,--quiet,4.5", "dark,--mark,4.5", "dark,--rule,3"
    })
    void coloursStandOutFromThePaper(String colours, String name, double least) {
        browser.colours(colours).show(page);

        double ratio = ((Number) browser.run("""
                        const lum = c => { const v = d3.rgb(c); return [v.r, v.g, v.b]
                          .map(x => x / 255).map(x => x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4)
                          .reduce((s, x, i) => s + x * [0.2126, 0.7152, 0.0722][i], 0); };
                        const style = getComputedStyle(document.documentElement);
                        const [a, b] = [arguments[0], "--paper"].map(n => lum(style.getPropertyValue(n).trim()));
                        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);""", name)).doubleValue();

        assertThat(ratio).as("%s in %s", name, colours).isGreaterThanOrEqualTo(least);
    }

    @ParameterizedTest
    @CsvSource({"A4,8.27,11.69", "Letter,8.5,11"})
    void onPaperNothingIsCut(String paper, double widthInches, double heightInches) throws IOException {
        PrintedPage printed = PrintedPage.of(browser, "report-" + paper, widthInches, heightInches);

        printed.keepsMargin(14);
        unfold(); // what was folded on the screen was printed all the same
        printed.hasAllRows(browser);
    }

    private static void unfold() {
        browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    private static String film() {
        return browser.find("#lane-picture image").getDomAttribute("href");
    }
}
