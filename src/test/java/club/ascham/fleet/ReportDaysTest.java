package club.ascham.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Rows;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Twelve months are the club's: its first of July began at 23:00 UTC on the last of June. */
@QuarkusTest
class ReportDaysTest {
  private static final String BEFORE = "2022-06-30T22:59:59.999Z";
  private static final String FIRST_OF_JULY = "2022-06-30T23:00:00.000Z";

  @Inject Rows rows;
  @Inject Rack rack;
  @Inject ReportReading reporting;
  @Inject FleetReading reading;

  private Rack.Hung rig;

  @BeforeEach
  void hang() {
    rig = rack.readyRig("RIGHT", 20);
  }

  @AfterEach
  void clear() {
    rows.change("DELETE FROM upkeep_record WHERE item_id = ?1", rig.riser());
    rack.clear(List.of(rig));
  }

  @Test
  void whatWasCheckedInTheFirstHourOfAMonth_isOfThatMonth() {
    int june = checkedIn(6);
    int july = checkedIn(7);
    checked(FIRST_OF_JULY, "FIT");
    assertEquals(june, checkedIn(6));
    assertEquals(july + 1, checkedIn(7));
    checked(BEFORE, "FIT");
    assertEquals(june + 1, checkedIn(6));
    assertEquals(july + 1, checkedIn(7));
  }

  @Test
  void twelveMonths_beginAtTheClubsMidnight() {
    LocalDate today = LocalDate.of(2023, 7, 1);
    AnnualReport before = reporting.lastTwelveMonths(today);
    for (String at : List.of(BEFORE, FIRST_OF_JULY)) {
      rows.change(
          "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, released_at,"
              + " released_by, release_why) VALUES (?1, ?2, ?2, 1, 'a crack', ?2, 1, 'none')",
          rig.riser(),
          at);
      rows.change(
          "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)"
              + " VALUES (?1, 'RISER_INSPECTION', ?2, ?2, 1, 'PASSED')",
          rig.riser(),
          at);
    }
    AnnualReport after = reporting.lastTwelveMonths(today);
    assertEquals(before.withdrawn() + 1, after.withdrawn());
    assertEquals(done(before) + 1, done(after));
  }

  @Test
  void troubles_beginAtTheClubsMidnight() {
    checked(BEFORE, "ADJUST");
    checked(FIRST_OF_JULY, "ADJUST");
    assertEquals(1, reading.troubles(LocalDate.of(2023, 7, 1), rig.id().value()).size());
  }

  private void checked(String at, String verdict) {
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (?1, 'LOOK', ?2, ?2, 1, 1, ?3)""",
        rig.id(),
        at,
        verdict);
  }

  private int checkedIn(int month) {
    return reporting.condition(LocalDate.of(2022, 8, 1)).stream()
        .filter(one -> one.from().equals(LocalDate.of(2022, month, 1)))
        .mapToInt(one -> one.fit() + one.unfit())
        .sum();
  }

  private static int done(AnnualReport report) {
    return report.work().stream().mapToInt(AnnualReport.WorkDone::done).sum();
  }
}
