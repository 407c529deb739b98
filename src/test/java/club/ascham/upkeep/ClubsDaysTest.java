package club.ascham.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneId;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an officer reads as due falls on the club's own days, not on those of UTC. */
class ClubsDaysTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "passed {1} in {0}: from {2}, due {3}; asked then, on {2}")
  @CsvSource({
    "Europe/London, 2026-01-01T23:30:00.000Z, 1 Jan 2026, 2026-01-11, 2026-01-01",
    "Europe/London, 2026-07-01T23:30:00.000Z, 2 Jul 2026, 2026-07-12, 2026-07-02",
    "Europe/London, 2026-03-29T00:30:00.000Z, 29 Mar 2026, 2026-04-08, 2026-03-29",
    "Europe/London, 2026-10-24T23:30:00.000Z, 25 Oct 2026, 2026-11-04, 2026-10-25",
    "Europe/London, 2026-10-25T23:30:00.000Z, 25 Oct 2026, 2026-11-04, 2026-10-25",
    "Pacific/Auckland, 2026-06-09T12:30:00.000Z, 10 Jun 2026, 2026-06-20, 2026-06-10",
    "America/Los_Angeles, 2026-06-10T03:30:00.000Z, 9 Jun 2026, 2026-06-19, 2026-06-09"
  })
  void anInspection_countsFromTheClubsDay(
      String zone, String passed, String said, String due, String asked) throws SQLException {
    try (Connection file = fileOf(zone);
        Statement run = file.createStatement()) {
      run.execute(
          "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)"
              + " VALUES (1, 'STRINGER_INSPECTION', '%1$s', '%1$s', 1, 'PASSED')"
                  .formatted(passed));
      assertEquals(due, text(run, "SELECT due_on FROM upkeep_plan"));
      assertEquals("10 days since " + said, text(run, "SELECT because FROM upkeep_plan"));
      run.execute(
          "INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks)"
              + " VALUES (1, 'STRINGER_INSPECTION', '%s', 1, 'fell', 1)".formatted(passed));
      assertEquals(asked, text(run, "SELECT due_on FROM work_due WHERE task_id IS NOT NULL"));
    }
  }

  @ParameterizedTest(name = "{0}: lent at {1}, counts: {2}")
  @CsvSource({
    "Pacific/Auckland, 2026-06-08T20:05:00.000Z, 2026-06-09",
    "Pacific/Auckland, 2026-06-08T11:59:59.999Z,",
    "America/Los_Angeles, 2026-06-09T06:59:59.999Z,",
    "America/Los_Angeles, 2026-06-09T07:00:00.000Z, 2026-06-09"
  })
  void aLoanOnTheFirstDay_counts_fromTheClubsMidnight(String zone, String out, String due)
      throws SQLException {
    try (Connection file = fileOf(zone);
        Statement run = file.createStatement()) {
      run.execute("UPDATE upkeep_rule SET every_days = NULL, every_loans = 1");
      run.execute(
          "INSERT INTO loan (id, kind, leader, issued_at, due_on, issued_by, recorded_at)"
              + " VALUES (1, 'SESSION', 'l', '%1$s', '2026-06-09', 1, '%1$s')".formatted(out));
      run.execute(
          "INSERT INTO loan_line (loan_id, item_id, out_at) VALUES (1, 1, '%s')".formatted(out));
      assertEquals(due, text(run, "SELECT due_on FROM upkeep_plan"));
    }
  }

  /** One stringer, on the register since 9 June 2026, inspected every ten days. */
  private Connection fileOf(String zone) throws SQLException {
    Path path = folder.resolve("ascham.db");
    Schema.of("jdbc:sqlite:" + path).load().migrate();
    Connection file = SqliteFile.open(path);
    try (Statement run = file.createStatement()) {
      for (ClubsDays.Offset one : ClubsDays.of(ZoneId.of(zone))) {
        run.execute(
            "INSERT INTO clock_offset VALUES ('%s', '%s', %d)"
                .formatted(one.fromAt(), one.fromLocal(), one.aheadSeconds()));
      }
      run.execute(
          "INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
      run.execute("DELETE FROM upkeep_rule");
      run.execute(
          "INSERT INTO upkeep_rule (item_kind, work, every_days, blocks, source)"
              + " VALUES ('STRINGER', 'STRINGER_INSPECTION', 10, 1, 's')");
      run.execute(
          "INSERT INTO item (id, code, kind, registered_on) VALUES (1, 'X00010', 'STRINGER', '2026-06-09')");
    }
    return file;
  }

  private static String text(Statement run, String sql) throws SQLException {
    try (ResultSet found = run.executeQuery(sql)) {
      return found.next() ? found.getString(1) : null;
    }
  }
}
