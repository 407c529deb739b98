package club.ascham.people;

import club.ascham.id.AccountId;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Secrets that were shown and not yet proved by a code: each is known to one session, for some
 * minutes, and to this process alone.
 */
@ApplicationScoped
class Enrolments {
  static final Duration LASTS = Duration.ofMinutes(15);

  private static final int AT_MOST = 1000;

  private record Begun(AccountId account, SharedSecret secret, Instant until) {}

  private final Clock clock;
  private final Map<Long, Begun> bySession =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Begun> eldest) {
          return size() > AT_MOST;
        }
      };

  Enrolments(Clock clock) {
    this.clock = clock;
  }

  synchronized SharedSecret begin(AccountId account, long session) {
    SharedSecret secret = SharedSecret.fresh();
    bySession.remove(session);
    bySession.put(session, new Begun(account, secret, clock.instant().plus(LASTS)));
    return secret;
  }

  synchronized Optional<SharedSecret> begun(AccountId account, long session) {
    return Optional.ofNullable(bySession.get(session))
        .filter(begun -> begun.account().equals(account))
        .filter(begun -> clock.instant().isBefore(begun.until()))
        .map(Begun::secret);
  }

  synchronized void end(long session) {
    bySession.remove(session);
  }
}
