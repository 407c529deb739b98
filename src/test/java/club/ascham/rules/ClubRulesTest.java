package club.ascham.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClubRulesTest {
  @ParameterizedTest(name = "{0} out, {1} sessions a week of {2} shots: {3} shots")
  @CsvSource({
    "PT3H,  1.5, 60, 60",
    "P1D,   1.5, 60, 60",
    "P7D,   1.5, 60, 90",
    "P28D,  1.5, 60, 360",
    "P28D,  0,   60, 60",
    "P365D, 2,   72, 7509",
    "P28D,  1.5, 0,  0",
  })
  void shotsAreEstimated_fromTheWeeksOut_andNeverUnderOneSession(
      Duration out, double sessionsAWeek, int shotsASession, int shots) {
    assertEquals(shots, rules(sessionsAWeek, shotsASession).shotsWhileOut(out));
  }

  @Test
  void nobodyBringsAThingBackBeforeItWentOut() {
    assertThrows(
        IllegalArgumentException.class, () -> rules(1, 60).shotsWhileOut(Duration.ofHours(-1)));
  }

  private static ClubRules rules(double sessionsAWeek, int shotsASession) {
    return new ClubRules(
        "Club",
        false,
        "FRENCH_CLUB",
        6,
        28,
        0,
        sessionsAWeek,
        shotsASession,
        180,
        10,
        60,
        "in print",
        365,
        null,
        null,
        null,
        null,
        null,
        0);
  }
}
