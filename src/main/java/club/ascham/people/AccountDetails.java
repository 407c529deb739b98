package club.ascham.people;

import club.ascham.form.Typed;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An account as an officer gives it.
 *
 * @param name null where it is not asked
 * @param permitUntil the last day of the permit for limb bolts and releases; null: no permit
 */
record AccountDetails(String name, Role role, LocalDate permitUntil) {
  private static final int LONGEST_NAME = 40;

  /** Reads {@code name}, {@code role} and {@code permitUntil}. */
  static Optional<AccountDetails> parse(Typed typed, boolean withName, LocalDate today) {
    String name =
        withName ? typed.required("name", LONGEST_NAME, "A name to sign in with, please.") : null;
    Role role = typed.requiredWord("role", Role.class, "What is the account for?");
    LocalDate permit = typed.day("permitUntil");
    if (permit != null && permit.isAfter(today.plusYears(5))) {
      typed.fault("permitUntil", "At most five years from today: a permit is renewed.");
    }
    if (permit != null && role == Role.COMMITTEE) {
      typed.fault(
          "permitUntil", "The committee only reads: a permit is for who works at the bench.");
    }
    return typed.sound() ? Optional.of(new AccountDetails(name, role, permit)) : Optional.empty();
  }
}
