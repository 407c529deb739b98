package club.ascham.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * Whether a name and a password, or an access key, belong together; one answer for all that don't.
 */
@ApplicationScoped
class SignIn {
  private static final Logger LOG = Logger.getLogger(SignIn.class);

  private final Accounts accounts;
  private final Passwords passwords;
  private final KnownBrowsers browsers;
  private final Sessions sessions;
  private final Clock clock;
  private final Throttle throttle = new Throttle();

  SignIn(
      Accounts accounts,
      Passwords passwords,
      KnownBrowsers browsers,
      Sessions sessions,
      Clock clock) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.browsers = browsers;
    this.sessions = sessions;
    this.clock = clock;
  }

  /** How a try went. */
  sealed interface Outcome {
    record In(Accounts.Credentials account) implements Outcome {}

    /** The name is unknown, or the account closed, or the secret wrong: nobody is told which. */
    record Wrong() implements Outcome {}

    /** Too many were wrong; the secret was not looked at. */
    record Wait(Duration length) implements Outcome {}
  }

  Outcome attempt(String name, String secret, Visit visit) {
    // A key is too long to guess: programs that hold one never wait for people who mistype.
    return accounts
        .named(name)
        .filter(account -> isKeyOf(account, secret))
        .<Outcome>map(Outcome.In::new)
        .orElseGet(() -> byPassword(name, secret, visit));
  }

  Outcome byPassword(String name, String secret, Visit visit) {
    Accounts.Credentials account = accounts.named(name).orElse(null);
    Throttle.Try tried =
        new Throttle.Try(name, visit.caller(), browsers.mark(name, visit.browser()).orElse(null));
    Duration wait = throttle.begin(tried, clock.instant());
    if (!wait.isZero()) {
      LOG.infof("A try to sign in must wait %d s.", wait.toSeconds());
      return new Outcome.Wait(wait);
    }
    if (account == null) {
      passwords.pretendToMatch();
      return wrong();
    }
    if (!passwords.matches(secret, account.passwordHash())) {
      return wrong();
    }
    throttle.right(tried, clock.instant());
    return new Outcome.In(account);
  }

  /** The account that a session belongs to, unless the session is over. */
  Optional<Accounts.Credentials> continued(Session session) {
    Instant now = clock.instant();
    if (!session.lasts(now)) {
      return Optional.empty();
    }
    Optional<Accounts.Credentials> account = accounts.in(session);
    account.ifPresent(known -> sessions.used(session, now));
    return account;
  }

  /** The log names neither the person nor the address: who they are is no matter of the log. */
  private static Outcome wrong() {
    LOG.info("A wrong name or password.");
    return new Outcome.Wrong();
  }

  private static boolean isKeyOf(Accounts.Credentials account, String secret) {
    return account.accessKeyHash() != null
        && MessageDigest.isEqual(
            account.accessKeyHash().getBytes(StandardCharsets.UTF_8),
            Passwords.digest(secret).getBytes(StandardCharsets.UTF_8));
  }
}
