package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.RigId;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A column finds its component by its name. */
class RowsTest {
  private Connection file;
  private Rows rows;

  private record Distances(Double upper, Double lower) {}

  private record Seen(RigId rig, Instant backAt, Distances tiller) {}

  private record Pair(Distances first, Distances second) {}

  private record Only(RigId rig) {}

  @BeforeEach
  void open() throws SQLException {
    file = DriverManager.getConnection("jdbc:sqlite::memory:");
    rows = RowsOf.connection(file);
  }

  @AfterEach
  void close() throws SQLException {
    file.close();
  }

  @Test
  void columns_inAnotherOrder_goToTheComponentsOfTheirNames() {
    assertEquals(
        new Seen(new RigId(4), Instant.parse("2026-05-01T10:00:00Z"), new Distances(8.5, 7.5)),
        one(
            Seen.class,
            "SELECT 7.5 AS lower, '2026-05-01T10:00:00.000Z' AS back_at, 8.5 AS upper, 4 AS rig_id"));
  }

  @Test
  void joinedRecord_allItsColumnsNull_isNull() {
    assertNull(
        one(
                Seen.class,
                "SELECT 4 AS rig, '2026-05-01T10:00:00.000Z' AS back_at,"
                    + " NULL AS tiller_upper, NULL AS tiller_lower")
            .tiller());
  }

  @Test
  void twoJoinedRecords_alikeInside_areToldApartByTheirNames() {
    assertEquals(
        new Pair(new Distances(3.0, 4.0), new Distances(1.0, 2.0)),
        one(
            Pair.class,
            "SELECT 1.0 AS second_upper, 2.0 AS second_lower, 3.0 AS first_upper, 4.0 AS first_lower"));
    refused(
        Pair.class,
        "SELECT 1.0 AS upper, 2.0 AS lower, 3.0 AS a, 4.0 AS b",
        "no column for first.upper");
  }

  @Test
  void columnOfAnotherName_isRefused_whateverItHolds() {
    refused(Distances.class, "SELECT 1.0 AS upper, 2.0 AS lwer", "no column for lower");
    refused(
        Distances.class,
        "SELECT 1.0 AS upper, 2.0 AS lower, 3.0 AS middle",
        "columns without a component");
    refused(Distances.class, "SELECT 1.0 AS upper, 2.0 AS lower, 3.0 AS middle", "middle");
  }

  @Test
  void oneColumnForOneComponent_needsNoName() {
    assertEquals(new Only(new RigId(4)), one(Only.class, "SELECT max(3, 4)"));
  }

  private <R extends Record> R one(Class<R> shape, String sql) {
    return rows.one(shape, sql).orElseThrow();
  }

  private void refused(Class<? extends Record> shape, String sql, String words) {
    String said =
        assertThrows(IllegalStateException.class, () -> rows.one(shape, sql)).getMessage();
    assertTrue(said.contains(words), said);
  }
}
