package club.ascham.people;

import club.ascham.id.AccountId;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Secrets that were just made, for the browser that asked for them: the newest of each kind is
 * known to one session, for some minutes, and to this process alone. So a second press of the same
 * form shows what the first one made, and neither its key nor anything else in the file does.
 */
@ApplicationScoped
public class FreshSecrets {
  public static final Duration LASTS = Duration.ofMinutes(15);

  private record Place(AccountId asker, long session, Class<?> kind) {}

  private record Made(Object secret, Instant until) {}

  private final Actor actor;
  private final Clock clock;
  private final Map<Place, Made> secrets = new HashMap<>();

  FreshSecrets(Actor actor, Clock clock) {
    this.actor = actor;
    this.clock = clock;
  }

  public synchronized <S> S keep(S secret) {
    Instant now = clock.instant();
    secrets.values().removeIf(made -> !now.isBefore(made.until()));
    secrets.put(place(secret.getClass()), new Made(secret, now.plus(LASTS)));
    return secret;
  }

  public synchronized <S> Optional<S> newest(Class<S> kind) {
    return Optional.ofNullable(secrets.get(place(kind)))
        .filter(made -> clock.instant().isBefore(made.until()))
        .map(made -> kind.cast(made.secret()));
  }

  public synchronized void forget(Class<?> kind) {
    secrets.remove(place(kind));
  }

  private Place place(Class<?> kind) {
    return new Place(actor.id(), actor.session(), kind);
  }
}
