package club.ascham.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.SettingsOf;
import club.ascham.time.ClubTimeOf;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A clock and time itself, each moved by the test. */
class ClockWatchTest {
  private Instant clock = Instant.parse("2026-11-25T21:04:09Z");
  private Duration elapsed = Duration.ofHours(7);
  private final ClockWatch watch =
      new ClockWatch(
          ClubTimeOf.clock(
              new Clock() {
                @Override
                public Instant instant() {
                  return clock;
                }

                @Override
                public ZoneId getZone() {
                  return ZoneOffset.UTC;
                }

                @Override
                public Clock withZone(ZoneId zone) {
                  throw new UnsupportedOperationException();
                }
              },
              new SettingsOf(Path.of("."), ZoneId.of("Europe/London"))),
          () -> elapsed);

  private void timePasses(Duration length) {
    elapsed = elapsed.plus(length);
    clock = clock.plus(length);
  }

  private void clockIsMoved(Duration by) {
    clock = clock.plus(by);
  }

  private Optional<Duration> jumped() {
    return watch.jump().map(Jump::by);
  }

  @Test
  void aClockThatGoesAsTimeDoes_isNoNews_howeverLong() {
    for (int day = 0; day < 400; day++) {
      timePasses(Duration.ofDays(1));
      assertEquals(Optional.empty(), jumped());
    }
  }

  @ParameterizedTest(name = "moved by {0}")
  @CsvSource({"PT2M", "PT-2M", "PT1S"})
  void aClockSetRightByALittle_isNoNews(Duration by) {
    clockIsMoved(by);
    assertEquals(Optional.empty(), jumped());
  }

  @ParameterizedTest(name = "moved by {0}")
  @CsvSource({
    "PT2M1S, set forward by 2 min",
    "PT1H59M59.9S, set forward by 2 h 0 min",
    "PT-1H-5M, set back by 1 h 5 min",
    "PT8784H, set forward by 366 d 0 h",
    "PT-50H, set back by 2 d 2 h",
  })
  void aClockThatJumped_isTold(Duration by, String said) {
    timePasses(Duration.ofDays(3));
    clockIsMoved(by);
    assertEquals(Optional.of(said), watch.jump().map(Jump::said));
    timePasses(Duration.ofDays(3));
    assertEquals(Optional.of(by), jumped(), "until it is read");
  }

  @Test
  void whenItWasSeen_staysWhenItIsAskedAgain() {
    clockIsMoved(Duration.ofHours(2));
    Instant seen = watch.jump().orElseThrow().noticed();
    timePasses(Duration.ofHours(5));
    assertEquals(seen, watch.jump().orElseThrow().noticed());
    assertEquals(
        Optional.of(
            "The server’s clock was set forward by 2 h 0 min while it ran (seen on Wed 25 Nov 2026,"
                + " 23:04). See that it is right; what was entered around then may bear a wrong"
                + " time."),
        watch.worry());
  }

  @Test
  void putRightAgain_itIsNoNews() {
    clockIsMoved(Duration.ofDays(365));
    assertEquals(Optional.of(Duration.ofDays(365)), jumped());
    timePasses(Duration.ofMinutes(20));
    clockIsMoved(Duration.ofDays(-365));
    assertEquals(Optional.empty(), jumped());
  }

  @Test
  void onceItIsRead_onlyTheNextIsNews() {
    clockIsMoved(Duration.ofHours(2));
    watch.read();
    assertEquals(Optional.empty(), jumped());
    timePasses(Duration.ofDays(1));
    clockIsMoved(Duration.ofHours(-1));
    assertEquals(Optional.of(Duration.ofHours(-1)), jumped());
  }
}
