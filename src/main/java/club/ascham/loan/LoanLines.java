package club.ascham.loan;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads and writes the lines of loans: each item that went out, and how it came back.
 *
 * <p>Arrows come back by count: the set or pool holds what came back, and {@code missing_count}
 * keeps what did not, until somebody makes it up or the set next comes back whole.
 */
@ApplicationScoped
public class LoanLines {
  private static final String COLUMNS =
      """
      SELECT x.id, x.loan_id, x.item_id, x.rig_id, i.code AS bare_code, i.kind, i.maker, i.model,
             x.out_at, x.arrow_count, x.back_at, x.outcome, x.back_count, x.missing_count AS missing,
             CASE WHEN i.kind = 'ARROWS' AND k.pool = 0 THEN k.arrow_count END AS set_of, k.arrow_length, k.arrow_mass_gr
        FROM loan_line x JOIN item i ON i.id = x.item_id LEFT JOIN kit_item k ON k.id = i.id
      """;

  private final Rows rows;

  LoanLines(Rows rows) {
    this.rows = rows;
  }

  /**
   * The lines of a loan: its rigs' parts first, then what went with them. What never went out,
   * since its exchange was undone, is no line of it.
   */
  public List<LoanLine> of(LoanId loan) {
    return rows.list(
        LoanLine.class,
        COLUMNS
            + """
            WHERE x.loan_id = ?1 AND x.id NOT IN (SELECT line_id FROM undone_line)
            ORDER BY x.rig_id IS NULL, x.rig_id,
              CASE i.kind WHEN 'RISER' THEN 0 WHEN 'BOW' THEN 0 WHEN 'LIMBS' THEN 1 WHEN 'STRING' THEN 2 ELSE 3 END,
              x.out_at, x.id\
            """,
        loan);
  }

  /** The open reports of what is out that were told after the loan was kept, by number. */
  public Set<Long> reportsToldSince(LoanId loan) {
    return rows
        .texts(
            """
            SELECT DISTINCT r.id FROM loan_line x JOIN loan l ON l.id = x.loan_id
              JOIN report_part p ON p.item_id = x.item_id JOIN report r ON r.id = p.report_id
             WHERE x.loan_id = ?1 AND x.back_at IS NULL AND r.answer IS NULL AND r.recorded_at > l.recorded_at\
            """,
            loan)
        .stream()
        .map(Long::valueOf)
        .collect(Collectors.toSet());
  }

  Optional<LoanLine> line(long id) {
    return rows.one(LoanLine.class, COLUMNS + "WHERE x.id = ?1", id);
  }

  /**
   * Lends an item.
   *
   * @param rig the rig that it is fitted to; null: it goes beside one
   * @param arrowCount arrows out of a pool; null: the whole item
   */
  public void lend(LoanId loan, ItemId item, RigId rig, Instant outAt, Integer arrowCount) {
    rows.add(
        NewRow.of("loan_line")
            .with("loan_id", loan)
            .with("item_id", item)
            .with("rig_id", rig)
            .with("out_at", outAt)
            .with("arrow_count", arrowCount));
  }

  /** Ends the line of a part that is no longer on the bow it went out with. */
  public void changed(LoanLine line, Instant at) {
    end(line, at, LineOutcome.CHANGED, null);
  }

  /** Ends an open line other than by a receipt; answers whether it still was open. */
  public boolean end(LoanLine line, Instant at, LineOutcome outcome, Integer backCount) {
    return rows.change(
            """
            UPDATE loan_line SET back_at = max(?2, out_at), outcome = ?3, back_count = ?4, missing_count = ?5
             WHERE id = ?1 AND back_at IS NULL\
            """,
            line.id(),
            at,
            outcome,
            backCount,
            line.shortBy(backCount))
        == 1;
  }

  /**
   * A set or a pool holds what came back of it; what is missing stands on the line.
   *
   * @param backCount null: nobody counted, or no arrows
   */
  public void holdWhatCameBack(LoanLine line, Integer backCount) {
    Integer missing = line.shortBy(backCount);
    if (missing != null && missing > 0) {
      rows.change(
          "UPDATE kit_item SET arrow_count = arrow_count - ?2 WHERE id = ?1", line.item(), missing);
    }
  }
}
