package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.RigSpec;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.rig.RigCard;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The lines of a loan that follow the parts of a lent rig, so that a change of parts keeps it. */
@ApplicationScoped
class LoanedParts {
  private final Rows rows;

  LoanedParts(Rows rows) {
    this.rows = rows;
  }

  /** The loan that this rig is out on; empty: it is in the room. */
  Optional<LoanId> loanOf(RigId rig) {
    return rows
        .list(
            OfLoan.class,
            "SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL LIMIT 1",
            rig)
        .stream()
        .map(OfLoan::loan)
        .findFirst();
  }

  void takenOff(LoanId loan, ItemId part, Instant at) {
    rows.change(
        """
        UPDATE loan_line SET back_at = max(?3, out_at), outcome = 'CHANGED'
         WHERE loan_id = ?1 AND item_id = ?2 AND back_at IS NULL\
        """,
        loan,
        part,
        at);
  }

  void fitted(LoanId loan, RigId rig, ItemId part, Instant at) {
    rows.add(
        NewRow.of("loan_line")
            .with("loan_id", loan)
            .with("item_id", part)
            .with("rig_id", rig)
            .with("out_at", at));
  }

  /**
   * What stands in the way of a bow that is out being this one, each at its answer.
   *
   * @param given why it is given although advice speaks against it
   */
  List<Obstacle> refusals(RigId rig, RigSpec changed, AgainstAdvice given) {
    return BowOut.refusals(
        changed,
        null,
        archersOf(rig),
        arrowsOf(rig),
        given,
        changed.onePiece() == null ? Assembly.LIMBS : Assembly.BODY);
  }

  /**
   * The same of a bow that is out as it is: each of those who draw it by what was said when they
   * were given it.
   */
  List<Obstacle> refusals(RigCard card) {
    List<BowOut.Arrows> arrows = arrowsOf(card.id());
    return card.spec().stream()
        .flatMap(
            spec ->
                archersOf(card.id()).stream()
                    .flatMap(
                        archer ->
                            BowOut.refusals(
                                spec, card.setUp(), List.of(archer), arrows, archer.saidThen(), "")
                                .stream()))
        .toList();
  }

  /** Who draws a bow that is out, as far as their draw is known. */
  private List<BowOut.Archer> archersOf(RigId rig) {
    return rows.list(
        BowOut.Archer.class,
        """
        SELECT l.hand, b.age_band AS age, l.experience, l.draw_length AS draw, l.draw_estimated AS estimated, NULL AS shares,
               l.override_why AS why, l.override_coach AS coach
          FROM loan l JOIN borrower b ON b.id = l.borrower_id
         WHERE l.draw_length IS NOT NULL
           AND l.id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)
        UNION ALL
        SELECT NULL, a.age_band, NULL, a.draw_length, 0, a.id, a.override_why, a.override_coach FROM session_archer a
         WHERE a.rig_id = ?1 AND a.age_band IS NOT NULL
           AND a.loan_id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)\
        """,
        rig);
  }

  /** The arrows that are shot from a bow that is out, as far as they were weighed. */
  private List<BowOut.Arrows> arrowsOf(RigId rig) {
    return rows
        .list(
            Weighed.class,
            """
            SELECT i.code AS bare_code, k.arrow_mass_gr AS mass_gr, NULL AS shares
              FROM loan_line x JOIN loan l ON l.id = x.loan_id JOIN item i ON i.id = x.item_id
              JOIN kit_item k ON k.id = i.id
             WHERE l.kind = 'KIT' AND i.kind = 'ARROWS' AND k.arrow_mass_gr IS NOT NULL AND x.back_at IS NULL
               AND l.id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)
            UNION ALL
            SELECT i.code, k.arrow_mass_gr, a.id
              FROM session_archer a JOIN item i ON i.id = a.arrows_id JOIN kit_item k ON k.id = i.id
             WHERE a.rig_id = ?1 AND k.arrow_mass_gr IS NOT NULL
               AND a.loan_id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)\
            """,
            rig)
        .stream()
        .map(
            one ->
                new BowOut.Arrows(
                    new ItemCode(one.bareCode()).display(), one.massGr(), one.shares()))
        .toList();
  }

  private record Weighed(String bareCode, double massGr, Long shares) {}

  /** Keeps with the loan why its bow got heavier, and who agreed. */
  void agreed(LoanId loan, AgainstAdvice given) {
    rows.change(
        """
        UPDATE loan SET override_why = ?2, override_coach = ?3, version = version + 1
         WHERE id = ?1\
        """,
        loan,
        given.why(),
        given.coach());
  }

  private record OfLoan(LoanId loan) {}
}
