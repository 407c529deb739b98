package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * What people take along on paper is one sheet of it: the slip, the sheet for the bench, the fleet.
 */
@QuarkusTest
@Order(1)
class PrintTest {
  private static final Pattern ONE_PAGE = Pattern.compile("/Type\\s*/Page\\b");

  @Inject Rows rows;
  @Inject Rack rack;
  @Inject ClubTime time;
  @TestHTTPResource String address;

  @Test
  void slipAndSetUpSheet_eachFitOneA4() {
    long loan =
        rows.number(
            """
            SELECT l.loan_id FROM loan_line l JOIN loan k ON k.id = l.loan_id AND k.kind = 'KIT'
             WHERE l.back_at IS NULL GROUP BY l.loan_id ORDER BY count(*) DESC LIMIT 1\
            """);
    long rig =
        rows.number("SELECT min(rig_id) FROM rig_standing WHERE state_if_inspected = 'READY'");
    try (Person officer = Person.at(address, 1280, ColorScheme.LIGHT, true).signIn("officer")) {
      Stream.of("/loans/" + loan + "/slip", "/rigs/" + rig + "/sheet")
          .forEach(path -> assertEquals(1, sheets(officer.open(path).page()), path));
    }
  }

  @Test
  void fleetOfALargeClub_fitsOneA4() {
    List<Rack.Hung> rigs = rack.readyRigs(48);
    try (Person committee = Person.at(address, 1280, ColorScheme.LIGHT, true).signIn("committee")) {
      manyLengthsWeightsAndStates(rigs);
      Page page = committee.open("/fleet").page();
      assertTrue(
          rows.number("SELECT count(*) FROM rig WHERE dissolved_at IS NULL") >= 80, "a large club");
      assertTrue(committee.sees(" more"), "the lists are longer than the sheet has room for");
      committee.keep("fleet-of-a-large-club");
      assertEquals(1, sheets(page), "/fleet");
    } finally {
      rack.clear(rigs);
    }
  }

  /** Every bow length and hand there is, and of everything that a committee asks after, many. */
  private void manyLengthsWeightsAndStates(List<Rack.Hung> rigs) {
    String[] sizes = {"SHORT", "MEDIUM", "LONG"};
    for (int i = 0; i < rigs.size(); i++) {
      Rack.Hung rig = rigs.get(i);
      rows.change(
          "UPDATE riser SET length_in = ?2, hand = ?3 WHERE id = ?1",
          rig.riser(),
          21 + 2 * (i % 4),
          i % 5 == 0 ? "LEFT" : "RIGHT");
      rows.change(
          "UPDATE limbs SET size = ?2, marked_lb = ?3 WHERE id = ?1",
          rig.limbs(),
          sizes[i % 3],
          12 + i % 12 * 2);
      switch (i % 6) {
        case 0 -> rack.neverInspected(rig.riser());
        case 1 ->
            rack.withdraw(
                rig.limbs(),
                "The limbs: a hairline crack along the glass of the lower limb, from the fork"
                    + " to the first third; seen at the check after the holiday course, and"
                    + " again in daylight the next morning by the coach.");
        case 2 -> rack.lend(rig, "Alder Bracken " + i, time.today().minusDays(i + 1));
        case 3 -> rack.check(rig, "ADJUST");
        case 4 -> rack.firstUsed(rig.string(), time.today().minusDays(800));
        default -> {}
      }
    }
  }

  private static long sheets(Page page) {
    byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
    return ONE_PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1)).results().count();
  }
}
