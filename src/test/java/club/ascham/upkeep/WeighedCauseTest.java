package club.ascham.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.start.CarriedOver;
import club.ascham.store.DataFolder;
import club.ascham.store.SqliteFile;
import club.ascham.story.OlderClub;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A club that began before the scale could ask for work keeps what was asked, and takes one more
 * word.
 */
class WeighedCauseTest {
  @TempDir Path folder;

  @Test
  void anOlderFile_keepsItsTasks_takesTheNewCause_andStillRefusesAnyOther() throws Exception {
    DataFolder club = new DataFolder(folder.resolve("club"));
    OlderClub.in(club, "030", "hash", "Wystan Holt");
    OlderClub.change(
        club,
        "Asked for work.",
        "INSERT INTO item (id, code, kind, registered_on) VALUES (1, 'L01011', 'LIMBS', '2026-01-01')",
        task("CHANGING"));
    CarriedOver.folder(club);
    try (Connection connection = SqliteFile.open(club.file());
        Statement statement = connection.createStatement()) {
      assertEquals("CHANGING", text(statement, "SELECT cause FROM upkeep_task"));
      statement.execute("DELETE FROM upkeep_task");
      statement.execute(task("WEIGHED"));
      statement.execute("DELETE FROM upkeep_task");
      SQLException refused =
          assertThrows(SQLException.class, () -> statement.execute(task("GUESSED")));
      assertTrue(refused.getMessage().contains("CHECK"), refused.getMessage());
      assertEquals("ok", text(statement, "PRAGMA integrity_check"));
    }
  }

  private static String task(String cause) {
    return "INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause) VALUES"
        + " (1, 'LIMB_INSPECTION', '2026-01-01T10:00:00.000Z', 1, 'why', 0, '"
        + cause
        + "')";
  }

  private static String text(Statement statement, String sql) throws SQLException {
    try (ResultSet rows = statement.executeQuery(sql)) {
      return rows.next() ? rows.getString(1) : null;
    }
  }
}
