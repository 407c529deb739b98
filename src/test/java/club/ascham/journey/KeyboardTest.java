package club.ascham.journey;

import static club.ascham.web.Program.sending;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import club.ascham.store.Rows;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Without a mouse: Tab, Space, Enter and what is typed. */
@QuarkusTest
@Order(1)
class KeyboardTest {
  /** No page has so many things to stop at that a person would not know where they are. */
  private static final int STOPS_AT_MOST = 400;

  /** Empty where the eye finds what has the focus; else what hides it. */
  private static final String HIDDEN_FOCUS =
      """
      () => {
        const held = document.activeElement;
        if (!held || held === document.body) return '';
        const drawn = held.closest('.pick') ?? held;
        const marked = [held, drawn, held.nextElementSibling].some((each) => {
          if (!each) return false;
          const style = getComputedStyle(each);
          return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
        });
        const box = drawn.getBoundingClientRect();
        const inSight = box.width > 0 && box.height > 0
          && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
        return marked && inSight ? '' : (marked ? 'out of sight: ' : 'not marked: ') + held.outerHTML.slice(0, 160);
      }\
      """;

  /** What hides the focus, after whether it is at this: asked in one, for there are many stops. */
  private static final String HELD_AND_HIDDEN_FOCUS =
      "target => [document.querySelector(target) === document.activeElement, ("
          + HIDDEN_FOCUS
          + ")()]";

  @TestHTTPResource String address;
  @Inject Rows rows;

  /** What the set-up in force measured. */
  record Figures(Length brace, Length upper, Length lower) {}

