package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.units.LengthUnit;
import club.ascham.web.WhoActs;
import io.quarkus.runtime.BlockingOperationNotAllowedException;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.util.Locale;

/** The account that acts in this request. */
@RequestScoped
public class Actor implements WhoActs {
  public static final String ACCOUNT = "account";
  public static final String SESSION = "session";

  private final SecurityIdentity identity;

  Actor(SecurityIdentity identity) {
    this.identity = identity;
  }

  @Override
  public boolean signedIn() {
    return account() != null;
  }

  @Override
  public AccountId id() {
    return account().id();
  }

  @Override
  public String name() {
    return account().name();
  }

  public Role role() {
    return account().role();
  }

  @Override
  public boolean isOfficer() {
    return signedIn() && role() == Role.OFFICER;
  }

  @Override
  public String roleWord() {
    return role().name().toLowerCase(Locale.ROOT);
  }

  @Override
  public boolean mayChange() {
    return signedIn() && role() != Role.COMMITTEE;
  }

  /** Whether this person sees who borrows: those who hand out and take back need to. */
  public boolean seesNames() {
    return signedIn() && role() != Role.COMMITTEE;
  }

  /** The unit that lengths without one are read in. */
  public LengthUnit unit() {
    return account().lengthUnit();
  }

  /** Whether this person may turn limb bolts, sign their inspection and release a withdrawal. */
  public boolean holdsPermit(LocalDate today) {
    return account().permitUntil() != null && !account().permitUntil().isBefore(today);
  }

  /** Whether the club wants a second step of this account. */
  boolean secondStepAsked() {
    return account().secondStepAsked();
  }

  /** Whether this account must have a second step and has none yet. */
  public boolean lacksSecondStep() {
    return signedIn() && account().lacksSecondStep();
  }

  /** The number of the session that this request belongs to; 0 for a program's request. */
  public long session() {
    Session session = identity.getAttribute(SESSION);
    return session == null ? 0 : session.number();
  }

  /** Null: nobody, also where asking who it is failed and its failure is being answered. */
  private Accounts.Credentials account() {
    try {
      return identity.getAttribute(ACCOUNT);
    } catch (BlockingOperationNotAllowedException notKnownYet) {
      return null;
    }
  }
}
