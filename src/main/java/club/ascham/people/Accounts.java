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

  /** What signing in needs to know of an account. */
  record Credentials(
      AccountId id,
      String name,
      String passwordHash,
      String accessKeyHash,
      Role role,
      LocalDate permitUntil,
      LengthUnit lengthUnit) {}

  Optional<Credentials> named(String name) {
    return rows.one(
        Credentials.class,
        "SELECT id, name, password_hash, access_key_hash, role, permit_until, length_unit FROM account WHERE name = ?1 AND closed_on IS NULL",
        name);
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
