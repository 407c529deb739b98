package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Makes and changes accounts. Secrets are handed back once and kept only as hashes. */
@ApplicationScoped
class ChangeAccounts {
  private final Accounts accounts;
  private final Passwords passwords;
  private final PasswordLinks links;
  private final SignedInSessions sessions;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeAccounts(
      Accounts accounts,
      Passwords passwords,
      PasswordLinks links,
      SignedInSessions sessions,
      Story story,
      Actor actor,
      ClubTime time) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.links = links;
    this.sessions = sessions;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** How a change went. */
  enum Outcome {
    CHANGED,
    /** Someone saved since the form was opened; nothing was changed. */
    STALE,
    /** Nobody could make or change accounts any more; nothing was changed. */
    LAST_OFFICER
  }

  boolean isTaken(String name) {
    return accounts.count("lower(name) = lower(?1)", name) > 0;
  }

  /** Slow: hash before the transaction. */
  String hash(String password) {
    return passwords.hash(password);
  }

  /** Makes an account that nobody can sign in with until the link, handed back here, is used. */
  @Writes
  String invite(AccountDetails details) {
    Account account = new Account(details.name(), "", details.role(), details.permitUntil());
    accounts.persist(account);
    String secret = links.make(account.id());
    tell("Made an account and a link to join.");
    return secret;
  }

  /** A link to choose a new password; until it is used the old one stays. */
  @Writes
  String newLink(AccountId id) {
    String secret = links.make(id);
    tell("Made a link to choose a new password.");
    return secret;
  }

  /** False: the link was used or ended meanwhile; nothing was changed. */
  @Writes
  boolean choosePassword(String secret, String passwordHash) {
    PasswordLinks.Link link = links.find(secret).orElse(null);
    if (link == null || !link.isOpen(time.now())) {
      return false;
    }
    account(link.account()).changePassword(passwordHash);
    sessions.endAll(link.account());
    links.use(secret);
    links.endAll(link.account());
    tell(link.account(), "Chose a password by a one-time link.");
    return true;
  }

  @Writes
  Outcome change(AccountId id, int version, AccountDetails details) {
    Account account = account(id);
    if (account.version() != version) {
      return Outcome.STALE;
    }
    if (account.role() == Role.OFFICER
        && details.role() != Role.OFFICER
        && accounts.isLastOfficer(id)) {
      return Outcome.LAST_OFFICER;
    }
    account.serveAs(details.role(), details.permitUntil());
    tell("Changed what an account is for.");
    return Outcome.CHANGED;
  }

  @Writes
  void setPassword(AccountId id, String passwordHash) {
    account(id).changePassword(passwordHash);
    sessions.endAll(id);
    links.endAll(id);
    tell("Set a new password.");
  }

  @Writes
  Outcome close(AccountId id) {
    if (account(id).role() == Role.OFFICER && accounts.isLastOfficer(id)) {
      return Outcome.LAST_OFFICER;
    }
    account(id).close(time.today());
    sessions.endAll(id);
    links.endAll(id);
    tell("Closed an account.");
    return Outcome.CHANGED;
  }

  /** For when someone forgot to sign out somewhere; password and key stay. */
  @Writes
  void endSessions(AccountId id) {
    sessions.endAll(id);
    tell("Ended every session of an account.");
  }

  /** False: it was erased, and opens no more; nothing was changed. */
  @Writes
  boolean reopen(AccountId id) {
    if (account(id).isErased()) {
      return false;
    }
    account(id).reopen();
    tell("Opened an account again.");
    return true;
  }

  @Writes
  void measureIn(AccountId id, LengthUnit unit) {
    account(id).measureIn(unit);
    tell("Chose the unit to measure in.");
  }

  /** Makes a new access key, in the place of an earlier one, and hands it back this once. */
  @Writes
  String newAccessKey(AccountId id) {
    String key = passwords.secret();
    account(id).useAccessKey(Passwords.digest(key));
    tell("Made an access key.");
    return key;
  }

  @Writes
  void revokeAccessKey(AccountId id) {
    account(id).useAccessKey(null);
    tell("Took back an access key.");
  }

  private void tell(String sentence) {
    tell(actor.id(), sentence);
  }

  private void tell(AccountId by, String sentence) {
    story.tell(Story.Told.ofClub(time.now(), by, sentence));
  }

  private Account account(AccountId id) {
    return Optional.ofNullable(accounts.findById(id.value())).orElseThrow();
  }
}
