package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuietHourTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "a first one is due at once,              ,                     ,                     2026-11-25T21:00:00Z, true",
    "before the hour yesterday's will do,     2026-11-24T03:31:00Z, ,                     2026-11-25T03:29:59Z, false",
    "at the hour it is due,                   2026-11-24T03:31:00Z, ,                     2026-11-25T03:30:00Z, true",
    "once it is made it is not due again,     2026-11-25T03:30:00Z, ,                     2026-11-25T03:35:00Z, false",
    "after a night without power it is due,   2026-11-24T03:31:00Z, ,                     2026-11-25T18:00:00Z, true",
    "one by the button in the morning counts, 2026-11-25T09:00:00Z, ,                     2026-11-25T18:00:00Z, false",
    "one before the quiet hour does not,      2026-11-25T03:00:00Z, ,                     2026-11-25T03:30:00Z, true",
    "what just failed is not tried again yet, 2026-11-24T03:31:00Z, 2026-11-25T03:31:00Z, 2026-11-25T04:30:00Z, false",
    "an hour later it is,                     2026-11-24T03:31:00Z, 2026-11-25T03:31:00Z, 2026-11-25T04:31:00Z, true",
    "the clock set back holds nothing up,     2027-01-01T03:31:00Z, 2027-01-01T03:31:00Z, 2026-11-25T04:30:00Z, true",
  })
  void theDailyBackup_isDue(String title, Instant made, Instant failed, Instant now, boolean due) {
    assertEquals(
        due,
        QuietHour.calls(
            made == null ? List.of() : List.of(made), failed, now, ZoneId.of("Europe/London")));
  }

  @ParameterizedTest(name = "{0} at {1}")
  @CsvSource({
    // the clocks go forward at 01:00 UTC on 29 March 2026, back on 25 October
    "Europe/London,    2026-03-28T12:00:00Z, 2026-03-28T03:30:00Z",
    "Europe/London,    2026-03-29T02:29:00Z, 2026-03-28T03:30:00Z",
    "Europe/London,    2026-03-29T02:30:00Z, 2026-03-29T02:30:00Z",
    "Europe/London,    2026-10-25T03:29:00Z, 2026-10-24T02:30:00Z",
    "Europe/London,    2026-10-25T03:30:00Z, 2026-10-25T03:30:00Z",
    "America/New_York, 2026-11-25T08:30:00Z, 2026-11-25T08:30:00Z",
    "Asia/Kolkata,     2026-11-25T08:30:00Z, 2026-11-24T22:00:00Z",
    // here they skip from 01:00 to 03:00
    "Antarctica/Troll, 2026-03-29T12:00:00Z, 2026-03-29T01:30:00Z",
  })
  void theQuietHour_isTheClubs(ZoneId zone, Instant now, Instant expected) {
    assertEquals(expected, QuietHour.lastBefore(now, zone));
  }
}
