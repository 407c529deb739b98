package club.ascham.loan;

import club.ascham.borrower.BorrowerId;
import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.DrawLength;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.units.Length;
import club.ascham.units.Money;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;

/**
 * What was lent to whom and until when. It is open as long as one of its lines is; the lines are
 * kept by {@link LoanLines}.
 *
 * <p>That it was shown how to handle the bow is one tick at the issue, never set beforehand, kept
 * with who and when; loans from before say that nothing is recorded.
 */
@Entity
public class Loan {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  @Enumerated(EnumType.STRING)
  private LoanKind kind;

  private Long borrowerId;
  private Instant issuedAt;
  private LocalDate dueOn;
  private long issuedBy;
  private Instant recordedAt;

  @Enumerated(EnumType.STRING)
  private Hand hand;

  private Length drawLength;
  private boolean drawEstimated;

  @Enumerated(EnumType.STRING)
  private Experience experience;

  private String overrideWhy;
  private String overrideCoach;
  private long depositMinor;

  @Enumerated(EnumType.STRING)
  private DepositHow depositHow;

  private Long depositBackMinor;
  private String depositKeptWhy;
  private boolean termsAccepted;
  private Instant briefedAt;
  private Long briefedBy;

  @Version private int version;

  protected Loan() {}

  private Loan(
      LoanKind kind, Instant issuedAt, LocalDate dueOn, AccountId issuedBy, Instant recordedAt) {
    this.kind = kind;
    this.issuedAt = issuedAt;
    this.dueOn = dueOn;
    this.issuedBy = issuedBy.value();
    this.recordedAt = recordedAt;
  }

  /** A kit for a borrower who accepted the terms. */
  public static Loan ofKit(
      BorrowerId borrower,
      Archer archer,
      Instant issuedAt,
      LocalDate dueOn,
      AccountId issuedBy,
      Instant recordedAt) {
    Loan loan = new Loan(LoanKind.KIT, issuedAt, dueOn, issuedBy, recordedAt);
    loan.borrowerId = borrower.value();
    loan.hand = archer.hand();
    loan.drew(archer.draw());
    loan.experience = archer.experience();
    loan.termsAccepted = true;
    return loan;
  }

  /**
   * That it was shown how the bow is strung, that nobody looses without an arrow, and how long the
   * arrows must be: as it was handed over.
   */
  public void briefed(AccountId by) {
    this.briefedAt = issuedAt;
    this.briefedBy = by.value();
  }

  public void takeDeposit(Money amount, DepositHow how) {
    this.depositMinor = amount.minor();
    this.depositHow = amount.minor() == 0 ? null : how;
  }

  public Money deposit() {
    return new Money(depositMinor);
  }

  /**
   * Settles the deposit when nothing is out any more.
   *
   * @param back what is given back; null: nothing
   * @param keptWhy why the rest, if any, is kept
   */
  public void settleDeposit(Money back, String keptWhy) {
    if (depositMinor == 0) {
      return;
    }
    this.depositBackMinor = back == null ? 0 : back.minor();
    this.depositKeptWhy = depositBackMinor < depositMinor ? keptWhy : null;
  }

  /** Why a bow outside the advised range was given all the same. */
  public void override(AgainstAdvice given) {
    this.overrideWhy = given.why();
    this.overrideCoach = given.why() == null ? null : given.coach();
  }

  public void extend(LocalDate newDue) {
    if (!newDue.isAfter(dueOn)) {
      throw new IllegalArgumentException("a loan is extended to a later day");
    }
    this.dueOn = newDue;
  }

  public void drew(DrawLength draw) {
    this.drawLength = draw.amo();
    this.drawEstimated = draw.estimated();
  }

  public LoanId id() {
    return new LoanId(id);
  }

  public LoanKind kind() {
    return kind;
  }

  public BorrowerId borrower() {
    return borrowerId == null ? null : new BorrowerId(borrowerId);
  }

  public LocalDate dueOn() {
    return dueOn;
  }

  Instant issuedAt() {
    return issuedAt;
  }

  public int version() {
    return version;
  }

  /** Null for a session. */
  public DrawLength draw() {
    return drawLength == null ? null : new DrawLength(drawLength, drawEstimated);
  }

  public Hand hand() {
    return hand;
  }

  public Experience experience() {
    return experience;
  }

  /** Why it was given against advice. */
  public AgainstAdvice against() {
    return new AgainstAdvice(overrideWhy, overrideCoach);
  }
}
