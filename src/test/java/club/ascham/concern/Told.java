package club.ascham.concern;

import club.ascham.fleet.Rack;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;

/** Lays what somebody told of a bow, as the file holds it, and takes it away again. */
@ApplicationScoped
public class Told {
  private final Rows rows;
  private final ClubTime time;

  Told(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** A bang, told of these parts just now and open. */
  @Transactional
  public long bang(Rack.Hung rig, ItemId... parts) {
    return told(rig, "BANG", true, parts);
  }

  /** A furred string, told just now and open: no danger. */
  @Transactional
  public long furred(Rack.Hung rig, ItemId... parts) {
    return told(rig, "SERVING", false, parts);
  }

  private long told(Rack.Hung rig, String sign, boolean dangerous, ItemId... parts) {
    rows.change(
        """
        INSERT INTO report (told_at, rig_id, happened_at, recorded_at, told_to, part_known, dangerous, words)
        VALUES ('BOW', ?1, ?2, ?2, 1, ?3, ?4, 'at full draw')""",
        rig.id(),
        time.now(),
        parts.length == 1,
        dangerous);
    long report = rows.number("SELECT max(id) FROM report");
    rows.change("INSERT INTO report_sign (report_id, sign) VALUES (?1, ?2)", report, sign);
    for (ItemId part : parts) {
      rows.change("INSERT INTO report_part (report_id, item_id) VALUES (?1, ?2)", report, part);
    }
    return report;
  }

  /** Somebody has looked, and it is watched to that day. */
  @Transactional
  public void watched(long report, String words, LocalDate until) {
    rows.change(
        """
        UPDATE report SET answer = 'WATCH', answered_at = ?2, answered_by = 1, answer_words = ?3, watch_until = ?4
         WHERE id = ?1""",
        report,
        time.now(),
        words,
        until);
  }

  @Transactional
  public void forget(List<Rack.Hung> rigs) {
    for (Rack.Hung rig : rigs) {
      String of = "(SELECT id FROM report WHERE rig_id = ?1)";
      rows.change("DELETE FROM report_sign WHERE report_id IN " + of, rig.id());
      rows.change("DELETE FROM report_part WHERE report_id IN " + of, rig.id());
      rows.change("DELETE FROM report WHERE rig_id = ?1", rig.id());
    }
  }
}
