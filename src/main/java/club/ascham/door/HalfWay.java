package club.ascham.door;

import club.ascham.id.AccountId;
import club.ascham.people.Accounts;
import club.ascham.people.Passwords;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * That a password was right a moment ago and a code is still to come, as a sealed cookie carries
 * it. It opens nothing.
 *
 * @param passwordDigest of the password's hash: another password ends it
 * @param since to the second
 */
record HalfWay(AccountId account, String passwordDigest, Instant since) {
  static final Duration LASTS = Duration.ofMinutes(5);

  private static final Pattern TEXT =
      Pattern.compile("half-way\\.(\\d{1,18})\\.([0-9a-f]{64})\\.(\\d{1,15})");

  static HalfWay of(Accounts.Credentials account, Instant now) {
    return new HalfWay(account.id(), Passwords.digest(account.passwordHash()), now);
  }

  static Optional<HalfWay> parse(String text) {
    Matcher parts = TEXT.matcher(text);
    return parts.matches()
        ? Optional.of(
            new HalfWay(
                new AccountId(Long.parseLong(parts.group(1))),
                parts.group(2),
                Instant.ofEpochSecond(Long.parseLong(parts.group(3)))))
        : Optional.empty();
  }

  String text() {
    return "half-way." + account.value() + "." + passwordDigest + "." + since.getEpochSecond();
  }

  /** Whether the rest of the way is still open to the account as it is now. */
  boolean leadsOn(Accounts.Credentials now, Instant at) {
    return at.isBefore(since.plus(LASTS))
        && now.secondStep()
        && Passwords.digest(now.passwordHash()).equals(passwordDigest);
  }
}