  @ParameterizedTest(name = "script {0}")
  @CsvSource({"true", "false"})
  void aKit_isReceivedCheckedAndPutBack(boolean script) {
    int loan = aKitOnLoan();
    long rig =
        rows.number("SELECT rig_id FROM loan_line WHERE loan_id = ?1 AND rig_id IS NOT NULL", loan);
    Figures set =
        rows.one(
                Figures.class,
                """
                SELECT u.brace, u.tiller_upper AS upper, u.tiller_lower AS lower
                  FROM rig_parts p JOIN set_up u ON u.id = p.set_up_id WHERE p.rig_id = ?1\
                """,
                rig)
            .orElseThrow();
    try (Person volunteer = at(script).signIn("volunteer").open("/receive")) {
      Page page = volunteer.page();
      skip(page);
      lead(page, "main .act a[href='/receive/" + loan + "']");
      skip(page);
      lead(page, "main form button.big");
      assertTrue(volunteer.sees("all back"), volunteer.words());
      skip(page);
      lead(page, "main .next-things a[href='/check/" + rig + "']");
      skip(page);
      go(page, "#allAsListed", "Space");
      int looks = page.locator("main .stack > .look").count();
      for (int look = 0; look < looks; look++) {
        String name =
            page.locator("main .stack > .look")
                .nth(look)
                .locator("input[type=radio]")
                .first()
                .getAttribute("name");
        go(page, "input[name='" + name + "'][value=fine]", "Space");
      }
      type(page, "#brace", set.brace());
      type(page, "#tillerUpper", set.upper());
      type(page, "#tillerLower", set.lower());
      lead(page, "main form.form > .actions button.big");
      assertTrue(volunteer.sees("Put back: ready"), volunteer.words());
      skip(page);
      lead(page, "main button:text-is('Put back: ready')");
    }
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM rig_standing WHERE rig_id = ?1 AND state_if_inspected = 'READY'",
            rig));
  }

  @Test
  void noPage_holdsTheFocusOrHidesIt() {
    long rig =
        rows.number("SELECT min(rig_id) FROM rig_standing WHERE state_if_inspected = 'READY'");
    try (Person officer = at(true).signIn("officer")) {
      Stream.of(
              "/issue",
              "/receive",
              "/check/" + rig,
              "/rigs/" + rig,
              "/rigs/" + rig + "/change?place=string",
              "/register",
              "/register/new?kind=string",
              "/sessions/new",
              "/upkeep",
              "/fleet",
              "/rules",
              "/record")
          .forEach(path -> assertLeadsThrough(officer.open(path).page(), path));
    }
  }

  private static void assertLeadsThrough(Page page, String path) {
    skip(page);
    page.keyboard().press("Tab");
    for (int stops = 1; !isAtTheEnd(page, path); stops++) {
      if (stops == STOPS_AT_MOST) {
        fail(path + ": " + STOPS_AT_MOST + " stops and no end; the focus may be held");
      }
      page.keyboard().press("Tab");
    }
  }

  /**
   * Past the last thing of the page the focus leaves it, or comes round to the skip link; until
   * then it is seen.
   */
  private static boolean isAtTheEnd(Page page, String path) {
    List<?> stop =
        (List<?>)
            page.evaluate(
                "() => [document.activeElement === document.body"
                    + " || document.activeElement.classList.contains('skip'), ("
                    + HIDDEN_FOCUS
                    + ")()]");
    if (stop.get(0).equals(false)) {
      assertEquals("", stop.get(1), "the focus on " + path);
    }
    return stop.get(0).equals(true);
  }

  /** The first stop of each page leads past what all pages share. */
  private static void skip(Page page) {
    page.evaluate(
        "() => { document.activeElement?.blur(); window.getSelection()?.removeAllRanges();"
            + " window.scrollTo(0, 0); }");
    for (int stops = 0; stops < STOPS_AT_MOST; stops++) {
      page.keyboard().press("Tab");
      if (isHeld(page, ".skip")) {
        assertSeen(page, page.url());
        page.keyboard().press("Enter");
        assertTrue(isHeld(page, "#main"), "the skip link leads into the page: " + page.url());
        return;
      }
    }
    fail("no skip link on " + page.url());
  }

  /** Goes on by Tab until this is reached, and presses a key there. */
  private static void go(Page page, String target, String key) {
    for (int stops = 0; stops < STOPS_AT_MOST; stops++) {
      page.keyboard().press("Tab");
      if (isHeldAndSeen(page, target)) {
        page.keyboard().press(key);
        return;
      }
    }
    fail(target + " is not reached by Tab on " + page.url());
  }

  /** Presses Enter at what leads to another page, and waits for that. */
  private static void lead(Page page, String target) {
    String before = page.url();
    go(page, target, "Enter");
    page.waitForURL(url -> !url.equals(before));
  }

  private static void type(Page page, String field, Length length) {
    for (int stops = 0; stops < STOPS_AT_MOST && !isHeldAndSeen(page, field); stops++) {
      page.keyboard().press("Tab");
    }
    page.keyboard().type(LengthText.exact(length));
  }

  private static boolean isHeld(Page page, String selector) {
    return page.locator(selector)
        .first()
        .evaluate("each => each === document.activeElement")
        .equals(true);
  }

  private static boolean isHeldAndSeen(Page page, String selector) {
    // Some are found by Playwright's own words for them, which a page does not understand.
    if (selector.contains(":text")) {
      assertSeen(page, page.url());
      return isHeld(page, selector);
    }
    List<?> stop = (List<?>) page.evaluate(HELD_AND_HIDDEN_FOCUS, selector);
    assertEquals("", stop.get(1), "the focus on " + page.url());
    return stop.get(0).equals(true);
  }

  private static void assertSeen(Page page, String where) {
    assertEquals("", page.evaluate(HIDDEN_FOCUS), "the focus on " + where);
  }

  private int aKitOnLoan() {
    Map<String, Object> kit =
        new HashMap<>(
            Map.of(
                "hand",
                "right",
                "drawLength",
                "27 in",
                "ageBand",
                "adult",
                "experience",
                "beginner"));
    // The best that nothing speaks against: a reason is no part of what is tried here.
    int rig =
        sending("officer")
            .body(kit)
            .post("/api/fit")
            .jsonPath()
            .<Integer>get("rigs.find { it.concerns.every { one -> one.weight == 'note' } }.rig");
    kit.put("rig", rig);
    kit.put("name", "Reed Tansy " + rig);
    kit.put("contact", "07700 900" + rig);
    kit.put("termsAccepted", true);
    kit.put("briefingGiven", true);
    return sending("officer")
        .body(kit)
        .post("/api/loans")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private Person at(boolean script) {
    return Person.at(address, 1280, ColorScheme.LIGHT, script);
  }
}
