package club.ascham.loan;

import club.ascham.id.LoanId;
import club.ascham.units.ItemCode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * A loan in a list.
 *
 * @param who the borrower, or a session's leader
 * @param borrower null for a session
 * @param linesOut lines not yet back; none when the loan is closed
 * @param lines all it ever had, what was exchanged counted once
 * @param bodies bare codes of the risers and one-piece bows lent, comma-separated; null: none
 * @param arrowsMissing that did not come back with the rest
 */
public record LoanRow(
    LoanId id,
    LoanKind kind,
    String who,
    Long borrower,
    Instant issuedAt,
    LocalDate dueOn,
    int linesOut,
    int lines,
    String bodies,
    int arrowsMissing) {

  public boolean isOpen() {
    return linesOut > 0;
  }

  public boolean isOverdue(LocalDate today) {
    return isOpen() && dueOn.isBefore(today);
  }

  /** Of a closed one: what of it came back. */
  public String back() {
    return Missing.allBackBut(arrowsMissing);
  }

  /** The bows in it as their labels say. */
  public List<String> bows() {
    return bodies == null
        ? List.of()
        : Arrays.stream(bodies.split(",")).map(code -> new ItemCode(code).display()).toList();
  }
}
