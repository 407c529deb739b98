package club.ascham.fleet;

import club.ascham.id.LoanId;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A loan with something still out.
 *
 * @param who the borrower or the session's leader; null where the reader is not to see names
 * @param contact how to reach the borrower; null: a session, or as who (likewise guardian: a
 *     grown-up)
 * @param bodies bare codes of the risers and bows still out, comma-separated; null: none
 * @param kinds of all that is still out, comma-separated
 */
public record OpenLoan(
    LoanId id,
    boolean session,
    String who,
    String contact,
    String guardian,
    LocalDate dueOn,
    int linesOut,
    String bodies,
    String kinds) {

  public OpenLoan withoutName() {
    return new OpenLoan(id, session, null, null, null, dueOn, linesOut, bodies, kinds);
  }

  /** How to reach whoever has it; null: not known. */
  public String reach() {
    return contact == null || guardian == null
        ? contact
        : contact + "; parent or guardian: " + guardian;
  }

  /** The bows still out by their codes, else the kinds of what is missing. */
  public String what() {
    if (bodies == null) {
      return kinds.toLowerCase(Locale.ROOT).replace(",", ", ");
    }
    List<String> codes =
        Arrays.stream(bodies.split(",")).map(code -> new ItemCode(code).display()).toList();
    return codes.size() > 3 ? codes.size() + " bows" : String.join(", ", codes);
  }
}
