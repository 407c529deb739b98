package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Makes and changes accounts. Secrets are handed back once and kept only as hashes. */
@ApplicationScoped
class ChangeAccounts {
  private final Accounts accounts;
  private final Passwords passwords;
  private final ClubTime time;

  ChangeAccounts(Accounts accounts, Passwords passwords, ClubTime time) {
    this.accounts = accounts;
    this.passwords = passwords;
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
    return Outcome.CHANGED;
  }

  @Writes
  void setPassword(AccountId id, String passwordHash) {
    account(id).changePassword(passwordHash);
  }

  @Writes
  Outcome close(AccountId id) {
    if (account(id).role() == Role.OFFICER && accounts.isLastOfficer(id)) {
      return Outcome.LAST_OFFICER;
    }
    account(id).close(time.today());
    return Outcome.CHANGED;
  }

  @Writes
  void reopen(AccountId id) {
    account(id).reopen();
  }

  @Writes
  void measureIn(AccountId id, LengthUnit unit) {
    account(id).measureIn(unit);
  }

  /** Makes a new access key, in the place of an earlier one, and hands it back this once. */
  @Writes
  String newAccessKey(AccountId id) {
    String key = passwords.secret();
    account(id).useAccessKey(Passwords.digest(key));
    return key;
  }

  @Writes
  void revokeAccessKey(AccountId id) {
    account(id).useAccessKey(null);
  }

  /** Whether this is the account's password now. */
  boolean knows(String name, String password) {
    return accounts
        .named(name)
        .map(account -> passwords.matches(password, account.passwordHash()))
        .orElse(false);
  }

  private Account account(AccountId id) {
    return Optional.ofNullable(accounts.findById(id.value())).orElseThrow();
  }
}
