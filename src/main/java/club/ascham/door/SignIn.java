package club.ascham.door;

import club.ascham.people.Accounts;
import club.ascham.people.ChangeSecondFactor;
import club.ascham.people.Passwords;
import club.ascham.people.RecoveryCode;
import club.ascham.people.SecondFactors;
import club.ascham.people.Session;
import club.ascham.people.SignedInSessions;
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
  private final SignedInSessions sessions;
  private final SecondFactors secondSteps;
  private final ChangeSecondFactor changeSecondStep;
  private final Clock clock;
  private final SignInRateLimit limit = new SignInRateLimit(SignInRateLimit.FOR_PASSWORDS);
  private final SignInRateLimit codes = new SignInRateLimit(SignInRateLimit.FOR_CODES);

  SignIn(
      Accounts accounts,
      Passwords passwords,
      KnownBrowsers browsers,
      SignedInSessions sessions,
      SecondFactors secondSteps,
      ChangeSecondFactor changeSecondStep,
      Clock clock) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.browsers = browsers;
    this.sessions = sessions;
    this.secondSteps = secondSteps;
    this.changeSecondStep = changeSecondStep;
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

  /**
   * For programs, which give no code: where one is needed, a password is wrong and a key is not.
   */
  Outcome attempt(String name, String secret, Visit visit) {
    // A key is too long to guess: programs that hold one never wait for people who mistype.
    return accounts
        .named(name)
        .filter(account -> isKeyOf(account, secret))
        .<Outcome>map(Outcome.In::new)
        .orElseGet(() -> byPassword(name, secret, visit, true));
  }

  /** For people. Of an account with a second step it is half of the way. */
  Outcome byPassword(String name, String secret, Visit visit) {
    return byPassword(name, secret, visit, false);
  }

  /**
   * @param alone whether nothing else will be asked for
   */
  private Outcome byPassword(String name, String secret, Visit visit, boolean alone) {
    Accounts.Credentials account = accounts.named(name).orElse(null);
    SignInRateLimit.Try tried =
        new SignInRateLimit.Try(
            name, visit.caller(), browsers.mark(name, visit.browser()).orElse(null));
    Duration wait = limit.begin(tried, clock.instant());
    if (!wait.isZero()) {
      LOG.infof("A try to sign in must wait %d s.", wait.toSeconds());
      return new Outcome.Wait(wait);
    }
    if (account == null || alone && account.needsTwoSteps()) {
      // Not even looked at: whoever guesses here must not learn from a wait that one was right.
      passwords.pretendToMatch();
      return wrong();
    }
    if (!passwords.matches(secret, account.passwordHash())) {
      return wrong();
    }
    limit.right(tried, clock.instant());
    return new Outcome.In(account);
  }

  /** The account that is half-way in, as it is now; empty where the password must be given anew. */
  Optional<Accounts.Credentials> halfWay(HalfWay halfWay) {
    return accounts
        .numbered(halfWay.account())
        .filter(account -> halfWay.leadsOn(account, clock.instant()));
  }

  /** A code from the phone, or a recovery code, of someone who gave the right password. */
  Outcome byCode(Accounts.Credentials account, String typed, Visit visit) {
    boolean recovered =
        RecoveryCode.parse(typed)
            .map(code -> changeSecondStep.useRecoveryCode(account.id(), code))
            .orElse(false);
    if (recovered) {
      // Too long to guess, so it never waits: nobody who holds one can be kept out.
      return new Outcome.In(account);
    }
    SignInRateLimit.Try tried =
        new SignInRateLimit.Try(
            account.name(),
            visit.caller(),
            browsers.mark(account.name(), visit.browser()).orElse(null));
    Duration wait = codes.begin(tried, clock.instant());
    if (!wait.isZero()) {
      LOG.infof("A one-time code must wait %d s.", wait.toSeconds());
      return new Outcome.Wait(wait);
    }
    if (!secondSteps.take(account.id(), typed)) {
      LOG.info("A right password, and a wrong one-time code.");
      return new Outcome.Wrong();
    }
    codes.right(tried, clock.instant());
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
