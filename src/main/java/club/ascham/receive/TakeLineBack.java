package club.ascham.receive;

import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;

/** Ends the line of a thing that is here, whichever list it came back by. */
@ApplicationScoped
public class TakeLineBack {
  private final Rows rows;
  private final LoanLines lines;
  private final WithdrawItem withdrawItem;
  private final Club club;

  TakeLineBack(Rows rows, LoanLines lines, WithdrawItem withdrawItem, Club club) {
    this.rows = rows;
    this.lines = lines;
    this.withdrawItem = withdrawItem;
    this.club = club;
  }

  /**
   * Inside the use case that keeps the receipt: a set or a pool then holds what came back of it,
   * what is missing stands on the line, and what is damaged is withdrawn.
   */
  @Writes
  public void take(long receipt, LoanLine line, LineBack back, Instant at) {
    // A late entry may lie before the moment a part was exchanged during the loan.
    Instant backAt = at.isBefore(line.outAt()) ? line.outAt() : at;
    rows.change(
        """
        UPDATE loan_line SET back_at = ?2, receipt_id = ?3, outcome = ?4, back_count = ?5, shots = ?6,
               missing_count = ?7
         WHERE id = ?1 AND back_at IS NULL\
        """,
        line.id(),
        backAt,
        receipt,
        back.damage() == null ? "BACK" : "DAMAGED",
        back.count(),
        line.rig() == null
            ? null
            : club.rules().shotsWhileOut(Duration.between(line.outAt(), backAt)),
        line.shortBy(back.count()));
    lines.holdWhatCameBack(line, back.count());
    if (back.damage() != null) {
      withdrawItem.withdraw(
          line.item(), new Reason("Came back damaged: " + back.damage(), null, null), backAt);
    }
  }

  /** How many arrows of a line came back, where some are missing; empty: none are. */
  public static String countedShort(LoanLine line, LineBack back) {
    return line.arrows() != null && back.count() < line.arrows()
        ? back.count() + " of " + line.arrows() + " arrows " + line.code()
        : "";
  }
}
