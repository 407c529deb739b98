package club.ascham.concern;

import club.ascham.store.Schema;
import club.ascham.store.Stored;
import club.ascham.units.ItemCode;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;

/**
 * A real file with two risers, a pair of limbs, two strings and a dozen arrows, registered on 1
 * January 2026, without rules, and what tests lay into it: a day's facts happen at noon.
 */
final class KeptFile implements AutoCloseable {
  static final long RISER = 1;
  static final long LIMBS = 2;
  static final long STRING = 3;
  static final long OTHER_RISER = 4;
  static final long OTHER_STRING = 5;
  static final long ARROWS = 6;

  private final Connection connection;

  KeptFile() throws Exception {
    String url =
        "jdbc:sqlite:"
            + Files.createTempDirectory("kept").resolve("kept.db")
            + "?foreign_keys=true";
    Schema.of(url).load().migrate();
    connection = DriverManager.getConnection(url);
    connection.setAutoCommit(false);
    run("INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
    run("INSERT INTO borrower (id, name, contact, age_band) VALUES (1, 'b', 'c', 'ADULT')");
    run("DELETE FROM upkeep_rule");
    item(RISER, 'R', "RISER");
    riser(RISER);
    item(LIMBS, 'L', "LIMBS");
    run(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (2, 'ADJUSTABLE', 'MEDIUM', 24, 'ILF')");
    item(STRING, 'S', "STRING");
    run("INSERT INTO bowstring (id, for_bow_in, material) VALUES (3, 68, 'POLYESTER')");
    item(OTHER_RISER, 'R', "RISER");
    riser(OTHER_RISER);
    item(OTHER_STRING, 'S', "STRING");
    run("INSERT INTO bowstring (id, for_bow_in, material) VALUES (5, 68, 'POLYESTER')");
    item(ARROWS, 'A', "ARROWS");
    run("INSERT INTO kit_item (id, arrow_length, arrow_count, pool) VALUES (6, 70000000, 12, 0)");
  }

  private void item(long id, char letter, String kind) throws SQLException {
    run(
        "INSERT INTO item (id, code, kind, registered_on) VALUES (?, ?, ?, '2026-01-01')",
        id,
        code(letter, id).bare(),
        kind);
  }

  private void riser(long id) throws SQLException {
    run(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting) VALUES (?, 'ADJUSTABLE', 'RIGHT', 25, 'ILF')",
        id);
  }

  static ItemCode code(char letter, long id) {
    return ItemCode.of(letter, ItemCode.nextIssuable(letter, (int) id * 100).orElseThrow())
        .orElseThrow();
  }

  /** A whole rig of this body with the limbs and the string, set up on the day. */
  void rigSetUp(long rig, long body, long string, LocalDate on) throws SQLException {
    run(
        "INSERT INTO rig (id, style, level, assembled_at) VALUES (?, 'SPLIT_FINGER', 'BEGINNER', ?)",
        rig,
        noon(on).minusSeconds(3600));
    fit(rig, body, "BODY", on);
    fit(rig, LIMBS, "LIMBS", on);
    fit(rig, string, "STRING", on);
    setUp(rig, on, on);
  }

  void fit(long rig, long item, String place, LocalDate on) throws SQLException {
    run(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (?, ?, ?, ?)",
        rig,
        item,
        place,
        noon(on));
  }

  void takeOff(long item, LocalDate on) throws SQLException {
    run("UPDATE fitting SET until_at = ? WHERE item_id = ? AND until_at IS NULL", noon(on), item);
  }

  void setUp(long rig, LocalDate begun, LocalDate finished) throws SQLException {
    run(
        """
        INSERT INTO set_up (rig_id, begun_at, begun_by, finished_at, finished_by, brace, brace_from, tiller_upper,
                            tiller_lower, nocking, screws_seen)
        VALUES (?, ?, 1, ?, 1, 22000000, 'GRIP_THROAT', 18000000, 17700000, 400000, 1)""",
        rig,
        noon(begun),
        noon(finished).plusSeconds(60));
  }

  long lend(long rig, LocalDate on, long... items) throws SQLException {
    run(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', 1, ?, '2099-01-01', 1, ?, 1)""",
        noon(on),
        noon(on));
    long loan = number("SELECT max(id) FROM loan");
    for (long item : items) {
      run(
          "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?, ?, ?, ?)",
          loan,
          item,
          item == ARROWS ? null : rig,
          noon(on));
    }
    return loan;
  }

  void receive(long loan, LocalDate on, Integer shots) throws SQLException {
    run(
        "UPDATE loan_line SET back_at = ?, outcome = 'BACK', shots = ? WHERE loan_id = ?",
        noon(on).plusSeconds(60),
        shots,
        loan);
  }

  void check(long rig, LocalDate on, LocalDate released) throws SQLException {
    run(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict,
                               released_at, released_by)
        VALUES (?, 'LOOK', ?, ?, 1, 1, 'FIT', ?, iif(? IS NULL, NULL, 1))""",
        rig,
        noon(on),
        noon(on),
        released == null ? null : noon(released),
        released == null ? null : noon(released));
  }

  /** What happened on one day may have been typed in on a later one. */
  void withdraw(long item, LocalDate on, LocalDate typedIn, String why) throws SQLException {
    run(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why) VALUES (?, ?, ?, 1, ?)",
        item,
        noon(on),
        noon(typedIn),
        why);
  }

  /** As it comes in from a file: withdrawn and released, whatever was asked for by then. */
  void withdrawnAndReleased(long item, LocalDate on, LocalDate until, String why)
      throws SQLException {
    run(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, released_at, released_by, release_why)
        VALUES (?1, ?2, ?2, 1, ?3, ?4, 1, 'sound')""",
        item,
        noon(on),
        why,
        noon(until));
  }

