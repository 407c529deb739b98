package club.ascham.people;

import club.ascham.Settings;
import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.web.ProcessSecrets;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The stays that began with a password, and their end. When each was last used is known to this
 * process alone: it changes with every request, and writing it down would make each of them a save.
 *
 * <p>A session ends after ten hours without a request, a club's whole Saturday, and after seven
 * days in any case. Any number may run side by side: people use the kit room's tablet and their own
 * phone. Signing out, a new password and closing the account end <em>all</em> of them at once;
 * one's own page ends one alone, and an officer ends another's. Each carries its number and
 * beginning, which every request looks up in the one statement that reads the account.
 */
@ApplicationScoped
public class SignedInSessions {
  private final Rows rows;
  private final Clock clock;
  private final Duration idle;
  private final boolean endWithTheProcess;
  private final Instant started;
  private final Map<Long, Instant> lastUsed = new ConcurrentHashMap<>();

  SignedInSessions(
      Rows rows,
      Clock clock,
      Settings settings,
      @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key) {
    this.rows = rows;
    this.clock = clock;
    this.idle = settings.sessionIdle();
    this.endWithTheProcess = ProcessSecrets.isOfThisProcess(key);
    this.started = clock.instant().truncatedTo(ChronoUnit.SECONDS);
  }

  /** Begins one, and forgets those that can't be carried on any more. */
  @Writes
  public Session begin(AccountId account) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    Instant over = now.minus(Session.LONGEST);
    rows.change("DELETE FROM session WHERE begun_at <= ?1", over);
    lastUsed.values().removeIf(used -> !used.isAfter(over));
    rows.change("INSERT INTO session (account_id, begun_at) VALUES (?1, ?2)", account, now);
    Session begun = new Session(account, rows.number("SELECT max(id) FROM session"), now);
    used(begun, now);
    return begun;
  }

  public void used(Session session, Instant now) {
    lastUsed.put(session.number(), now);
  }

  /** Ends one of the account's, in whatever browser: its next request asks for the password. */
  @Writes
  public void end(AccountId account, long number) {
    rows.change(
        "UPDATE session SET ended_at = ?3 WHERE id = ?2 AND account_id = ?1 AND ended_at IS NULL",
        account,
        number,
        clock.instant());
  }

  /** Ends every session of the account. */
  @Writes
  public void endAll(AccountId account) {
    rows.change(
        "UPDATE session SET ended_at = ?2 WHERE account_id = ?1 AND ended_at IS NULL",
        account,
        clock.instant());
  }

  /**
   * One that is open, as its holder sees it.
   *
   * @param lastUsed null: not since the server was started
   */
  @TemplateData
  record Open(long number, Instant since, Instant lastUsed) {}

  private record Stored(long number, Instant since) {}

  /** Those that may still be carried on, the one last used first. */
  List<Open> open(AccountId account) {
    Instant now = clock.instant();
    return rows
        .list(
            Stored.class,
            "SELECT id AS number, begun_at AS since FROM session WHERE account_id = ?1 AND ended_at IS NULL",
            account)
        .stream()
        .filter(stored -> new Session(account, stored.number(), stored.since()).lasts(now))
        .filter(stored -> !endWithTheProcess || lastUsed.containsKey(stored.number()))
        .filter(stored -> lastKnown(stored).plus(idle).isAfter(now))
        .sorted(Comparator.comparing(this::lastKnown).reversed())
        .map(stored -> new Open(stored.number(), stored.since(), lastUsed.get(stored.number())))
        .toList();
  }

  private Instant lastKnown(Stored session) {
    return lastUsed.getOrDefault(session.number(), started);
  }
}
