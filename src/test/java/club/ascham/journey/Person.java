package club.ascham.journey;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.TimeoutError;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Someone at a real browser. Each field filled, choice made or press counts as one input, since the
 * product promises how few there are. Keeps what a careful eye would notice: errors in the console,
 * pages that transfer too much.
 */
final class Person implements AutoCloseable {
  static final int NARROW = 360;
  static final int WIDE = 1280;
  private static final long PAGE_BYTES_AT_MOST = 100_000;
  private static final Path SCREENSHOTS = Path.of("target", "screenshots");

  /** A picture of a whole page costs as much as all that is asked of it. */
  private static final boolean PICTURES = Boolean.getBoolean("pictures");

  private static final String AXE = axe();
  private static final String WHAT_AXE_OBJECTS_TO =
      """
      asked => axe.run(document, asked).then(found => found.violations.map(
        rule => rule.id + ': ' + rule.help + ' ' + rule.nodes[0].target))""";

  private final BrowserContext context;
  private final Page page;
  private final String address;
  private final ColorScheme theme;
  private final List<String> complaints = new ArrayList<>();
  private long transferred;
  private int inputs;

  private Person(BrowserContext context, String address, ColorScheme theme) {
    this.theme = theme;
    this.context = context;
    this.address = address;
    this.page = context.newPage();
    page.setDefaultTimeout(15_000);
    page.onConsoleMessage(
        message -> {
          // The browser itself remarks on a page that answers a faulty form: that is no fault of
          // it.
          if (message.type().equals("error") && !message.text().contains("status of 422")) {
            complaints.add(message.text());
          }
        });
    page.onPageError(complaints::add);
    page.onResponse(response -> transferred += size(response));
  }

  static Person at(String address, int width, ColorScheme theme, boolean script) {
    BrowserContext context =
        Chromium.ofThisThread()
            .newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(width, 800)
                    .setColorScheme(theme)
                    .setJavaScriptEnabled(script));
    // Once for all pages of this person: to hand it over again with each costs half a look.
    context.addInitScript(AXE);
    return new Person(context, address.replaceAll("/$", ""), theme);
  }

  Person signIn(String name) {
    page.navigate(address + "/sign-in");
    page.getByLabel("Name").fill(name);
    page.getByLabel("Password").fill("demo-fleet");
    page.locator("main button").click();
    assertTrue(page.locator(".who").count() > 0, "signed in");
    inputs = 0;
    return this;
  }

  Person open(String path) {
    transferred = 0;
    page.navigate(address + path);
    return this;
  }

  // ---- inputs, each counted

  Person fill(String label, String text) {
    inputs++;
    page.getByLabel(label, new Page.GetByLabelOptions().setExact(false)).first().fill(text);
    return this;
  }

  Person fill(Locator field, String text) {
    inputs++;
    field.fill(text);
    return this;
  }

  /** Chooses one row of a radio group or ticks a box. */
  Person choose(Locator choice) {
    inputs++;
    choice.check(new Locator.CheckOptions().setForce(true));
    return this;
  }

  Person press(Locator button) {
    inputs++;
    transferred = 0;
    button.click();
    page.waitForLoadState();
    return this;
  }

  Person press(String word) {
    return press(
        page.locator("main")
            .getByText(word, new Locator.GetByTextOptions().setExact(true))
            .first());
  }

  // ---- looking

  Page page() {
    return page;
  }

  String words() {
    return page.locator("main").innerText();
  }

  /** Where a press leads elsewhere, the page that it leads to may still be coming. */
  boolean sees(String words) {
    try {
      page.waitForCondition(() -> words().contains(words));
      return true;
    } catch (TimeoutError never) {
      return false;
    }
  }

  int inputs() {
    return inputs;
  }

  Person countFromHere() {
    inputs = 0;
    return this;
  }

  /** Keeps a picture of the page as build output, where pictures are asked for. */
  Person keep(String name) {
    if (PICTURES) {
      picture(name);
    }
    return this;
  }

  private void picture(String name) {
    page.screenshot(
        new Page.ScreenshotOptions().setFullPage(true).setPath(SCREENSHOTS.resolve(name + ".jpg")));
  }

  /** Nothing sideways, nothing in the console, nothing too heavy, nothing that axe objects to. */
  Person lookCarefully(String name) {
    keep(name);
    try {
      assertEquals(List.of(), complaints, "console errors on " + name);
      assertTrue(transferred < PAGE_BYTES_AT_MOST, name + " transfers " + transferred + " bytes");
      int overflow =
          ((Number)
                  page.evaluate(
                      "document.documentElement.scrollWidth - document.documentElement.clientWidth"))
              .intValue();
      assertTrue(overflow <= 0, name + " scrolls sideways by " + overflow + " px");
      assertEquals(List.of(), page.evaluate(WHAT_AXE_OBJECTS_TO, asked()), "axe on " + name);
    } catch (AssertionError wrong) {
      picture(name);
      throw wrong;
    }
    return this;
  }

  private Map<String, Object> asked() {
    Map<String, Object> asked = new HashMap<>(Map.of("resultTypes", List.of("violations")));
    if (theme == ColorScheme.DARK) {
      // The same page in other colours: all else is asked of it in light ones.
      asked.put("runOnly", List.of("color-contrast"));
    }
    return asked;
  }

  private static String axe() {
    try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static long size(Response response) {
    try {
      return response.request().sizes().responseBodySize
          + response.request().sizes().responseHeadersSize;
    } catch (RuntimeException gone) {
      return 0; // a redirect's body, or a page left before it was read: nothing was shown of it
    }
  }

  @Override
  public void close() {
    context.close();
  }
}
