package club.ascham.people;

import club.ascham.id.AccountId;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stay that began with a password, as the sealed cookie carries it. Its number alone would not
 * do: after a backup was brought back, another may bear it.
 *
 * @param since to the second
 */
public record Session(AccountId account, long number, Instant since) {
  /** Whoever keeps a page open for days gives the password again after these. */
  public static final Duration LONGEST = Duration.ofDays(7);

  private static final Pattern TEXT = Pattern.compile("(\\d{1,18})\\.(\\d{1,18})\\.(\\d{1,15})");

  public static Optional<Session> parse(String text) {
    Matcher parts = TEXT.matcher(text);
    return parts.matches()
        ? Optional.of(
            new Session(
                new AccountId(Long.parseLong(parts.group(1))),
                Long.parseLong(parts.group(2)),
                Instant.ofEpochSecond(Long.parseLong(parts.group(3)))))
        : Optional.empty();
  }

  public String text() {
    return account.value() + "." + number + "." + since.getEpochSecond();
  }

  public boolean lasts(Instant now) {
    return now.isBefore(since.plus(LONGEST));
  }
}
