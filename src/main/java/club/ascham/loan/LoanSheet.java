package club.ascham.loan;

import club.ascham.borrower.BorrowerId;
import club.ascham.bow.AgeBand;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.id.LoanId;
import club.ascham.units.Length;
import java.time.Instant;
import java.time.LocalDate;

/**
 * One loan with all that was said when it was made.
 *
 * @param borrower null for a session, and with it contact to guardian
 * @param leader null for a kit
 * @param drawLength null for a session
 * @param overrideWhy null where the bow lay within the advised range
 * @param overrideCoach who agreed to its weight; null where that was not asked
 * @param depositBackMinor null until the deposit is settled
 * @param briefedAt when the borrower was shown how to handle it, and {@code briefedBy} who showed
 *     it; null: not recorded, or a session
 */
public record LoanSheet(
    LoanId id,
    LoanKind kind,
    BorrowerId borrower,
    String name,
    String contact,
    String memberNo,
    AgeBand ageBand,
    String guardian,
    String leader,
    Instant issuedAt,
    Instant recordedAt,
    LocalDate dueOn,
    String issuedBy,
    Hand hand,
    Length drawLength,
    boolean drawEstimated,
    Experience experience,
    String overrideWhy,
    String overrideCoach,
    long depositMinor,
    DepositHow depositHow,
    Long depositBackMinor,
    String depositKeptWhy,
    Instant briefedAt,
    String briefedBy,
    int version) {

  public boolean isSession() {
    return kind == LoanKind.SESSION;
  }

  public boolean isJunior() {
    return ageBand != null && ageBand.junior();
  }
}
