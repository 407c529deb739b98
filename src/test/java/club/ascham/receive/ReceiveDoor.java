package club.ascham.receive;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.ReceiptId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import jakarta.inject.Singleton;
import java.util.Map;

/** Receives all that is out with a loan. */
@Singleton
public class ReceiveDoor {
  private final ReceiveLoan receiveLoan;
  private final Receipts receipts;
  private final LoanLines lines;

  ReceiveDoor(ReceiveLoan receiveLoan, Receipts receipts, LoanLines lines) {
    this.receiveLoan = receiveLoan;
    this.receipts = receipts;
    this.lines = lines;
  }

  public Outcome<ReceiptId> receive(LoanId loan) {
    return receiveLoan.receive(
        receipts.loan(loan).orElseThrow(),
        lines.of(loan).stream().filter(LoanLine::isOut).toList(),
        Typed.of(Map.of("allBack", "on")));
  }
}
