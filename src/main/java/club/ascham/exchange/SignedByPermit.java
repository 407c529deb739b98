package club.ascham.exchange;

import club.ascham.bow.Who;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * What only a holder of the permit may sign, a file signs for nobody else. Held to it is the newest
 * record of an item and a work, since that is what counts; what lies before it is history.
 *
 * <p>Whoever signed needs it on that record's own day, whatever order the file has. So a club that
 * moves gives its people their permits before it takes its record in.
 */
@ApplicationScoped
class SignedByPermit implements AfterRows {
  private final Rows rows;
  private final ClubTime time;

  SignedByPermit(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * A new record that is the newest of its item and work.
   *
   * @param permitUntil of who signed it; null: no permit
   */
  record Signed(
      long number,
      String bareCode,
      Work work,
      Instant happened,
      String by,
      LocalDate permitUntil) {}

  @Override
  public String list() {
    return "upkeep-records";
  }

  @Override
  public List<BadCell> check(Added added) {
    return rows
        .list(
            Signed.class,
            """
            SELECT u.id AS number, i.code AS bare_code, u.work, u.happened_at AS happened, a.name AS "by", a.permit_until
              FROM json_each(?1) t JOIN upkeep_record u ON u.id = t.value
              JOIN item i ON i.id = u.item_id JOIN account a ON a.id = u.done_by
             WHERE NOT EXISTS (SELECT 1 FROM upkeep_record n WHERE n.item_id = u.item_id AND n.work = u.work
                                  AND n.result IN ('PASSED', 'FAILED')
                                  AND (n.happened_at, n.id) > (u.happened_at, u.id))
             ORDER BY u.id""",
            added.numbers())
        .stream()
        .filter(one -> one.work().signedBy() == Who.PERMIT_HOLDER && !heldPermit(one))
        .map(one -> added.at(one.number(), "by", said(one)))
        .toList();
  }

  private boolean heldPermit(Signed one) {
    return one.permitUntil() != null && !one.permitUntil().isBefore(time.dayOf(one.happened()));
  }

  private String said(Signed one) {
    return "%s, %s of %s: it is signed by someone who holds the club’s permit for limb bolts on that day, and %s did not."
        .formatted(
            new ItemCode(one.bareCode()).display(),
            one.work().said(),
            ClubTime.said(time.dayOf(one.happened())),
            Codecs.quoted(one.by()));
  }
}
