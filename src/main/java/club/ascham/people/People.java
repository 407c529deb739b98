package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads who has an account. */
@ApplicationScoped
public class People {
  private final Rows rows;

  People(Rows rows) {
    this.rows = rows;
  }

  /**
   * An account as officers see it.
   *
   * @param permitUntil null: no permit
   * @param joined whether someone chose a password for it
   * @param secondStepSince null: it has no second step
   * @param closedOn null: it is open
   * @param erasedOn null: it has its name still
   */
  public record Listed(
      AccountId id,
      String name,
      Role role,
      LocalDate permitUntil,
      boolean hasKey,
      Instant secondStepSince,
      boolean joined,
      LocalDate closedOn,
      LocalDate erasedOn,
      int version) {}

  private static final String LISTED =
      "SELECT id, name, role, permit_until, access_key_hash IS NOT NULL AS has_key, (SELECT turned_on_at FROM second_step s WHERE s.account_id = account.id) AS second_step_since, password_hash <> '' AS joined, closed_on, erased_on, version FROM account ";

  /** All of them, the closed ones last. */
  List<Listed> all() {
    return rows.list(Listed.class, LISTED + "ORDER BY closed_on IS NOT NULL, name");
  }

  public Optional<Listed> listed(long id) {
    return rows.one(Listed.class, LISTED + "WHERE id = ?1", id);
  }

  DoorRule rule() {
    return DoorRule.valueOf(rows.texts("SELECT second_step_for FROM door_rule").get(0));
  }
}
