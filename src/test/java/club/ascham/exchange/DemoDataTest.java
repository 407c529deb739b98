package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.ArrowLength;
import club.ascham.standing.Standing;
import club.ascham.units.Length;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo club shows everything that a club meets, and nothing that can't be. */
class DemoDataTest {
  private static EmptyClub club;

  @BeforeAll
  static void load(@TempDir Path folder) throws Exception {
    club = EmptyClub.in(folder);
    assertEquals(List.of(), club.take(EmptyClub.demoFiles(), 0).bad());
  }

  @AfterAll
  static void close() throws SQLException {
    club.close();
  }

  @ParameterizedTest(name = "{0}: {1} to {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "risers| 38| 42 | SELECT count(*) FROM riser",
        "screw-in risers| 12| 15 | SELECT count(*) FROM riser WHERE build = 'SCREW_IN'",
        "left-handed risers| 7| 9 | SELECT count(*) FROM riser WHERE hand = 'LEFT'",
        "one-piece bows| 4| 8 | SELECT count(*) FROM bow",
        "limbs| 58| 62 | SELECT count(*) FROM limbs",
        "strings| 95| 110 | SELECT count(*) FROM bowstring",
        "stringers| 18| 22 | SELECT count(*) FROM stringer",
        "kits lent| 220| 280 | SELECT count(*) FROM loan WHERE kind = 'KIT'",
        "sessions| 80| 110 | SELECT count(*) FROM loan WHERE kind = 'SESSION'",
        "years of loans| 690| 740 | SELECT julianday(max(issued_at)) - julianday(min(issued_at)) FROM loan",
      })
  void theClub_isOfTheSizeOfAClub(String what, long least, long most, String sql)
      throws SQLException {
    long count = club.count(sql);
    assertTrue(least <= count && count <= most, what + ": " + count);
  }

  @ParameterizedTest(name = "rigs {0} today: {1} to {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "READY | 15 | 25",
        "ON_LOAN | 8 | 16",
        "TO_BE_CHECKED | 3 | 7",
        "IN_THE_WORKSHOP | 2 | 3",
        "WITHDRAWN | 1 | 3",
      })
  void everyState_isThereToday(String state, long least, long most) throws SQLException {
    String today = "'" + EmptyClub.TODAY + "'";
    long count =
        club.count(
            "SELECT count(*) FROM rig_standing s WHERE "
                + Standing.STATE_TODAY.replace("?1", today)
                + " = '"
                + state
                + "'");
    assertTrue(least <= count && count <= most, state + ": " + count);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "a loan overdue | SELECT count(DISTINCT l.id) FROM loan l JOIN loan_line x ON x.loan_id = l.id WHERE x.back_at IS NULL AND l.due_on < '2026-11-25'",
        "a loan due today | SELECT count(DISTINCT l.id) FROM loan l JOIN loan_line x ON x.loan_id = l.id WHERE x.back_at IS NULL AND l.due_on = '2026-11-25'",
        "an overdue inspection that blocks | SELECT count(*) FROM work_due WHERE blocks = 1 AND due_on < '2026-11-25'",
        "strings due within three months | SELECT count(*) FROM work_due WHERE work = 'STRING_REPLACEMENT' AND due_on BETWEEN '2026-11-25' AND '2027-02-25'",
        "a bow whose adjustment waits | SELECT count(*) FROM bow_check c WHERE verdict = 'ADJUST' AND NOT EXISTS (SELECT 1 FROM bow_check n WHERE n.rig_id = c.rig_id AND n.happened_at > c.happened_at)",
        "an adjustment measured before and after | SELECT count(*) FROM adjustment WHERE check_id IS NOT NULL AND after_id IS NOT NULL AND twists_added IS NOT NULL",
        "limbs on the bow scale more than once | SELECT count(*) FROM scale_reading GROUP BY item_id HAVING count(*) > 1",
        "limbs never on the bow scale, and due there | SELECT count(*) FROM limbs m JOIN item i ON i.id = m.id WHERE i.retired_on IS NULL AND coalesce(i.bought_on, i.registered_on) < '2025-11-25' AND NOT EXISTS (SELECT 1 FROM scale_reading s WHERE s.item_id = i.id)",
        "a bow above the ceiling, and the coach who agreed | SELECT count(*) FROM loan WHERE override_why IS NOT NULL AND override_coach IS NOT NULL",
        "bolts turned | SELECT count(*) FROM adjustment WHERE upper_in IS NOT NULL",
        "a dry loose | SELECT count(*) FROM receipt WHERE dry_loose_or_fall = 1",
        "a bow brought back strung | SELECT count(*) FROM receipt WHERE came_back_strung = 1",
        "a deposit kept | SELECT count(*) FROM loan WHERE deposit_back_minor < deposit_minor",
        "something dangerous told of a bow that waits | SELECT count(*) FROM report r JOIN rig_standing s ON s.rig_id = r.rig_id WHERE r.answer IS NULL AND r.dangerous = 1 AND s.state_if_inspected = 'TO_BE_CHECKED'",
        "something else told of a bow that is ready | SELECT count(*) FROM report r JOIN rig_standing s ON s.rig_id = r.rig_id WHERE r.answer IS NULL AND r.dangerous = 0 AND s.state_if_inspected = 'READY'",
        "something lost | SELECT count(*) FROM item WHERE retired_why = 'LOST'",
        "something sold | SELECT count(*) FROM item WHERE retired_why = 'SOLD'",
        "limbs scrapped | SELECT count(*) FROM item WHERE kind = 'LIMBS' AND retired_why = 'SCRAPPED'",
        "a string changed while out | SELECT count(*) FROM loan_line WHERE outcome = 'CHANGED'",
        "a withdrawal released | SELECT count(*) FROM withdrawal WHERE released_at IS NOT NULL",
        "a fault found by an inspection | SELECT count(*) FROM upkeep_record WHERE result = 'FAILED'",
        "a riser whose turns nobody knows | SELECT count(*) FROM riser WHERE build = 'ADJUSTABLE' AND max_turns_out IS NULL",
        "tips of which nobody knows whether they stand HMPE | SELECT count(*) FROM limbs WHERE hmpe_tips = 'UNKNOWN'",
        "a spare kept with its rig | SELECT count(*) FROM kept_with",
        "something typed in the day after | SELECT count(*) FROM loan WHERE substr(recorded_at, 1, 10) > substr(issued_at, 1, 10)",
      })
  void theUsual_isThere(String what, String sql) throws SQLException {
    assertTrue(club.count(sql) > 0, what);
  }

  @ParameterizedTest(name = "never {0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "told of what was not on the bow | SELECT count(*) FROM report r JOIN report_part p ON p.report_id = r.id WHERE r.rig_id IS NOT NULL AND NOT EXISTS (SELECT 1 FROM fitting f WHERE f.rig_id = r.rig_id AND f.item_id = p.item_id AND f.from_at <= r.happened_at AND coalesce(f.until_at, '9') > r.happened_at)",
        "dangerous without work that keeps it in | SELECT count(*) FROM report r JOIN report_part p ON p.report_id = r.id WHERE r.dangerous = 1 AND r.answer IS NULL AND NOT EXISTS (SELECT 1 FROM upkeep_task t WHERE t.item_id = p.item_id AND t.cause = 'REPORTED' AND t.blocks = 1)",
        "told without a sign | SELECT count(*) FROM report r WHERE NOT EXISTS (SELECT 1 FROM report_sign s WHERE s.report_id = r.id)",
        "lent while withdrawn | SELECT count(*) FROM loan_line l JOIN withdrawal w ON w.item_id = l.item_id AND l.out_at > w.happened_at AND l.out_at < coalesce(w.released_at, '9')",
        "lent when retired | SELECT count(*) FROM loan_line l JOIN item i ON i.id = l.item_id WHERE substr(l.out_at, 1, 10) > i.retired_on",
        "lent before it was registered | SELECT count(*) FROM loan_line l JOIN item i ON i.id = l.item_id WHERE substr(l.out_at, 1, 10) < i.registered_on",
        "lent twice at once | SELECT count(*) FROM loan_line a JOIN loan_line b ON a.item_id = b.item_id AND a.id < b.id AND a.arrow_count IS NULL AND a.out_at < coalesce(b.back_at, '9') AND b.out_at < coalesce(a.back_at, '9')",
        "fitted twice at once | SELECT count(*) FROM fitting a JOIN fitting b ON a.item_id = b.item_id AND a.id < b.id AND a.from_at < coalesce(b.until_at, '9') AND b.from_at < coalesce(a.until_at, '9')",
        "two parts in one place | SELECT count(*) FROM fitting a JOIN fitting b ON a.rig_id = b.rig_id AND a.place = b.place AND a.id < b.id AND a.from_at < coalesce(b.until_at, '9') AND b.from_at < coalesce(a.until_at, '9')",
        "lent with a rig it was not fitted to | SELECT count(*) FROM loan_line l WHERE rig_id IS NOT NULL AND NOT EXISTS (SELECT 1 FROM fitting f WHERE f.rig_id = l.rig_id AND f.item_id = l.item_id AND f.from_at <= l.out_at AND coalesce(f.until_at, '9') >= l.out_at)",
        "lent before it was set up | SELECT count(*) FROM loan_line l WHERE rig_id IS NOT NULL AND NOT EXISTS (SELECT 1 FROM set_up s WHERE s.rig_id = l.rig_id AND s.finished_at <= l.out_at)",
        "checked while it was out | SELECT count(*) FROM bow_check c JOIN loan_line l ON l.rig_id = c.rig_id AND l.out_at < c.happened_at AND c.happened_at < coalesce(l.back_at, '9')",
        "recorded before it happened | SELECT count(*) FROM story WHERE recorded_at < happened_at",
        "recorded after last evening | SELECT count(*) FROM story WHERE recorded_at >= '2026-11-25'",
        "a stringer too short or long for the bow | SELECT count(*) FROM loan_line l JOIN stringer t ON t.id = l.item_id JOIN loan_line s ON s.loan_id = l.loan_id JOIN bowstring b ON b.id = s.item_id WHERE b.for_bow_in NOT BETWEEN t.bow_from_in AND t.bow_to_in",
      })
  void whatCannotBe_isNot(String what, String sql) throws SQLException {
    assertEquals(0, club.count(sql), what);
  }

  @Test
  void lentRigs_hadBeenPutBackSinceTheyLastCameIn() throws SQLException {
    assertEquals(
        0,
        club.count(
            """
            SELECT count(*) FROM (SELECT rig_id, out_at FROM loan_line WHERE rig_id IS NOT NULL GROUP BY loan_id, rig_id) l
             WHERE coalesce((SELECT max(back_at) FROM loan_line x WHERE x.rig_id = l.rig_id AND x.back_at <= l.out_at AND x.outcome <> 'CHANGED'), '')
                 > max(coalesce((SELECT max(happened_at) FROM bow_check c WHERE c.rig_id = l.rig_id AND c.released_at IS NOT NULL AND c.happened_at <= l.out_at), ''),
                       coalesce((SELECT max(finished_at) FROM set_up s WHERE s.rig_id = l.rig_id AND s.finished_at <= l.out_at), ''))"""));
  }

  @Test
  @DisplayName(
      "arrows are as long as the rule asks: draw + 2 in for a beginner (elyarchers.org.uk,"
          + " johnsarchery.ca; R)")
  void arrows_areLongEnough() throws SQLException {
    try (PreparedStatement statement =
            club.connection()
                .prepareStatement(
                    """
                    SELECT l.draw_length, k.arrow_length, l.draw_estimated, l.experience = 'BEGINNER', b.age_band <> 'ADULT'
                      FROM loan l JOIN borrower b ON b.id = l.borrower_id JOIN loan_line x ON x.loan_id = l.id JOIN kit_item k ON k.id = x.item_id
                     WHERE k.arrow_length IS NOT NULL
                    UNION ALL
                    SELECT a.draw_length, k.arrow_length, 0, 1, 0
                      FROM session_archer a JOIN kit_item k ON k.id = a.arrows_id""");
        ResultSet given = statement.executeQuery()) {
      int seen = 0;
      while (given.next()) {
        seen++;
        Length draw = new Length(given.getLong(1));
        Length arrow = new Length(given.getLong(2));
        assertTrue(
            ArrowLength.shortestSafe(
                    draw.inches(), given.getBoolean(3), given.getBoolean(4), given.getBoolean(5))
                .allows(arrow),
            () -> arrow + " for a draw of " + draw);
      }
      assertTrue(seen > 500, seen + " arrows given out");
    }
  }
}
