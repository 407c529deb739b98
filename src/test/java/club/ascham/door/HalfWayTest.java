package club.ascham.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.AccountId;
import club.ascham.people.Accounts;
import club.ascham.people.Role;
import club.ascham.people.Session;
import club.ascham.units.LengthUnit;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HalfWayTest {
  private static final Instant EVENING = Instant.parse("2026-06-09T18:30:00Z");
  private static final HalfWay HALF_WAY = HalfWay.of(account("a hash", true), EVENING);

  private static Accounts.Credentials account(String passwordHash, boolean secondStep) {
    return new Accounts.Credentials(
        new AccountId(7),
        "pia",
        passwordHash,
        null,
        Role.VOLUNTEER,
        null,
        LengthUnit.INCH,
        secondStep,
        false);
  }

  @Test
  void itReadsBackFromItsText_andIsNoSession() {
    assertEquals(Optional.of(HALF_WAY), HalfWay.parse(HALF_WAY.text()));
    assertEquals(Optional.empty(), Session.parse(HALF_WAY.text()));
    assertEquals(Optional.empty(), HalfWay.parse(new Session(new AccountId(7), 1, EVENING).text()));
    assertFalse(HALF_WAY.text().contains("a hash"));
  }

  @Test
  void itLasts_fiveMinutes() {
    Instant last = EVENING.plus(HalfWay.LASTS);
    assertTrue(HALF_WAY.leadsOn(account("a hash", true), last.minusSeconds(1)));
    assertFalse(HALF_WAY.leadsOn(account("a hash", true), last));
  }

  @Test
  void itEnds_withAnotherPassword_andWithoutASecondStep() {
    assertFalse(HALF_WAY.leadsOn(account("another", true), EVENING));
    assertFalse(HALF_WAY.leadsOn(account("a hash", false), EVENING));
  }
}
