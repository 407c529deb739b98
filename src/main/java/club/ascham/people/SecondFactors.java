package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Who gives a one-time code after the password, and which codes were taken.
 *
 * <p>For whoever turned it on under <em>My account</em>; on <em>People</em> an officer says who
 * must have one: nobody to start with, officers, everyone. Whatever changes of a second step ends
 * every session. Over the API the password of such an account is answered as a wrong one; access
 * keys go on, and open no session.
 */
@ApplicationScoped
public class SecondFactors {
  private final Rows rows;
  private final SealedSecrets sealedSecrets;
  private final ClubTime time;

  SecondFactors(Rows rows, SealedSecrets sealedSecrets, ClubTime time) {
    this.rows = rows;
    this.sealedSecrets = sealedSecrets;
    this.time = time;
  }

  /**
   * A second step that is on, as its holder sees it.
   *
   * @param codesLeft recovery codes that were not used
   */
  public record State(Instant since, int codesLeft) {}

  public Optional<State> of(AccountId account) {
    return rows.one(
        State.class,
        """
        SELECT turned_on_at AS since,
               (SELECT count(*) FROM recovery_code r WHERE r.account_id = s.account_id AND used_at IS NULL) AS codes_left
          FROM second_step s WHERE account_id = ?1""",
        account);
  }

  private record Kept(String sealedSecret, long newestTaken) {}

  /** Takes the code of the moment: each once, and none that is older than one taken before. */
  @Writes
  public boolean take(AccountId account, String typed) {
    OptionalLong step =
        rows.one(
                Kept.class,
                """
                SELECT s.sealed_secret, coalesce(c.time_step, 0) AS newest_taken
                  FROM second_step s LEFT JOIN code_taken c USING (account_id) WHERE account_id = ?1""",
                account)
            .map(kept -> matched(kept, account, typed))
            .orElse(OptionalLong.empty());
    step.ifPresent(taken -> taken(account, taken));
    return step.isPresent();
  }

  private OptionalLong matched(Kept kept, AccountId account, String typed) {
    OptionalLong step =
        sealedSecrets
            .open(kept.sealedSecret(), account)
            .map(secret -> OneTimeCode.matched(secret.bytes(), typed, time.now()))
            .orElse(OptionalLong.empty());
    return step.isPresent() && step.getAsLong() > kept.newestTaken() ? step : OptionalLong.empty();
  }

  // What follows writes inside the use case's transaction.

  /** False: it is on already; nothing was changed. */
  boolean add(AccountId account, SharedSecret secret, long stepOfTheProof) {
    if (of(account).isPresent()) {
      return false;
    }
    rows.change(
        "INSERT INTO second_step (account_id, sealed_secret, turned_on_at) VALUES (?1, ?2, ?3)",
        account,
        sealedSecrets.seal(secret, account),
        time.now());
    taken(account, stepOfTheProof);
    return true;
  }

  private void taken(AccountId account, long step) {
    rows.change(
        """
        INSERT INTO code_taken (account_id, time_step) VALUES (?1, ?2)
        ON CONFLICT (account_id) DO UPDATE SET time_step = ?2""",
        account,
        step);
  }

  /** New ones, in the place of any before. */
  List<RecoveryCode> newRecoveryCodes(AccountId account) {
    rows.change("DELETE FROM recovery_code WHERE account_id = ?1", account);
    List<RecoveryCode> codes = RecoveryCode.fresh();
    codes.forEach(
        code ->
            rows.change(
                "INSERT INTO recovery_code (digest, account_id) VALUES (?1, ?2)",
                code.digest(),
                account));
    return codes;
  }

  /** False: it is none of the account's, or was used before. */
  boolean use(AccountId account, RecoveryCode code) {
    return rows.change(
            "UPDATE recovery_code SET used_at = ?3 WHERE digest = ?1 AND account_id = ?2 AND used_at IS NULL",
            code.digest(),
            account,
            time.now())
        == 1;
  }

  /** With its recovery codes. False: there was none. */
  boolean remove(AccountId account) {
    return rows.change("DELETE FROM second_step WHERE account_id = ?1", account) == 1;
  }
}
