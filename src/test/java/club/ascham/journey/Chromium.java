package club.ascham.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The machine's own Chromium, without a window: one for each thread that walks, since starting it
 * costs more than a page does. Whoever walks has a context of their own in it.
 */
final class Chromium {
  private static final ThreadLocal<Browser> OF_THIS_THREAD =
      ThreadLocal.withInitial(Chromium::started);

  private Chromium() {}

  static Browser ofThisThread() {
    return OF_THIS_THREAD.get();
  }

  private static Browser started() {
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions()
                .setEnv(
                    Map.of(
                        "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1",
                        "PLAYWRIGHT_SKIP_VALIDATE_HOST_REQUIREMENTS", "1")));
    Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    return playwright
        .chromium()
        .launch(
            new BrowserType.LaunchOptions()
                .setExecutablePath(installed())
                .setArgs(
                    List.of(
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync")));
  }

  private static Path installed() {
    return List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
        .stream()
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the browser tests need Chromium installed"));
  }
}
