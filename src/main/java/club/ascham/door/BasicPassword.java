package club.ascham.door;

import io.quarkus.vertx.http.runtime.security.BasicAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;

/**
 * Name and password (or access key) in each request of a program; too many wrong ones must wait.
 */
@Singleton
class BasicPassword extends BasicAuthenticationMechanism {
  private static final String WAIT = BasicPassword.class.getName() + ".wait";

  BasicPassword() {
    super("Ascham", false, StandardCharsets.UTF_8, Map.of(), DEFAULT_PRIORITY);
  }

  static void mustWait(RoutingContext request, Duration wait) {
    request.put(WAIT, Visit.seconds(wait));
  }

  @Override
  public Uni<ChallengeData> getChallenge(RoutingContext request) {
    String seconds = request.get(WAIT);
    return seconds == null
        ? super.getChallenge(request)
        : Uni.createFrom().item(new ChallengeData(429, "Retry-After", seconds));
  }
}
