package club.ascham.borrower;

import club.ascham.bow.AgeBand;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;

/**
 * Someone who borrows: a name, one way to reach them, and no more than lending needs. No date of
 * birth and no address are ever asked.
 */
@Entity
public class Borrower {
  private static final String ERASED = "erased";

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private String name;
  private String contact;
  private String memberNo;

  @Enumerated(EnumType.STRING)
  private AgeBand ageBand;

  private String guardian;
  private LocalDate erasedOn;

  @Version private int version;

  protected Borrower() {}

  public Borrower(BorrowerDetails details) {
    correct(details);
  }

  public boolean isNew() {
    return id == null;
  }

  public BorrowerId id() {
    return new BorrowerId(id);
  }

  int version() {
    return version;
  }

  public BorrowerDetails details() {
    return new BorrowerDetails(name, contact, memberNo, ageBand, guardian);
  }

  boolean isErased() {
    return erasedOn != null;
  }

  /** From now on only a number: the loans stay, and nobody can tell whose they were. */
  void erase(LocalDate on) {
    name = "Borrower " + id;
    contact = ERASED;
    memberNo = null;
    guardian = guardian == null ? null : ERASED;
    erasedOn = on;
  }

  public Borrower correct(BorrowerDetails details) {
    this.name = details.name();
    this.contact = details.contact();
    this.memberNo = details.memberNo();
    this.ageBand = details.ageBand();
    this.guardian = details.guardian();
    return this;
  }
}
