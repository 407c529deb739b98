package club.ascham.withdrawal;

import club.ascham.form.Typed;
import club.ascham.id.AccountId;
import java.util.List;
import java.util.Optional;

/**
 * A release as a person gives it.
 *
 * @param lookedAt what was looked at
 * @param lookedBy the person of the club who looked; null: someone else
 * @param lookedByName who else looked; null where it was a person of the club
 * @param why it may be used again
 */
record Release(String lookedAt, AccountId lookedBy, String lookedByName, String why) {
  static final String WHAT = "What was looked at? Limbs, bolts, string: say which, and how.";
  static final String WHY = "Why may it be used again? What was inspected, done or replaced?";

  private static final int LONGEST = 500;
  private static final int LONGEST_NAME = 80;

  /** Someone of the club who may have looked. */
  record Person(AccountId id, String name) {}

  /**
   * Reads {@code lookedAt}, {@code lookedBy} and {@code why}.
   *
   * @param people of the club
   * @param presser looked, where nobody is named
   */
  static Optional<Release> parse(Typed typed, List<Person> people, AccountId presser) {
    String at = typed.reason("lookedAt", LONGEST, WHAT);
    String by = typed.optional("lookedBy", LONGEST_NAME);
    String why = typed.reason("why", LONGEST, WHY);
    if (by != null && by.codePoints().filter(Character::isLetter).limit(2).count() < 2) {
      typed.fault("lookedBy", "Who looked at it? A name, please.");
    }
    if (!typed.sound()) {
      return Optional.empty();
    }
    Optional<AccountId> person =
        by == null
            ? Optional.of(presser)
            : people.stream()
                .filter(one -> one.name().equalsIgnoreCase(by))
                .map(Person::id)
                .findFirst();
    return Optional.of(new Release(at, person.orElse(null), person.isPresent() ? null : by, why));
  }
}
