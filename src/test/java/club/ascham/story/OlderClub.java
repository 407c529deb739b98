package club.ascham.story;

import club.ascham.SettingsOf;
import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.SqliteFile;
import club.ascham.time.ClubTime;
import club.ascham.time.ClubTimeOf;
import club.ascham.time.TestClock;
import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneId;
import java.util.List;
import org.flywaydb.core.Flyway;

/** A data folder as a program from before 1.0.0 left it: sealed, and stopped. Without its views. */
public final class OlderClub {
  private OlderClub() {}

  /**
   * With one officer and one borrower.
   *
   * @param schema the last migration it knew, such as {@code 036}
   */
  public static void in(DataFolder folder, String schema, String officersHash, String borrower)
      throws IOException, SQLException {
    Files.createDirectories(folder.path());
    migrate(folder, schema);
    ClubTime time =
        ClubTimeOf.clock(
            TestClock.running(), new SettingsOf(folder.path(), ZoneId.of("Europe/London")));
    try (Connection file = SqliteFile.open(folder.file())) {
      keepALogOfWrites(file);
      Rows rows = RowsOf.connection(file);
      Story story = new Story(rows, time);
      SealedEntries sealed = SealedEntries.before(rows);
      Seals seals = new Seals(rows, sealed, new PersonalValues(rows), story, time);
      rows.change(
          "INSERT INTO club (id, name, demo, brace_table) VALUES (1, 'Fen Archers', 0,"
              + " 'TRADE_OUTREACH_2020')");
      rows.change(
          "INSERT INTO account (name, password_hash, role) VALUES ('officer', ?1, 'OFFICER')",
          officersHash);
      new Watch(rows, story, sealed, time).begin();
      seals.close();
      rows.change(
          "INSERT INTO borrower (name, contact, age_band) VALUES (?1, 'someone@example.org',"
              + " 'ADULT')",
          borrower);
      tell(folder, rows, "Entered a borrower.");
    }
  }

  /**
   * Tells of what was changed by SQL, and seals it.
   *
   * @param changes without the triggers that plan upkeep, which ask views that are not there
   */
  public static void change(DataFolder folder, String sentence, String... changes)
      throws SQLException {
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      String plans =
          "FROM sqlite_master WHERE type = 'trigger' AND name GLOB 'plan_*' ORDER BY name";
      List<String> sql = rows.texts("SELECT sql " + plans);
      rows.texts("SELECT name " + plans).forEach(name -> rows.change("DROP TRIGGER " + name));
      for (String change : changes) {
        rows.change(change);
      }
      sql.forEach(rows::change);
      tell(folder, rows, sentence);
    }
  }

  private static void tell(DataFolder folder, Rows rows, String sentence) {
    ClubTime time =
        ClubTimeOf.clock(
            TestClock.running(), new SettingsOf(folder.path(), ZoneId.of("Europe/London")));
    // In the columns that every version had.
    rows.change(
        "INSERT INTO story (happened_at, recorded_at, sentence) VALUES (?1, ?1, ?2)",
        time.now(),
        sentence);
    Story story = new Story(rows, time);
    new Seals(rows, SealedEntries.before(rows), new PersonalValues(rows), story, time).close();
  }

  private static void keepALogOfWrites(Connection file) throws SQLException {
    try (Statement statement = file.createStatement()) {
      statement.execute("PRAGMA journal_mode=WAL");
    }
  }

  private static void migrate(DataFolder folder, String schema) {
    Flyway.configure()
        .dataSource("jdbc:sqlite:" + folder.file() + "?foreign_keys=true", "", "")
        .locations("classpath:db/before")
        .target(schema)
        .load()
        .migrate();
  }
}
