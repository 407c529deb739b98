package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.time.ClubTime;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A receipt pressed too early, and undone; the pages of a session's set and of a change of parts.
 */
@QuarkusTest
@Order(1)
class UndoJourneyTest {
  @Inject Rack rack;
  @Inject ClubTime time;
  @TestHTTPResource String address;

  @ParameterizedTest
  @CsvSource({"360, LIGHT", "1280, DARK"})
  void aReceiptPressedTooEarly_isUndone_byWhoeverPressed(int width, ColorScheme theme) {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lend(rig, "Ottilie Early", time.today().plusDays(9));
    String as = "-" + width + "-" + theme.name().toLowerCase();
    try (Person volunteer = Person.at(address, width, theme, true).signIn("volunteer")) {
      volunteer
          .open("/rigs/" + rig.id().value() + "/change?place=limbs")
          .lookCarefully("change-on-loan" + as);
      volunteer.open("/receive/" + loan.value()).lookCarefully("receive-one" + as);
      volunteer.press(
          volunteer.page().locator("button:has-text('Receive what is ticked')").first());
      volunteer.lookCarefully("received" + as);
      volunteer.open("/loans/" + loan.value()).lookCarefully("loan-received" + as);
      volunteer.press("Undo this receipt");
      if (volunteer.page().url().contains("/undo/")) {
        volunteer.lookCarefully("undo" + as).press("Undo this receipt");
      }
      assertTrue(volunteer.page().url().endsWith("/loans/" + loan.value()), volunteer.words());
      assertTrue(volunteer.sees("Out") && volunteer.sees(rig.limbsCode()), volunteer.words());
      volunteer.lookCarefully("undone" + as);
      volunteer.open("/sessions/new").lookCarefully("session-set" + as);
    } finally {
      rack.putAway(List.of(rig));
    }
  }
}
