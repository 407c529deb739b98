package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class SchemaTest {
  @Inject DataSource source;
  @Inject Rows rows;
  @Inject Flyway flyway;
  @Inject EntityManagerFactory factory;

  @Test
  void aFreshFile_isMigratedToTheNewestVersion_andValid() {
    flyway.validate();
    assertEquals(0, flyway.info().pending().length);
  }

  @Test
  void theFile_isOpenedWithTheSettingsThatWereMeasured() throws SQLException {
    try (Connection connection = source.getConnection();
        var statement = connection.createStatement()) {
      assertEquals("wal", pragma(statement, "journal_mode"));
      assertEquals(
          "2", pragma(statement, "synchronous"), "2 is FULL: an acknowledged save is on disk");
      assertEquals("1", pragma(statement, "foreign_keys"));
    }
  }

  @Test
  void everyTableOfOurs_isStrict() {
    assertEquals(
        List.of(),
        rows.texts(
            """
            SELECT name FROM pragma_table_list
             WHERE schema = 'main' AND type = 'table' AND strict = 0
               AND name NOT LIKE 'sqlite%' AND name NOT LIKE 'flyway%'"""));
  }

  @Test
  void everyColumnAnEntityNames_existsInItsTable() {
    var entities = factory.getMetamodel().getEntities();
    assertTrue(entities.size() > 0, "some entity is looked at");
    try (var session = factory.createEntityManager()) {
      for (var entity : entities) {
        session
            .createQuery("from " + entity.getName(), entity.getJavaType())
            .setMaxResults(1)
            .getResultList();
      }
    }
  }

  private static String pragma(Statement statement, String name) throws SQLException {
    try (var found = statement.executeQuery("PRAGMA " + name)) {
      found.next();
      return found.getString(1);
    }
  }

  /** The clocks may be as far from UTC as they are anywhere: days are the club's, moments UTC's. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pacific/Pago_Pago",
        "America/New_York",
        "Europe/London",
        "Asia/Kolkata",
        "Pacific/Kiritimati"
      })
  void aLoanOfAnEvening_mayBeDueThatDay_andNotTwoDaysBefore(String zone) throws SQLException {
    ZonedDateTime evening = ZonedDateTime.of(2026, 11, 25, 21, 0, 0, 0, ZoneId.of(zone));
    String issued = Stored.moment(evening.toInstant());
    try (Connection connection = source.getConnection()) {
      connection.setAutoCommit(false);
      try (PreparedStatement loan =
          connection.prepareStatement(
              "UPDATE loan SET issued_at = ?1, due_on = ?2 WHERE id = (SELECT min(id) FROM loan WHERE kind = 'KIT')")) {
        loan.setString(1, issued);
        loan.setString(2, evening.toLocalDate().toString());
        assertEquals(1, loan.executeUpdate());
        loan.setString(2, evening.toLocalDate().minusDays(2).toString());
        assertThrows(SQLException.class, loan::executeUpdate);
      } finally {
        connection.rollback();
        connection.setAutoCommit(true);
      }
    }
  }
}
