package club.ascham.door;

import club.ascham.Settings;
import club.ascham.people.Session;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpCredentialTransport;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.quarkus.vertx.http.runtime.security.PersistentLoginManager;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Keeps who is signed in, in a cookie sealed by the platform. Ours and not the platform's form
 * sign-in, because that one takes names and passwords at an address that no token guards.
 */
@Singleton
class SessionCookie implements HttpAuthenticationMechanism {
  static final String SCHEME = "session";

  private static final String NAME = "ascham-session";
  private static final String ASKED_FOR = "ascham-location";
  private static final int LONGEST_ADDRESS = 500;

  private final PersistentLoginManager sealed;

  SessionCookie(
      @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key,
      Settings settings) {
    Duration idle = settings.sessionIdle();
    Duration renewed = idle.dividedBy(60);
    this.sealed =
        new PersistentLoginManager(
            key, NAME, idle.toMillis(), renewed.toMillis(), true, "STRICT", "/", -1, null);
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      RoutingContext request, IdentityProviderManager identities) {
    PersistentLoginManager.RestoreResult found = sealed.restore(request, name(request));
    if (found == null) {
      return Uni.createFrom().nullItem();
    }
    return identities
        .authenticate(
            HttpSecurityUtils.setRoutingContextAttribute(
                new TrustedAuthenticationRequest(found.getPrincipal()), request))
        // A session that is over is none: whoever carries it may still ask for the sign-in page.
        .onFailure(AuthenticationFailedException.class)
        .recoverWithNull()
        .onItem()
        .ifNotNull()
        .invoke(
            known ->
                sealed.save(found.getPrincipal(), request, name(request), found, tls(request)));
  }

  void carry(Session session, RoutingContext request) {
    sealed.save(session.text(), request, name(request), null, tls(request));
  }

  void end(RoutingContext request) {
    request.response().addCookie(DoorCookie.written(name(request), "", request).setMaxAge(0));
  }

  /** Leads to the sign-in page, and remembers the page that was asked for. */
  @Override
  public Uni<ChallengeData> getChallenge(RoutingContext request) {
    String asked = request.request().uri();
    if (request.request().method() == HttpMethod.GET && asked.length() <= LONGEST_ADDRESS) {
      request
          .response()
          .addCookie(
              DoorCookie.written(
                  ASKED_FOR, URLEncoder.encode(asked, StandardCharsets.UTF_8), request));
    }
    return Uni.createFrom().item(new ChallengeData(302, "Location", "/sign-in"));
  }

  /** The page of ours that was asked for before signing in; the first page if none was. */
  String pageAskedFor(RoutingContext request) {
    Cookie asked = request.request().getCookie(ASKED_FOR);
    if (asked == null) {
      return "/";
    }
    request.response().addCookie(DoorCookie.written(ASKED_FOR, "", request).setMaxAge(0));
    return ownPage(asked.getValue());
  }

  /** A cookie can be planted: whatever is not plainly a path of ours leads to the first page. */
  static String ownPage(String cookie) {
    try {
      String path = URLDecoder.decode(cookie, StandardCharsets.UTF_8);
      URI address = URI.create(path);
      boolean ours =
          path.startsWith("/")
              && !path.startsWith("//")
              && address.getScheme() == null
              && address.getRawAuthority() == null;
      return ours ? path : "/";
    } catch (IllegalArgumentException unreadable) {
      return "/";
    }
  }

  @Override
  public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
    return Set.of(TrustedAuthenticationRequest.class);
  }

  @Override
  public Uni<HttpCredentialTransport> getCredentialTransport(RoutingContext request) {
    return Uni.createFrom()
        .item(new HttpCredentialTransport(HttpCredentialTransport.Type.COOKIE, NAME, SCHEME));
  }

  private static String name(RoutingContext request) {
    return DoorCookie.named(NAME, request);
  }

  private static boolean tls(RoutingContext request) {
    return request.request().isSSL();
  }
}
