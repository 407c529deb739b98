package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** The plan as people see it: narrow and wide, by day and by night, on paper, without script. */
@QuarkusTest
@Order(1)
class PlanJourneyTest {
  @TestHTTPResource String address;

  @Test
  void thePlan_isReadable() throws InterruptedException {
    SideBySide.walk(this::thePlanIsReadable);
  }

  private void thePlanIsReadable(int width, ColorScheme theme) {
    try (Person committee = Person.at(address, width, theme, true).signIn("committee")) {
      reckoned(committee, "/plan"); // the library comes once and is kept for an hour
      for (String path :
          new String[] {"/plan?courses=1", "/plan/insurance", "/plan/about-to", "/fleet/report"}) {
        reckoned(committee, path);
        if (path.startsWith("/plan?")) {
          assertEquals(4, committee.page().locator("figure.chart svg[role=img]").count());
          assertTrue(committee.page().locator("figure.chart .bars rect").count() > 100);
        }
        committee.lookCarefully(
            "plan" + path.replaceAll("\\W", "-") + "-" + width + "-" + theme.name().toLowerCase());
      }
    }
  }

  @Test
  void onPaper_chartsAreDarkOnWhite_evenWhereTheScreenIsDark() {
    try (Person officer = Person.at(address, 1280, ColorScheme.DARK, true).signIn("officer")) {
      Page page = officer.page();
      for (String path : new String[] {"/fleet/report", "/plan"}) {
        reckoned(officer, path);
        page.pdf(
            new Page.PdfOptions()
                .setFormat("A4")
                .setPrintBackground(true)
                .setPath(
                    Path.of(
                        "target", "screenshots", path.replaceAll("\\W", "-") + "-on-paper.pdf")));
      }
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      page.waitForFunction(
          "() => { const line = document.querySelector('figure.chart .middle');"
              + " return line && getComputedStyle(line).stroke === 'rgb(0, 0, 0)'; }");
    }
  }

  @Test
  void withoutScript_theTablesSayTheSame() {
    try (Person officer = Person.at(address, 1280, ColorScheme.LIGHT, false).signIn("officer")) {
      reckoned(officer, "/plan");
      assertEquals(0, officer.page().locator("figure.chart svg").count());
      assertEquals(24, officer.page().locator("#money-table tbody tr").count());
    }
  }

  private static void reckoned(Person person, String path) {
    for (int i = 0; i < 30; i++) {
      if (!person.open(path).words().contains("Still reckoning")) {
        return;
      }
      // The page comes again by itself: to open it meanwhile would cut that short.
      person
          .page()
          .waitForCondition(
              () -> !person.words().contains("Still reckoning"),
              new Page.WaitForConditionOptions().setTimeout(60_000));
    }
    throw new AssertionError("never reckoned");
  }
}
