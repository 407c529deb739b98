package club.ascham.time;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.Settings;
import club.ascham.SettingsOf;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days are the club's, also where the clocks change: in London on 29 March and 25 October 2026. */
class ClubTimeTest {
  private static ClubTime at(String moment, String zone) {
    Settings settings = new SettingsOf(Path.of("nowhere"), ZoneId.of(zone));
    return new ClubTime(Clock.fixed(Instant.parse(moment), ZoneOffset.UTC), settings);
  }

  @ParameterizedTest(name = "{1} at {0} is {2}")
  @CsvSource({
    "2026-03-28T23:59:59Z, Europe/London, 2026-03-28",
    "2026-03-29T00:00:00Z, Europe/London, 2026-03-29",
    "2026-03-29T22:59:59Z, Europe/London, 2026-03-29",
    "2026-03-29T23:00:00Z, Europe/London, 2026-03-30",
    "2026-10-24T22:59:59Z, Europe/London, 2026-10-24",
    "2026-10-24T23:00:00Z, Europe/London, 2026-10-25",
    "2026-10-25T23:59:59Z, Europe/London, 2026-10-25",
    "2026-10-26T00:00:00Z, Europe/London, 2026-10-26",
    "2026-11-26T02:00:00Z, America/New_York, 2026-11-25",
    "2026-11-25T11:00:00Z, Pacific/Auckland, 2026-11-26",
  })
  void today_isTheClubsDay(String moment, String zone, LocalDate today) {
    assertEquals(today, at(moment, zone).today());
  }

  @ParameterizedTest(name = "{0} in London is {1}")
  @CsvSource({
    "2026-03-29T00:30, 2026-03-29T00:30:00Z",
    // there is no 01:30 on that day: it is read as the hour after
    "2026-03-29T01:30, 2026-03-29T01:30:00Z",
    "2026-03-29T02:30, 2026-03-29T01:30:00Z",
    // 01:30 is there twice on that day: the first counts
    "2026-10-25T01:30, 2026-10-25T00:30:00Z",
    "2026-10-25T02:30, 2026-10-25T02:30:00Z",
  })
  void aTypedTime_isOneMoment(LocalDateTime typed, Instant moment) {
    assertEquals(moment, at("2026-01-01T00:00:00Z", "Europe/London").momentOf(typed));
  }

  @ParameterizedTest(name = "28 days from {0} are due on {1}")
  @CsvSource({"2026-03-15T19:00:00Z, 2026-04-12", "2026-10-11T18:00:00Z, 2026-11-08"})
  void aLoanOverTheChange_isDueAfterAsManyDays(String issued, LocalDate due) {
    assertEquals(due, at(issued, "Europe/London").today().plusDays(28));
  }
}
