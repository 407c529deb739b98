package club.ascham.report;

import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import java.time.Instant;

/**
 * What a report is about, and when and where it was told.
 *
 * @param rig null: the named part is on none
 * @param loan null: it was not out (likewise receipt)
 * @param noticed when it was, as far as is known
 */
public record About(RigId rig, LoanId loan, Long receipt, ToldAt toldAt, Instant noticed) {

  /** Where it was told. */
  public enum ToldAt {
    RECEIVING,
    SESSION,
    LOAN,
    BOW,
    CHECK
  }
}
