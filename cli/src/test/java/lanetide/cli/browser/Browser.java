package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import javax.imageio.ImageIO;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A Chromium without a window, with the network shut off, that opens pages from files. */
final class Browser implements AutoCloseable {
    /** A small phone, in CSS pixels. */
    static final int PHONE = 360;

    static final int LAPTOP = 1280;

    /** A4 at 96 pixels an inch, less the margins of the page. */
    static final int A4 = 688;

    /** Far longer than anything takes: other tests keep the machine busy, and a page is not wrong for being late. */
    static final Duration PATIENCE = Duration.ofMinutes(3);

    private static final Path PICTURES = Path.of("target", "pictures");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    static Browser open() {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("chromium").toFile());
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(program("chromedriver").toFile())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(PATIENCE);
        return new Browser(driver);
    }

    /** Fails where the browser is missing: a page that nobody has opened is not tested. */
    private static Path program(String name) {
        return List.of(System.getenv("PATH").split(":")).stream()
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        name + " is missing; on Debian: apt-get install chromium chromium-driver"));
    }

    ChromeDriver driver() {
        return driver;
    }

    Browser size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    Browser colours(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        return this;
    }

    Browser printing() {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        return this;
    }

    /**
     * Opens a page and waits until it has been painted: on a busy machine the browser says that a page is loaded before
     * it has any width, and then takes no picture of it and prints nothing.
     */
    Browser visit(Path page) {
        driver.get(page.toUri().toString());
        driver.executeAsyncScript("""
                const painted = arguments[0];
                const look = () => document.readyState === "complete" && document.body.getBoundingClientRect().width > 0
                  ? requestAnimationFrame(() => requestAnimationFrame(() => painted()))
                  : setTimeout(look, 20);
                look();
                """);
        return this;
    }

    /** Opens a page and waits until its script has drawn everything. */
    Browser show(Path page) {
        visit(page);
        new WebDriverWait(driver, PATIENCE)
                .until(any -> "true".equals(run("return document.documentElement.dataset.ready")));
        return this;
    }

    /**
     * Opens a page without a script, keeps its picture, and finds nothing cut at the side and nothing against the
     * rules.
     */
    void audit(Path page, String name, String colours, int width) {
        log(LogType.BROWSER);
        size(width, 800).colours(colours).visit(page);
        picture(name + "-" + colours + "-" + width);

        assertThat(log(LogType.BROWSER)).isEmpty();
        assertThat((Long) run("return document.documentElement.scrollWidth")).isLessThanOrEqualTo(width);
        assertThat((Long) run("return [...document.querySelectorAll('.scroll')].filter(s =>"
                        + " s.scrollWidth > s.clientWidth).length"))
                .as("tables cut at the side")
                .isZero();
        run("document.querySelectorAll('details').forEach(d => d.open = true)");
        assertThat(violations()).isEmpty();
    }

    /** What of the page is against the rules of these tags, or of any where none is given. */
    List<Rule> violations(String... tags) {
        AxeBuilder audit = new AxeBuilder().setTimeout((int) PATIENCE.toSeconds());
        return (tags.length > 0 ? audit.withTags(List.of(tags)) : audit)
                .analyze(driver)
                .getViolations();
    }

    Object run(String script, Object... arguments) {
        return ((JavascriptExecutor) driver).executeScript(script, arguments);
    }

    WebElement find(String css) {
        return driver.findElement(org.openqa.selenium.By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(org.openqa.selenium.By.cssSelector(css));
    }

    List<String> log(String type) {
        return driver.manage().logs().get(type).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    byte[] pdf(double widthInches, double heightInches) {
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.printToPDF",
                Map.of("paperWidth", widthInches, "paperHeight", heightInches, "preferCSSPageSize", false));
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    /** Lets the page save files into a folder. */
    Browser savingInto(Path folder) {
        driver.executeCdpCommand(
                "Browser.setDownloadBehavior",
                Map.of(
                        "behavior",
                        "allow",
                        "downloadPath",
                        folder.toAbsolutePath().toString()));
        return this;
    }

    /** The part of the page that something takes, as it is seen, with so many dots for one of the page. */
    BufferedImage seen(WebElement part, int sharpness) {
        Map<?, ?> place = (Map<?, ?>) run(
                "const r = arguments[0].getBoundingClientRect();"
                        + " return {x: r.left + scrollX, y: r.top + scrollY, width: r.width, height: r.height}",
                part);
        Map<String, Object> clip = new HashMap<>();
        place.forEach((key, value) -> clip.put((String) key, value));
        clip.put("scale", sharpness);
        Map<String, Object> answer =
                driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip));
        try {
            return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode((String) answer.get("data"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes a picture of the whole page, for people to look at. */
    void picture(String name) {
        Map<String, Object> answer =
                driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true));
        write(name, answer);
    }

    /** Takes a picture of one part of the page. */
    void picture(String name, String css) {
        Map<?, ?> place = (Map<?, ?>) run(
                "const r = document.querySelector(arguments[0]).getBoundingClientRect();"
                        + " return {x: 0, y: r.top + scrollY - 8, width: innerWidth, height: r.height + 16}",
                css);
        Map<String, Object> clip = new HashMap<>();
        place.forEach((key, value) -> clip.put((String) key, value));
        clip.put("scale", 1);
        write(
                name,
                driver.executeCdpCommand(
                        "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip)));
    }

    private static void write(String name, Map<String, Object> answer) {
        try {
            Files.createDirectories(PICTURES);
            Files.write(PICTURES.resolve(name + ".png"), Base64.getDecoder().decode((String) answer.get("data")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
