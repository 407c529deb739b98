package club.ascham.people;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes and changes accounts. Secrets are shown once and kept only as hashes. */
@ApplicationScoped
public class ChangeAccounts {
  private static final Outcome<AccountId> LAST_OFFICER =
      Outcome.refused(
          "role", "This is the last officer's account. Make someone else an officer first.");

  private final Accounts accounts;
  private final Passwords passwords;
  private final PasswordLinks links;
  private final SignedInSessions sessions;
  private final FreshSecrets fresh;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeAccounts(
      Accounts accounts,
      Passwords passwords,
      PasswordLinks links,
      SignedInSessions sessions,
      FreshSecrets fresh,
      Story story,
      Actor actor,
      ClubTime time) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.links = links;
    this.sessions = sessions;
    this.fresh = fresh;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** An access key that was just made. */
  public record FreshKey(String key) {}

  /** Slow: hash before the transaction. */
  public String hash(String password) {
    return passwords.hash(password);
  }

  /** Makes an account that nobody can sign in with until its link is used. */
  @Writes
  Outcome<AccountId> invite(AccountDetails details) {
    Account account = new Account(details.name(), "", details.role(), details.permitUntil());
    accounts.persist(account);
    fresh.keep(links.make(account.id()));
    return done(account.id(), "Made an account and a link to join.", "");
  }

  /** A link to choose a new password; until it is used the old one stays. */
  @Writes
  Outcome<AccountId> newLink(AccountId id) {
    if (!account(id).isOpen()) {
      return Outcome.refused(Refusal.now("Closed", "It is closed: open it again first."));
    }
    fresh.keep(links.make(id));
    return done(id, "Made a link to choose a new password.", "");
  }

  /** False: the link was used or ended meanwhile; nothing was changed. */
  @Writes
  public boolean choosePassword(String secret, String passwordHash) {
    PasswordLinks.Link link = links.find(secret).orElse(null);
    if (link == null || !link.isOpen(time.now())) {
      return false;
    }
    account(link.account()).changePassword(passwordHash);
    sessions.endAll(link.account());
    links.use(secret);
    links.endAll(link.account());
    story.tell(link.account(), "Chose a password by a one-time link.");
    return true;
  }

  @Writes
  Outcome<AccountId> change(AccountId id, OptionalInt version, AccountDetails details) {
    Account account = account(id);
    if (account.version() != version.orElse(-1)) {
      return Outcome.refused(Refusal.savedFirst("this account"));
    }
    if (account.role() == Role.OFFICER
        && details.role() != Role.OFFICER
        && accounts.isLastOfficer(id)) {
      return LAST_OFFICER;
    }
    account.serveAs(details.role(), details.permitUntil());
    return done(
        id,
        "Changed what an account is for.",
        account.name() + " is changed; it holds from the next press.");
  }

  @Writes
  public void setPassword(AccountId id, String passwordHash) {
    account(id).changePassword(passwordHash);
    sessions.endAll(id);
    links.endAll(id);
    story.tell(actor.id(), "Set a new password.");
  }

  @Writes
  Outcome<AccountId> close(AccountId id) {
    Account account = account(id);
    if (account.role() == Role.OFFICER && accounts.isLastOfficer(id)) {
      return LAST_OFFICER;
    }
    account.close(time.today());
    sessions.endAll(id);
    links.endAll(id);
    return done(id, "Closed an account.", "The account of " + account.name() + " is closed.");
  }

  /** For when someone forgot to sign out somewhere; password and key stay. */
  @Writes
  Outcome<AccountId> endSessions(AccountId id) {
    sessions.endAll(id);
    return done(
        id,
        "Ended every session of an account.",
        account(id).name() + " is signed out everywhere.");
  }

  @Writes
  Outcome<AccountId> reopen(AccountId id) {
    Account account = account(id);
    if (account.isErased()) {
      return Outcome.refused(Refusal.now("Erased", "It was erased: it opens no more."));
    }
    account.reopen();
    return done(
        id, "Opened an account again.", "The account of " + account.name() + " is open again.");
  }

  @Writes
  public Outcome<AccountId> measureIn(AccountId id, LengthUnit unit) {
    account(id).measureIn(unit);
    return done(
        id, "Chose the unit to measure in.", "A length without a unit is now read that way.");
  }

  /** Makes a new access key, in the place of an earlier one. */
  @Writes
  public Outcome<AccountId> newAccessKey(AccountId id) {
    FreshKey made = fresh.keep(new FreshKey(passwords.secret()));
    account(id).useAccessKey(Passwords.digest(made.key()));
    return done(id, "Made an access key.", "");
  }

  @Writes
  public Outcome<AccountId> revokeAccessKey(AccountId id) {
    account(id).useAccessKey(null);
    fresh.forget(FreshKey.class);
    return done(id, "Took back an access key.", "The access key no longer opens anything.");
  }

  private Outcome<AccountId> done(AccountId id, String told, String said) {
    story.tell(actor.id(), told);
    return Outcome.done(id, said);
  }

  private Account account(AccountId id) {
    return Optional.ofNullable(accounts.findById(id.value())).orElseThrow();
  }
}
