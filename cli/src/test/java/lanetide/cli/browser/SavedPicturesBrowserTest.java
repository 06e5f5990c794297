package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Saves every chart of the page as a picture, and looks at it. */
@Tag("browser")
class SavedPicturesBrowserTest {
    private static final int SHARPNESS = 2;

    /** Room around a saved figure and for its title (dots of the page), as in the page's script. */
    private static final int EDGE = 16;

    private static final int HEAD = 58;

    @TempDir
    static Path folder;

    private static Path page;
    private static Browser browser;

    @BeforeAll
    static void writeAndOpen() {
        page = ReportPages.write(folder, Scenarios.FOLDER.resolve("club-night.yaml"));
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @ParameterizedTest
    @CsvSource({"light,1280", "dark,360"})
    void everyChartIsSavedAsItStandsOnThePage(String colours, int width) throws IOException {
        Path saved = Files.createDirectories(folder.resolve(colours + width));
        browser.size(width, 900).colours(colours).savingInto(saved).show(page);
        browser.find("#time").sendKeys(Keys.END);
        List<WebElement> figures = browser.all("figure");
        assertThat(figures).hasSizeGreaterThanOrEqualTo(7);

        for (WebElement figure : figures) {
            Path file = save(figure, saved);
            Files.copy(
                    file,
                    Files.createDirectories(Path.of("target", "pictures"))
                            .resolve("saved-" + colours + "-" + file.getFileName()),
                    StandardCopyOption.REPLACE_EXISTING);
            BufferedImage picture = ImageIO.read(file.toFile());
            BufferedImage seen = browser.seen(figure, SHARPNESS);

            assertThat(picture.getWidth()).isCloseTo(seen.getWidth() + 2 * EDGE * SHARPNESS, within(2));
            assertThat(differing(picture, seen))
                    .as("%s: share of what is drawn that differs", file.getFileName())
                    .isLessThan(0.25);
            assertThat(titled(picture)).as("%s has a title", file.getFileName()).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameMakesAnOrdinaryFileName(String name) {
        browser.show(page);

        String file = (String) browser.run(
                "document.querySelector('h1').textContent = arguments[0]; return fileName(figureNamed('lane'))", name);

        assertThat(file).matches("[\\p{L}\\p{N}-]{5,140}\\.png").doesNotStartWith("-");
    }

    @Test
    void thereIsNoButtonOnPaper() {
        browser.size(Browser.A4, 900).printing().show(page);

        assertThat(browser.all(".save")).isNotEmpty().noneMatch(WebElement::isDisplayed);
        browser.colours("light");
    }

    private static Path save(WebElement figure, Path into) throws IOException {
        List<Path> before = files(into);
        figure.findElement(By.className("save")).click();
        new WebDriverWait(browser.driver(), Browser.PATIENCE)
                .until(any -> files(into).size() > before.size()
                        && files(into).stream().allMatch(file -> file.toString().endsWith(".png")));
        List<Path> after = files(into);
        after.removeAll(before);
        assertThat(after).hasSize(1);
        return after.get(0);
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(files.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Of the dots that are not paper on the page, the share that looks otherwise in the picture; letters may lie a dot
     * aside, and the whole figure a dot up or down, since on a page it may begin between two dots.
     */
    private static double differing(BufferedImage picture, BufferedImage seen) {
        return IntStream.rangeClosed(-1, 1)
                .mapToDouble(down -> differing(picture, seen, down))
                .min()
                .orElseThrow();
    }

    private static double differing(BufferedImage picture, BufferedImage seen, int down) {
        int paper = picture.getRGB(2, 2);
        int height = Math.min(seen.getHeight(), picture.getHeight() - (2 * EDGE + HEAD) * SHARPNESS);
        int drawn = 0;
        int other = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < seen.getWidth(); x++) {
                if (unlike(seen.getRGB(x, y), paper)) {
                    drawn++;
                    other +=
                            near(picture, x + EDGE * SHARPNESS, y + down + (EDGE + HEAD) * SHARPNESS, seen.getRGB(x, y))
                                    ? 0
                                    : 1;
                }
            }
        }
        assertThat(drawn).isGreaterThan(1000);
        return (double) other / drawn;
    }

    private static boolean near(BufferedImage picture, int x, int y, int colour) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                boolean inside = x + dx < picture.getWidth() && y + dy < picture.getHeight();
                if (inside && !unlike(picture.getRGB(x + dx, y + dy), colour)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean unlike(int one, int other) {
        for (int shift = 0; shift <= 16; shift += 8) {
            if (Math.abs((one >> shift & 255) - (other >> shift & 255)) > 48) {
                return true;
            }
        }
        return false;
    }

    private static boolean titled(BufferedImage picture) {
        int paper = picture.getRGB(2, 2);
        for (int y = 0; y < HEAD * SHARPNESS; y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if (unlike(picture.getRGB(x, y), paper)) {
                    return true;
                }
            }
        }
        return false;
    }
}
