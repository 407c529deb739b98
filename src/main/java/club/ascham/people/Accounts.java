package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.units.LengthUnit;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;

/** Finds accounts. */
@ApplicationScoped
public class Accounts implements PanacheRepository<Account> {
  private final Rows rows;

  Accounts(Rows rows) {
    this.rows = rows;
  }

  /**
   * What signing in needs to know of an account.
   *
   * @param secondStep whether it has one
   * @param secondStepAsked whether the club's rule wants one of it
   */
  public record Credentials(
      AccountId id,
      String name,
      String passwordHash,
      String accessKeyHash,
      Role role,
      LocalDate permitUntil,
      LengthUnit lengthUnit,
      boolean secondStep,
      boolean secondStepAsked) {

    /** Whether a password alone is not enough, now or by the rule. */
    public boolean needsTwoSteps() {
      return secondStep || secondStepAsked;
    }

    /** Whether nothing else is open to it before it has one. */
    boolean lacksSecondStep() {
      return secondStepAsked && !secondStep;
    }
  }

  private static final String OPEN =
      """
      SELECT id, name, password_hash, access_key_hash, role, permit_until, length_unit,
             EXISTS (SELECT 1 FROM second_step s WHERE s.account_id = a.id) AS second_step,
             EXISTS (SELECT 1 FROM door_rule WHERE second_step_for = 'EVERYONE'
                OR second_step_for = 'OFFICERS' AND a.role = 'OFFICER') AS second_step_asked
        FROM account a WHERE closed_on IS NULL AND\s""";

  public Optional<Credentials> named(String name) {
    return rows.one(Credentials.class, OPEN + "name = ?1", name);
  }

  public Optional<Credentials> numbered(AccountId account) {
    return rows.one(Credentials.class, OPEN + "id = ?1", account);
  }

  /** The account that this session is of, unless it was ended or never was. */
  public Optional<Credentials> in(Session session) {
    return rows.one(
        Credentials.class,
        OPEN
            + """
            id = ?1 AND EXISTS (SELECT 1 FROM session s
               WHERE s.id = ?2 AND s.account_id = a.id AND s.begun_at = ?3 AND s.ended_at IS NULL)""",
        session.account(),
        session.number(),
        session.since());
  }

  /** Whether no officer would be left without this one. */
  boolean isLastOfficer(AccountId account) {
    return rows.number(
            "SELECT count(*) FROM account WHERE role = 'OFFICER' AND closed_on IS NULL AND id <> ?1",
            account)
        == 0;
  }

  public boolean none() {
    return rows.number("SELECT count(*) FROM account") == 0;
  }
}
