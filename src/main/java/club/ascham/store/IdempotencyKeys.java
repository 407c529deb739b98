package club.ascham.store;

import club.ascham.form.Outcome;
import club.ascham.id.AccountId;
import club.ascham.id.Made;
import club.ascham.time.ClubTime;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Lets each press be done once: what it made is kept with its key in the transaction that makes it,
 * behind the gate, so that a crash can't part them and of two at once the second finds the first. A
 * key is bound to who pressed, to the call, and to what was sent with it. Nothing is kept of what
 * was not done: the same key may be sent again with better answers.
 *
 * <p>What is kept is kind and id of what was made, so the same press gets the first answer, and the
 * same key with other values is refused. What is answered must follow from what was made; what does
 * not is kept in {@link KeptAnswers}. A form with a password or a code in it has no key: the digest
 * would be a fast hash of it.
 */
@ApplicationScoped
public class IdempotencyKeys {
  /** No form is left open for so long, and no program tries again so late. */
  public static final Duration KEPT = Duration.ofDays(30);

  private final Rows rows;
  private final ClubTime time;

  IdempotencyKeys(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * One press.
   *
   * @param by who pressed
   * @param call the method and the path that it was sent to
   * @param key as it was sent, never empty
   * @param digest of what was sent beside it
   */
  public record Press(AccountId by, String call, String key, String digest) {}

  /** Gives back the typed name of what was made. */
  public interface Named<T extends Made> {
    T by(String kind, long id);
  }

  private record Kept(String digest, String kind, long made) {}

  /**
   * Does the work, unless this very press did it before.
   *
   * @param made names again what was made
   * @param otherwise what becomes of a key that was sent before with other values; it is handed
   *     what was made then
   */
  @Writes
  public <T extends Made> Outcome<T> once(
      Press press, Named<T> made, Supplier<Outcome<T>> work, Function<T, Outcome<T>> otherwise) {
    Optional<Kept> before = kept(press);
    if (before.isPresent()) {
      T then = made.by(before.get().kind(), before.get().made());
      return before.get().digest().equals(press.digest())
          ? new Outcome.DoneBefore<>(then)
          : otherwise.apply(then);
    }
    Outcome<T> outcome = work.get();
    if (outcome instanceof Outcome.Done<T> done) {
      keep(press, done.made());
    } else {
      QuarkusTransaction.setRollbackOnly();
    }
    return outcome;
  }

  /** Whether this key was sent before, with whatever values. */
  public boolean knows(Press press) {
    return kept(press).isPresent();
  }

  private Optional<Kept> kept(Press press) {
    return rows.one(
        Kept.class,
        "SELECT digest, made_kind AS kind, made_id AS made FROM idempotency_key WHERE account_id = ?1 AND call = ?2 AND key = ?3",
        press.by(),
        press.call(),
        press.key());
  }

  private void keep(Press press, Made made) {
    rows.change("DELETE FROM idempotency_key WHERE at < ?1", time.now().minus(KEPT));
    rows.change(
        """
        INSERT INTO idempotency_key (account_id, call, key, digest, made_kind, made_id, at)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)""",
        press.by(),
        press.call(),
        press.key(),
        press.digest(),
        made.kind(),
        made.value(),
        time.now());
  }
}
