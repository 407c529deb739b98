package club.ascham.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.door.SignInRateLimit.Try;
import club.ascham.web.Caller;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class SignInRateLimitTest {
  private static final Instant EVENING = Instant.parse("2026-06-09T18:30:00Z");
  private static final Caller CLUB = new Caller("192.0.2.1", false);

  private final SignInRateLimit throttle = new SignInRateLimit(SignInRateLimit.FOR_PASSWORDS);

  @Test
  void theFirstFewWrongOnes_waitForNothing() {
    for (int i = 0; i < SignInRateLimit.FREE; i++) {
      assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), EVENING));
    }
    assertFalse(throttle.begin(petraAt(CLUB), EVENING).isZero());
  }

  @Test
  void theWaitGrows_toAMinuteAtMost_howeverOftenItWasWrong() {
    Instant now = EVENING;
    Duration before = Duration.ZERO;
    for (int i = 0; i < 40; i++) {
      Duration wait = throttle.begin(petraAt(CLUB), now);
      assertTrue(wait.compareTo(SignInRateLimit.LONGEST_WAIT) <= 0, wait.toString());
      if (!wait.isZero()) {
        assertTrue(wait.compareTo(before) >= 0, "grows");
        before = wait;
        now = now.plus(wait);
        assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), now), "after the wait, in");
      }
    }
    assertEquals(SignInRateLimit.LONGEST_WAIT, before);
  }

  /** Three codes in a million are right at any time. */
  @Test
  void aDayOfGuessingAtCodes_fromManyPlacesOrFromTheOwners_findsOneInLessThanOneOfTwoThousand() {
    SignInRateLimit codes = new SignInRateLimit(SignInRateLimit.FOR_CODES);
    int fromManyPlaces = 0;
    int fromTheOwners = 0;
    codes.begin(petraAt(CLUB), EVENING);
    codes.right(petraAt(CLUB), EVENING);
    for (int second = 0; second < Duration.ofDays(1).toSeconds(); second++) {
      Instant now = EVENING.plusSeconds(second);
      Caller another = new Caller("198.51." + second / 256 % 256 + "." + second % 256, false);
      fromManyPlaces += codes.begin(petraAt(another), now).isZero() ? 1 : 0;
      fromTheOwners += codes.begin(petraAt(CLUB), now).isZero() ? 1 : 0;
    }
    assertTrue(fromManyPlaces * 3e-6 < 1 / 2000.0, "tries: " + fromManyPlaces);
    assertTrue(fromTheOwners * 3e-6 < 1 / 2000.0, "tries: " + fromTheOwners);
  }

  @Test
  void askingWhileOneMustWait_makesItNoLonger() {
    wrong(petraAt(CLUB), SignInRateLimit.FREE);
    Duration first = throttle.begin(petraAt(CLUB), EVENING);
    for (int i = 0; i < 1000; i++) {
      assertEquals(first, throttle.begin(petraAt(CLUB), EVENING));
    }
  }

  @Test
  void aHundredAtOnce_areNoWayAround() {
    int looked = 0;
    for (int i = 0; i < 100; i++) {
      looked += throttle.begin(petraAt(CLUB), EVENING).isZero() ? 1 : 0;
    }
    assertEquals(SignInRateLimit.FREE, looked);
  }

  @Test
  void aRightOne_beginsAnew() {
    wrong(petraAt(CLUB), SignInRateLimit.FREE - 1);
    assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), EVENING));
    throttle.right(petraAt(CLUB), EVENING);
    wrong(petraAt(CLUB), SignInRateLimit.FREE);
    assertFalse(throttle.begin(petraAt(CLUB), EVENING).isZero());
  }

  @Test
  void aQuarterOfAnHourLater_wrongOnesAreForgotten() {
    wrong(petraAt(CLUB), SignInRateLimit.FREE);
    Instant later = EVENING.plus(SignInRateLimit.FORGOTTEN).plusSeconds(1);
    for (int i = 0; i < SignInRateLimit.FREE; i++) {
      assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), later));
    }
  }

  @Test
  void guessingFromElsewhere_neverKeepsTheOwnerOut() {
    for (int i = 0; i < 500; i++) {
      throttle.begin(petraAt(new Caller("198.51.100." + i, false)), EVENING);
    }
    assertFalse(throttle.begin(petraAt(CLUB), EVENING).isZero(), "a stranger waits");
    assertTrue(
        throttle.begin(petraAt(CLUB), EVENING).compareTo(SignInRateLimit.CROWD_EACH) <= 0,
        "for a moment");
    assertEquals(
        Duration.ZERO,
        throttle.begin(new Try("petra", CLUB, "her own phone"), EVENING),
        "in her own browser");
  }

  @Test
  void whoGotInFromAnAddressBefore_isNoStrangerThere() {
    throttle.begin(petraAt(CLUB), EVENING);
    throttle.right(petraAt(CLUB), EVENING);
    for (int i = 0; i < 500; i++) {
      throttle.begin(petraAt(new Caller("198.51.100." + i, false)), EVENING);
      throttle.begin(new Try("nobody " + i, CLUB, null), EVENING);
    }
    assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), EVENING));
  }

  @Test
  void wholeClubBehindOneAddress_mistypesFreely_aSprayOfNamesDoesNot() {
    int looked = 0;
    for (int i = 0; i < 500; i++) {
      looked += throttle.begin(new Try("name " + i, CLUB, null), EVENING).isZero() ? 1 : 0;
    }
    assertEquals(SignInRateLimit.CROWD, looked);
  }

  @Test
  void aNameInCapitals_isTheSameName() {
    wrong(petraAt(CLUB), SignInRateLimit.FREE);
    assertFalse(throttle.begin(new Try("PETRA", CLUB, null), EVENING).isZero());
  }

  @Test
  void aClockSetBack_keepsNobodyOut() {
    wrong(petraAt(CLUB), SignInRateLimit.FREE);
    assertEquals(Duration.ZERO, throttle.begin(petraAt(CLUB), EVENING.minus(Duration.ofHours(3))));
  }

  @Test
  void aFloodOfNames_isRememberedInBoundedSpace() {
    Caller here = new Caller("127.0.0.1", true);
    for (int i = 0; i < 3 * SignInRateLimit.REMEMBERED_AT_MOST; i++) {
      throttle.begin(new Try("name " + i, here, null), EVENING);
    }
    assertEquals(SignInRateLimit.REMEMBERED_AT_MOST, throttle.remembered());
  }

  private void wrong(Try tried, int times) {
    for (int i = 0; i < times; i++) {
      assertEquals(Duration.ZERO, throttle.begin(tried, EVENING));
    }
  }

  private static Try petraAt(Caller caller) {
    return new Try("petra", caller, null);
  }
}
