package club.ascham.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateLimitTest {
  private static final Instant NOW = Instant.parse("2026-06-09T18:30:00Z");
  private final RateLimit pace = new RateLimit(3, Duration.ofSeconds(2), 100);

  @Test
  void threeAtOnce_thenOneEveryTwoSeconds() {
    for (int i = 0; i < 3; i++) {
      assertEquals(Duration.ZERO, pace.take("a", NOW));
    }
    assertEquals(Duration.ofSeconds(2), pace.take("a", NOW));
    assertEquals(Duration.ofSeconds(1), pace.take("a", NOW.plusSeconds(1)));
    assertEquals(Duration.ZERO, pace.take("a", NOW.plusSeconds(2)));
    assertFalse(pace.take("a", NOW.plusSeconds(2)).isZero());
  }

  @Test
  void another_hasTurnsOfItsOwn() {
    for (int i = 0; i < 4; i++) {
      pace.take("a", NOW);
    }
    assertEquals(Duration.ZERO, pace.take("b", NOW));
  }

  @Test
  void aTurnGivenBack_canBeTakenAgain() {
    for (int i = 0; i < 3; i++) {
      pace.take("a", NOW);
    }
    pace.giveBack("a", NOW);
    assertEquals(Duration.ZERO, pace.take("a", NOW));
  }

  @Test
  void aClockSetBack_startsAnew() {
    for (int i = 0; i < 4; i++) {
      pace.take("a", NOW);
    }
    assertEquals(Duration.ZERO, pace.take("a", NOW.minus(Duration.ofHours(1))));
  }

  @Test
  void onlyTheLastHundred_areRemembered() {
    for (int i = 0; i < 1000; i++) {
      pace.take("caller " + i, NOW);
    }
    assertEquals(100, pace.remembered());
  }

  @ParameterizedTest
  @CsvSource({
    "192.0.2.7, 192.0.2.7, false",
    "127.0.0.1, 127.0.0.1, true",
    "::1, 0000000000000000, true",
    "2001:db8:1:2::7, 20010db800010002, false",
    "2001:db8:1:2:aaaa:bbbb:cccc:dddd, 20010db800010002, false"
  })
  void aCaller_isItsAddress_orItsIpv6Network(String literal, String address, boolean here) {
    assertEquals(new Caller(address, here), Caller.of(literal));
  }
}