  void release(long item, LocalDate on) throws SQLException {
    run(
        """
        UPDATE withdrawal SET released_at = ?1, released_by = 1, release_why = 'sound', looked_at = 'all of it',
               looked_by = 1, decided_at = ?1, decided_by = 1, no_work_why = 'a scratch and no crack'
         WHERE item_id = ?2 AND released_at IS NULL""",
        noon(on),
        item);
  }

  void rule(String kind, String work, Integer days, Integer loans, Integer shots, boolean blocks)
      throws SQLException {
    run(
        """
        INSERT INTO upkeep_rule (item_kind, work, every_days, every_loans, every_shots, blocks, source, beyond_percent)
        VALUES (?, ?, ?, ?, ?, ?, 's', iif(? = 'STRING_REPLACEMENT', 25, NULL))""",
        kind,
        work,
        days,
        loans,
        shots,
        blocks ? 1 : 0,
        work);
  }

  void inspect(long item, String work, LocalDate on, String result) throws SQLException {
    run(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)
        VALUES (?, ?, ?, ?, 1, ?, 'a line at the butt')""",
        item,
        work,
        noon(on),
        noon(on),
        result);
  }

  void ask(long item, String work, LocalDate on, String cause, boolean blocks) throws SQLException {
    run(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?, ?, ?, 1, 'it fell over', ?, ?)""",
        item,
        work,
        noon(on),
        blocks ? 1 : 0,
        cause);
  }

  /** The last inspection was the one that was asked for. */
  void askedForIsDone() throws SQLException {
    run(
        """
        UPDATE upkeep_task SET closed_by_record = (SELECT max(id) FROM upkeep_record)
         WHERE closed_by_record IS NULL""");
  }

  void report(long item, LocalDate on, boolean dangerous, String sign, String words)
      throws SQLException {
    run(
        """
        INSERT INTO report (told_at, happened_at, recorded_at, told_to, part_known, dangerous, words)
        VALUES ('BOW', ?, ?, 1, 1, ?, ?)""",
        noon(on),
        noon(on),
        dangerous ? 1 : 0,
        words);
    run(
        "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report), ?)",
        item);
    run("INSERT INTO report_sign (report_id, sign) VALUES ((SELECT max(id) FROM report), ?)", sign);
  }

  /** Of a bow of which nobody knows the part. */
  void reportOfWhole(long rig, LocalDate on, String sign, String words, long... parts)
      throws SQLException {
    report(parts[0], on, true, sign, words);
    run(
        "UPDATE report SET rig_id = ?, part_known = 0 WHERE id = (SELECT max(id) FROM report)",
        rig);
    for (int i = 1; i < parts.length; i++) {
      run(
          "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report), ?)",
          parts[i]);
    }
  }

  void answer(String answer, LocalDate on, LocalDate watchUntil) throws SQLException {
    run(
        """
        UPDATE report SET answer = ?, answered_at = ?, answered_by = 1, answer_words = 'looked at it', watch_until = ?
         WHERE answer IS NULL""",
        answer,
        noon(on),
        watchUntil);
  }

  static Instant noon(LocalDate day) {
    return Instant.parse(day + "T12:00:00Z");
  }

  /** What is read in the evening of that day. */
  Concerns readOn(LocalDate today) {
    return ConcernsOf.file(connection, Instant.parse(today + "T20:00:00Z"));
  }

  long number(String sql) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql);
        ResultSet row = statement.executeQuery()) {
      return row.getLong(1);
    }
  }

  void run(String sql, Object... parameters) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < parameters.length; i++) {
        statement.setObject(i + 1, stored(parameters[i]));
      }
      statement.executeUpdate();
    }
  }

  private static Object stored(Object value) {
    if (value instanceof Instant moment) {
      return Stored.moment(moment);
    }
    return value instanceof LocalDate day ? Stored.day(day) : value;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
