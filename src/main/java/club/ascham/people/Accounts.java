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
   * @param sessionsEnded how many times all its sessions were ended
   */
  record Credentials(
      AccountId id,
      String name,
      String passwordHash,
      String accessKeyHash,
      Role role,
      LocalDate permitUntil,
      LengthUnit lengthUnit,
      long sessionsEnded) {}

  private static final String OPEN =
      """
      SELECT id, name, password_hash, access_key_hash, role, permit_until, length_unit,
             coalesce((SELECT times FROM sessions_ended e WHERE e.account_id = a.id), 0)
        FROM account a WHERE closed_on IS NULL AND\s""";

  Optional<Credentials> named(String name) {
    return rows.one(Credentials.class, OPEN + "name = ?1", name);
  }

  Optional<Credentials> withId(AccountId id) {
    return rows.one(Credentials.class, OPEN + "id = ?1", id);
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
