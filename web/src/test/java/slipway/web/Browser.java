package slipway.web;

import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser of the machine, without a window. */
public final class Browser implements AutoCloseable {
    /** Nothing of its own goes to the network; a container has no user to guard against. */
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser browser;

    public Browser() {
        Path program = find().orElseThrow(
                        () -> new IllegalStateException(
                                "the pages are tested in Chromium, which was not found: install it (Debian package chromium; ./check does)"));
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setArgs(FLAGS));
    }

    public com.microsoft.playwright.Browser get() {
        return browser;
    }

    private static Optional<Path> find() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of("chromium", "chromium-browser", "google-chrome")
                .flatMap(name -> Arrays.stream(path.split(File.pathSeparator, -1))
                        .map(folder -> Path.of(folder).resolve(name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
