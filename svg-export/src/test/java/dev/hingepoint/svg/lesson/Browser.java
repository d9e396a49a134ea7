package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.fail;

import dev.hingepoint.svg.print.Renderers;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's Chromium without a window, with a profile of its own, showing one page from a file. */
final class Browser implements AutoCloseable {
    private static final Pattern ASKED = Pattern.compile(
            "\"method\":\"Network\\.requestWillBeSent\".*\"documentURL\":\"[^\"]*\".*?\"url\":\"([^\"]*)\"");

    /** It says for each new Chromium that it does not know all of its commands; ours it does. Held here, since loggers are forgotten. */
    private static final Logger COMMANDS = Logger.getLogger("org.openqa.selenium.devtools.CdpVersionFinder");

    static {
        COMMANDS.setLevel(Level.SEVERE);
    }

    private final Path folder;
    private final ChromeDriver driver;

    private Browser(Path folder, ChromeDriver driver) {
        this.folder = folder;
        this.driver = driver;
    }

    /** Leaves the test out where the machine has no Chromium, unless it must. */
    static Browser start() throws IOException {
        Renderers.need("chromium", "chromedriver");
        Path folder = Files.createTempDirectory("browser");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("chromium"));
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"));
        options.setCapability("goog:loggingPrefs", logs);
        // the driver is named, so that none is looked for elsewhere
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(program("chromedriver"))
                .build();
        return new Browser(folder, new ChromeDriver(service, options));
    }

    private static File program(String name) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> new File(folder, name))
                .filter(File::canExecute)
                .findFirst()
                .orElseThrow();
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a page from a file, in a window that shows so many CSS px. */
    void open(String html, int width, int height) throws IOException {
        Path file = Files.writeString(folder.resolve("lesson.html"), html);
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        driver.manage().logs().get(LogType.BROWSER);
        driver.manage().logs().get(LogType.PERFORMANCE);
        driver.get(file.toUri().toString());
    }

    /** What the page wrote to the console since it was opened, each time this is asked for. */
    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** The addresses that the page asked for since it was opened, other than itself. */
    List<String> asked() {
        List<String> asked = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            Matcher request = ASKED.matcher(entry.getMessage());
            if (request.find()) {
                asked.add(request.group(1));
            }
        }
        return asked;
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Those that can be seen. */
    List<WebElement> shown(String selector) {
        return all(selector).stream().filter(WebElement::isDisplayed).toList();
    }

    /** Types keys to whatever has the focus. */
    void press(Keys... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** What a script answers: {@code return ...}. */
    Object ask(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** What moves by itself needs a moment; 20 s is for a machine that is busy. */
    void waitUntil(BooleanSupplier isSo) throws InterruptedException {
        for (int i = 0; i < 400; i++) {
            if (isSo.getAsBoolean()) {
                return;
            }
            Thread.sleep(50);
        }
        fail("it did not happen");
    }

    void command(String name, Map<String, Object> parameters) {
        driver.executeCdpCommand(name, parameters);
    }

    /** The page as it is printed, on the paper that it asks for or else A4. */
    Path print() throws IOException {
        Map<String, Object> printed = driver.executeCdpCommand(
                "Page.printToPDF",
                Map.of("paperWidth", 210 / 25.4, "paperHeight", 297 / 25.4, "printBackground", true));
        Path pdf = folder.resolve("lesson.pdf");
        return Files.write(pdf, Base64.getDecoder().decode((String) printed.get("data")));
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        Renderers.delete(folder);
    }
}
