package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A recall of what a member has, and an accident: as an officer sees them, and on paper. */
@QuarkusTest
@Order(1)
class AskBackJourneyTest {
  @Inject Rack rack;
  @Inject Rows rows;
  @Inject ClubTime time;
  @TestHTTPResource String address;

  @ParameterizedTest
  @CsvSource({"360, LIGHT", "1280, DARK"})
  void recalledAndAskedBack_thenKeptAfterAnAccident(int width, ColorScheme theme) {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    String serial = "JN-" + rig.limbs().value();
    rack.called(rig.limbs(), "Alderfen", "Reedling", serial);
    LoanId loan = rack.lend(rig, "Wilhelmina Askback", time.today().plusDays(9));
    rows.change(
        "UPDATE borrower SET contact = '07700 900471', guardian = 'Mira Holt, 07700 900472', age_band = 'UP_TO_12'"
            + " WHERE id = (SELECT borrower_id FROM loan WHERE id = ?1)",
        loan);
    Rack.Hung late = rack.readyRig("LEFT", 18);
    rack.lend(late, "Late Larkin", time.today().minusDays(2));
    String as = "-" + width + "-" + theme.name().toLowerCase();
    try (Person officer = Person.at(address, width, theme, true).signIn("officer")) {
      officer.open("/recall?serial=" + serial).lookCarefully("recall" + as);
      assertTrue(officer.page().locator("button[data-print]").isVisible(), "it can be printed");
      officer
          .fill("Reason", "The maker’s notice of 3 May: the glue may let go.")
          .press("Withdraw what is ticked");
      assertTrue(officer.words().contains("ask for it back now") || officer.sees("withdrawn"));
      Map.of(
              "home-ask-back", "/",
              "loan-ask-back", "/loans/" + loan.value(),
              "slip-do-not-shoot", "/loans/" + loan.value() + "/slip",
              "receive-ask-back", "/receive",
              "receive-one-ask-back", "/receive/" + loan.value(),
              "fleet-ask-back", "/fleet",
              "fleet-rows-ask-back", "/fleet/rows?list=ask-back")
          .forEach((name, path) -> officer.open(path).lookCarefully(name + as));
      assertTrue(officer.open("/").sees("Wilhelmina Askback"));
      assertTrue(officer.sees("07700 900471"));

      officer.open("/accidents/new?loan=" + loan.value()).lookCarefully("accident-new" + as);
      officer
          .countFromHere()
          .fill("What happened", "The lower limb broke at full draw; a cut on the forearm.")
          .press("Withdraw it all, and keep it as it is");
      assertEquals(2, officer.inputs());
      officer.lookCarefully("accident" + as);
      assertTrue(officer.sees(rig.limbsCode()) && officer.sees("record’s seal"));
      String page = officer.page().url();
      onPaper(officer.page(), "accident" + as);
      onPaper(officer.open("/loans/" + loan.value() + "/slip").page(), "slip" + as);
      officer.open("/accidents").lookCarefully("accidents" + as);
      officer.open("/rigs/" + rig.id().value()).lookCarefully("rig-kept" + as);
      officer.open("/loans/" + loan.value()).lookCarefully("loan-kept" + as);
      officer.page().navigate(page);
      officer
          .press("It need not be kept any more…")
          .fill("Why need nobody see it", "The insurer’s expert has photographed all of it.")
          .press(officer.page().locator("main button.danger"));
      assertTrue(officer.sees("because: The insurer’s expert"));
    } finally {
      rack.putAway(List.of(rig, late));
    }
  }

  private static void onPaper(Page page, String name) {
    page.pdf(
        new Page.PdfOptions()
            .setFormat("A4")
            .setPreferCSSPageSize(true)
            .setPath(Path.of("target", "screenshots", name + "-on-paper.pdf")));
  }
}
