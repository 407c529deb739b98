package club.ascham.accident;

import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads what was in somebody's hands at a moment. */
@ApplicationScoped
class InHand {
  private static final String ORDER =
      " ORDER BY 6 NULLS LAST, CASE i.kind WHEN 'RISER' THEN 0 WHEN 'BOW' THEN 0 WHEN 'LIMBS' THEN 1"
          + " WHEN 'STRING' THEN 2 ELSE 3 END, i.id";
  private static final String ITEM =
      "SELECT i.id AS item, i.code AS bare_code, i.kind, i.maker, i.model, ";

  private final Rows rows;

  InHand(Rows rows) {
    this.rows = rows;
  }

  /**
   * Of what an accident is told: a loan, or one bow of a session, or a bow that nobody had.
   *
   * @param loan null: it was with nobody
   * @param session whether several people had bows of this loan in hand
   * @param rig null: all of the loan
   * @param name on the bow's body; null: no bow is meant, or it has none
   */
  record Subject(LoanId loan, boolean session, RigId rig, String name) {}

  private record Named(RigId rig, String bareCode) {
    String name() {
      return bareCode == null ? "rig " + rig.value() : new ItemCode(bareCode).display();
    }
  }

  private record Lent(LoanId loan, boolean session) {}

  Optional<Subject> ofLoan(LoanId loan) {
    return rows.one(
            Lent.class,
            "SELECT id AS loan, kind = 'SESSION' AS session FROM loan WHERE id = ?1",
            loan)
        .map(lent -> new Subject(lent.loan(), lent.session(), null, null));
  }

  /** A bow, with the loan that it was out with at a moment. */
  Optional<Subject> ofRig(RigId rig, Instant at) {
    Optional<Named> named =
        rows.one(
            Named.class,
            """
            SELECT r.id AS rig, (SELECT i.code FROM fitting f JOIN item i ON i.id = f.item_id
                           WHERE f.rig_id = r.id AND f.place = 'BODY' AND f.from_at <= ?2
                           ORDER BY f.from_at DESC LIMIT 1) AS bare_code
              FROM rig r WHERE r.id = ?1""",
            rig,
            at);
    Optional<Lent> lent =
        rows
            .list(
                Lent.class,
                """
                SELECT l.id AS loan, l.kind = 'SESSION' AS session FROM loan_line x JOIN loan l ON l.id = x.loan_id
                 WHERE x.rig_id = ?1 AND x.out_at <= ?2 AND (x.back_at IS NULL OR x.back_at > ?2)
                 ORDER BY x.out_at DESC LIMIT 1""",
                rig,
                at)
            .stream()
            .findFirst();
    return named.map(
        bow ->
            lent.map(one -> new Subject(one.loan(), one.session(), rig, bow.name()))
                .orElse(new Subject(null, false, rig, bow.name())));
  }

  /** The bows of a session, to choose the one that it happened with. */
  List<Subject> bowsOf(LoanId session) {
    return rows
        .list(
            Named.class,
            """
            SELECT DISTINCT x.rig_id, i.code AS bare_code FROM loan_line x
              LEFT JOIN fitting f ON f.rig_id = x.rig_id AND f.place = 'BODY' AND f.from_at <= x.out_at
                                 AND (f.until_at IS NULL OR f.until_at > x.out_at)
              LEFT JOIN item i ON i.id = f.item_id
             WHERE x.loan_id = ?1 AND x.rig_id IS NOT NULL ORDER BY i.code""",
            session)
        .stream()
        .map(bow -> new Subject(session, true, bow.rig(), bow.name()))
        .toList();
  }

  /**
   * What was in hand: all that was out with the loan, of a session the one bow with the arrows of
   * those who shared it, and of a bow that nobody had its parts.
   */
  List<Held> of(Subject subject, Instant at) {
    if (subject.loan() == null) {
      return rows.list(
          Held.class,
          ITEM
              + """
              f.rig_id, NULL AS arrows, i.retired_on IS NOT NULL AS retired
                FROM fitting f JOIN item i ON i.id = f.item_id
               WHERE f.rig_id = ?1 AND f.from_at <= ?2 AND (f.until_at IS NULL OR f.until_at > ?2)"""
              + ORDER,
          subject.rig(),
          at);
    }
    return rows.list(
        Held.class,
        ITEM
            + """
            max(x.rig_id) AS rig, sum(x.arrow_count) AS arrows, i.retired_on IS NOT NULL AS retired
              FROM loan_line x JOIN item i ON i.id = x.item_id
             WHERE x.loan_id = ?1 AND x.out_at <= ?2 AND (x.back_at IS NULL OR x.back_at > ?2)
               AND (?3 IS NULL OR x.rig_id = ?3
                    OR x.item_id IN (SELECT s.arrows_id FROM session_archer s WHERE s.loan_id = ?1 AND s.rig_id = ?3))
             GROUP BY i.id"""
            + ORDER,
        subject.loan(),
        at,
        subject.session() ? subject.rig() : null);
  }
}
