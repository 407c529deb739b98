package club.ascham.drift;

import club.ascham.statistics.Drift;
import club.ascham.statistics.Drift.Measured;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Tells of one rig whether it is really changing: two statements, however long its story. */
@ApplicationScoped
public class Drifts {
  /** What lies further back has no weight left in the average. */
  private static final int READINGS = 40;

  private final Rows rows;
  private final ClubScatter scatter;

  Drifts(Rows rows, ClubScatter scatter) {
    this.rows = rows;
    this.scatter = scatter;
  }

  /**
   * The set-up that readings are compared with.
   *
   * @param restartedAt the last adjustment since, or the last inspection that was asked for and
   *     found nothing: readings before it speak of another bow; null: none
   */
  private record Start(Instant finishedAt, String finishedBy, Reading setUp, Instant restartedAt) {}

  private record Read(Instant at, String reader, Reading reading) {
    Measured measured() {
      return reading == null
          ? new Measured(at, reader, null, null)
          : new Measured(at, reader, mm(reading.brace()), mm(reading.tiller()));
    }
  }

  private static Double mm(Length length) {
    return length == null ? null : Double.valueOf(length.mm());
  }

  /**
   * @param setUp the finished set-up in force
   * @param bolts whether limb bolts set the tiller of this bow
   */
  public Drift of(long setUp, boolean bolts) {
    return of(setUp, bolts, null);
  }

  /**
   * @param typed a reading that is not kept yet; null: none
   */
  public Drift of(long setUp, boolean bolts, Measured typed) {
    List<Measured> measured = new ArrayList<>(since(setUp));
    if (typed != null) {
      measured.add(typed);
    }
    ClubScatter.Known club = scatter.today();
    return Drift.of(measured, club.brace(), club.tiller(), bolts);
  }

  private List<Measured> since(long setUp) {
    Start start =
        rows.one(
                Start.class,
                """
                SELECT u.finished_at, u.finished_by, u.brace, u.brace_from AS set_up_from, u.tiller_upper, u.tiller_lower,
                       nullif(max(
                         coalesce((SELECT max(a.happened_at) FROM adjustment a
                                    WHERE a.rig_id = u.rig_id AND a.happened_at >= u.finished_at), ''),
                         coalesce((SELECT max(d.happened_at) FROM fitting f
                                     JOIN upkeep_task t ON t.item_id = f.item_id
                                     JOIN upkeep_record d ON d.id = t.closed_by_record
                                    WHERE f.rig_id = u.rig_id AND f.until_at IS NULL
                                      AND d.result = 'PASSED' AND d.happened_at >= u.finished_at), '')), '') AS restarted_at
                  FROM set_up u WHERE u.id = ?1""",
                setUp)
            .orElseThrow();
    List<Measured> measured = new ArrayList<>();
    if (start.restartedAt() == null) {
      measured.add(new Read(start.finishedAt(), start.finishedBy(), start.setUp()).measured());
    }
    rows.list(
            Read.class,
            """
            SELECT c.happened_at AS at, c.checked_by AS reader, CASE WHEN c.brace_from = ?3 THEN c.brace END AS brace,
                   c.brace_from AS reading_from, c.tiller_upper, c.tiller_lower
              FROM bow_check c
             WHERE c.rig_id = (SELECT rig_id FROM set_up WHERE id = ?1) AND c.set_up_id = ?1
               AND c.kind = 'CHECK' AND c.happened_at >= ?2
               AND NOT EXISTS (SELECT 1 FROM bow_check n WHERE n.corrects_id = c.id)
             ORDER BY c.happened_at DESC, c.id DESC LIMIT ?4""",
            setUp,
            start.restartedAt() == null ? start.finishedAt() : start.restartedAt(),
            start.setUp().from(),
            READINGS)
        .forEach(read -> measured.add(read.measured()));
    return measured;
  }
}
