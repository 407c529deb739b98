package club.ascham.askback;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what is unsafe and in somebody's hands: one statement for who has what, one for what stands
 * against it, however much is out.
 */
@ApplicationScoped
public class AskBack {
  /**
   * A net that is too wide, so that not everything that is out must be weighed: what in it must not
   * be shot is for {@link DoNotShoot} to say.
   */
  private static final String OUT =
      """
      SELECT x.loan_id, l.kind = 'SESSION' AS session, coalesce(b.name, l.leader) AS who, b.contact, b.guardian, l.due_on,
             x.id AS line, x.item_id, i.code AS bare_code, i.kind, x.rig_id,
             (SELECT c.code FROM fitting f JOIN item c ON c.id = f.item_id
               WHERE f.rig_id = x.rig_id AND f.place = 'BODY' AND f.until_at IS NULL) AS rig_bare_code,
             x.arrow_count AS arrows
        FROM loan_line x
        JOIN loan l ON l.id = x.loan_id
        JOIN item i ON i.id = x.item_id
        LEFT JOIN borrower b ON b.id = l.borrower_id
       WHERE x.back_at IS NULL AND (?1 IS NULL OR x.loan_id = ?1)
         AND x.item_id IN (SELECT item_id FROM withdrawal WHERE released_at IS NULL
                           UNION ALL SELECT item_id FROM inspection_failed
                           UNION ALL SELECT item_id FROM report_against WHERE dangerous = 1
                           UNION ALL SELECT item_id FROM upkeep_task WHERE closed_by_record IS NULL AND blocks = 1)
       ORDER BY x.loan_id, x.rig_id IS NULL, x.rig_id,
         CASE i.kind WHEN 'RISER' THEN 0 WHEN 'BOW' THEN 0 WHEN 'LIMBS' THEN 1 WHEN 'STRING' THEN 2 ELSE 3 END, x.id""";

  private static final Comparator<Asked> NEWEST_FIRST =
      Comparator.comparing(Asked::newest).thenComparing(asked -> asked.loan().value()).reversed();

  private final Rows rows;
  private final Concerns concerns;

  AskBack(Rows rows, Concerns concerns) {
    this.rows = rows;
    this.concerns = concerns;
  }

  private record Out(
      LoanId loan,
      boolean session,
      String who,
      String contact,
      String guardian,
      LocalDate dueOn,
      long line,
      ItemId item,
      String bareCode,
      String kind,
      RigId rig,
      String rigBareCode,
      Integer arrows) {
    Thing thing(Against against) {
      return new Thing(line, item, bareCode, kind, rig, rigBareCode, arrows, against);
    }

    Asked asked(List<Thing> things) {
      return new Asked(loan, session, who, contact, guardian, dueOn, things);
    }
  }

  /**
   * Every loan of which something must come back at once: what became known last leads, since of
   * the rest someone has been told before.
   */
  public List<Asked> now() {
    return read(null);
  }

  /** What of one loan must come back at once; empty: nothing. */
  public Optional<Asked> of(LoanId loan) {
    return read(loan).stream().findFirst();
  }

  private List<Asked> read(LoanId loan) {
    List<Out> out = rows.list(Out.class, OUT, loan);
    Map<ItemId, Against> against =
        concerns.ofItems(out.stream().map(Out::item).distinct().toList());
    Map<LoanId, Out> loans = new LinkedHashMap<>();
    Map<LoanId, List<Thing>> things = new LinkedHashMap<>();
    for (Out one : out) {
      Against unsafe = DoNotShoot.of(against.get(one.item()));
      if (!unsafe.isNothing()) {
        loans.putIfAbsent(one.loan(), one);
        things.computeIfAbsent(one.loan(), none -> new ArrayList<>()).add(one.thing(unsafe));
      }
    }
    return loans.values().stream()
        .map(one -> one.asked(List.copyOf(things.get(one.loan()))))
        .sorted(NEWEST_FIRST)
        .toList();
  }
}
