package club.ascham.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.AccountId;
import club.ascham.people.Session;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SessionTest {
  private static final Instant EVENING = Instant.parse("2026-06-09T18:30:00Z");
  private static final Session SESSION = new Session(new AccountId(12), 3, EVENING);

  @Test
  void aSession_readsBackFromItsText() {
    assertEquals(Optional.of(SESSION), Session.parse(SESSION.text()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "officer", "12.3", "12.3.x", "12.3.1.1", "-1.3.1", "99999999999999999999.1.1"})
  void anythingElse_isNone(String text) {
    assertEquals(Optional.empty(), Session.parse(text));
  }

  @Test
  void itLasts_sevenDays() {
    Instant last = EVENING.plus(Session.LONGEST);
    assertTrue(SESSION.lasts(last.minusSeconds(1)));
    assertFalse(SESSION.lasts(last));
    assertTrue(SESSION.lasts(EVENING.minus(Duration.ofDays(1))), "a clock set back");
  }
}
