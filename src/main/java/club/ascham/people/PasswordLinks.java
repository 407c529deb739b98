package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Links with which someone chooses the password of an account, once and within seven days. */
@ApplicationScoped
public class PasswordLinks {
  static final Duration LASTS = Duration.ofDays(7);

  private final Rows rows;
  private final Passwords passwords;
  private final ClubTime time;

  PasswordLinks(Rows rows, Passwords passwords, ClubTime time) {
    this.rows = rows;
    this.passwords = passwords;
    this.time = time;
  }

  /**
   * A link that was made here.
   *
   * @param joined whether the account had a password before
   * @param usedAt null: not used
   */
  public record Link(
      AccountId account, String name, boolean joined, Instant expiresAt, Instant usedAt) {
    public boolean isOpen(Instant now) {
      return usedAt == null && now.isBefore(expiresAt);
    }
  }

  /** A link that was just made, with the secret that its address ends with. */
  record Fresh(AccountId account, String secret, Instant until) {}

  /** Empty: no such link was ever made here. */
  public Optional<Link> find(String secret) {
    return rows.one(
        Link.class,
        """
        SELECT a.id AS account, a.name, a.password_hash <> '' AS joined, l.expires_at, l.used_at
          FROM password_link l JOIN account a ON a.id = l.account_id WHERE l.digest = ?1""",
        Passwords.digest(secret));
  }

  /** Makes a link inside the use case's transaction, and ends earlier ones. */
  Fresh make(AccountId account) {
    endAll(account);
    Fresh link = new Fresh(account, passwords.secret(), time.now().plus(LASTS));
    rows.change(
        "INSERT INTO password_link (digest, account_id, made_at, expires_at) VALUES (?1, ?2, ?3, ?4)",
        Passwords.digest(link.secret()),
        account,
        time.now(),
        link.until());
    return link;
  }

  void use(String secret) {
    rows.change(
        "UPDATE password_link SET used_at = ?2 WHERE digest = ?1",
        Passwords.digest(secret),
        time.now());
  }

  void endAll(AccountId account) {
    rows.change(
        "UPDATE password_link SET expires_at = ?2 WHERE account_id = ?1 AND used_at IS NULL AND expires_at > ?2",
        account,
        time.now());
  }
}
