package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

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
        java.util.List.of(),
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

  private static String pragma(java.sql.Statement statement, String name) throws SQLException {
    try (var found = statement.executeQuery("PRAGMA " + name)) {
      found.next();
      return found.getString(1);
    }
  }
}
