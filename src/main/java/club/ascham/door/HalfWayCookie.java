package club.ascham.door;

import io.quarkus.vertx.http.runtime.security.PersistentLoginManager;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Carries who is half-way through signing in, sealed by the platform with a key of its own: what it
 * seals is no session, and no session is one of these.
 */
@Singleton
class HalfWayCookie {
  private static final String NAME = "ascham-half-way";

  private final PersistentLoginManager sealed;

  HalfWayCookie(@ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key) {
    long lasts = HalfWay.LASTS.toMillis();
    this.sealed =
        new PersistentLoginManager(
            "half-way " + key, NAME, lasts, lasts, true, "STRICT", "/", -1, null);
  }

  void carry(HalfWay halfWay, RoutingContext request) {
    sealed.save(halfWay.text(), request, name(request), null, request.request().isSSL());
  }

  Optional<HalfWay> carried(RoutingContext request) {
    return Optional.ofNullable(sealed.restore(request, name(request)))
        .flatMap(found -> HalfWay.parse(found.getPrincipal()));
  }

  void end(RoutingContext request) {
    request.response().addCookie(DoorCookie.written(name(request), "", request).setMaxAge(0));
  }

  private static String name(RoutingContext request) {
    return DoorCookie.named(NAME, request);
  }
}
