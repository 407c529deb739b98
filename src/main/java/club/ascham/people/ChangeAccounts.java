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
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeAccounts(Accounts accounts, Passwords passwords, Story story, Actor actor, ClubTime time) {
    this.accounts = accounts;
    this.passwords = passwords;
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

  /** A password that nobody else knows; hash it before the transaction, for it is slow. */
  String newPassword() {
    return passwords.secret().substring(0, 16);
  }

  String hash(String password) {
    return passwords.hash(password);
  }

  @Writes
  void add(AccountDetails details, String passwordHash) {
    accounts.persist(
        new Account(details.name(), passwordHash, details.role(), details.permitUntil()));
    accounts.flush();
    tell("Made an account.");
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
    tell("Set a new password.");
  }

  @Writes
  Outcome close(AccountId id) {
    if (account(id).role() == Role.OFFICER && accounts.isLastOfficer(id)) {
      return Outcome.LAST_OFFICER;
    }
    account(id).close(time.today());
    tell("Closed an account.");
    return Outcome.CHANGED;
  }

  @Writes
  void reopen(AccountId id) {
    account(id).reopen();
    tell("Opened an account again.");
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

  /** Whether this is the account's password now. */
  boolean knows(String name, String password) {
    return accounts
        .named(name)
        .map(account -> passwords.matches(password, account.passwordHash()))
        .orElse(false);
  }

  private void tell(String sentence) {
    accounts.flush();
    story.tell(Story.Told.ofClub(time.now(), actor.id(), sentence));
  }

  private Account account(AccountId id) {
    return Optional.ofNullable(accounts.findById(id.value())).orElseThrow();
  }
}
