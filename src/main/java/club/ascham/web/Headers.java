package club.ascham.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Headers of every answer, whoever gives it: nothing inline runs, nobody frames us, nothing is kept
 * by the way; and each cookie is for this site and for requests alone.
 */
@Singleton
class Headers {
  private static final int FIRST = 1000;
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
  private static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy", POLICY,
          "X-Content-Type-Options", "nosniff",
          "Referrer-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Permissions-Policy",
              "camera=(), microphone=(), geolocation=(), payment=(), usb=(), display-capture=()");
  private static final String ONLY_BY_TLS_FOR_A_YEAR = "max-age=31536000";

  void everywhere(@Observes Filters filters) {
    filters.register(
        request -> {
          request.addHeadersEndHandler(end -> finish(request));
          request.next();
        },
        FIRST);
  }

  /**
   * What fails before the filters, such as a request without a host. What the server or its router
   * refuses before that (a line or header too long, an address that can't be decoded, no HTTP at
   * all) has no body and nothing that a header could guard; the platform gives us no hand in it.
   */
  void whatFailsBeforeThat(@Observes Router router) {
    router
        .route()
        .order(Integer.MIN_VALUE)
        .failureHandler(
            request -> {
              if (!request.response().headWritten()) {
                finish(request);
              }
              if (isWithoutHost(request)) {
                Limits.refuse(
                    request, 400, "No host", "Say with one Host header which server is meant.");
              } else {
                request.next();
              }
            });
  }

  /** The platform would write an error with its trace into the log, and answer its number. */
  private static boolean isWithoutHost(RoutingContext request) {
    return request.statusCode() == 400
        && request.request().version() != HttpVersion.HTTP_1_0
        && request.request().authority() == null
        && !request.response().ended();
  }

  private static void finish(RoutingContext request) {
    MultiMap headers = request.response().headers();
    ALWAYS.forEach(headers::set);
    if (!headers.contains("Cache-Control")) {
      headers.set("Cache-Control", "no-store");
    }
    boolean tls = request.request().isSSL();
    if (tls) {
      headers.set("Strict-Transport-Security", ONLY_BY_TLS_FOR_A_YEAR);
    }
    for (Cookie cookie : request.request().cookies()) {
      // One that came with the request has no path: whatever is set on it would send it back.
      if (cookie.getPath() != null) {
        cookie.setHttpOnly(true).setSameSite(CookieSameSite.STRICT).setSecure(tls);
      }
    }
    List<String> written = headers.getAll("Set-Cookie");
    if (!written.isEmpty()) {
      headers.set("Set-Cookie", written.stream().map(cookie -> finished(cookie, tls)).toList());
    }
  }

  /** A cookie that is already written as a header. */
  static String finished(String cookie, boolean tls) {
    return with("SameSite=Strict", with("HttpOnly", tls ? with("Secure", cookie) : cookie));
  }

  private static String with(String attribute, String cookie) {
    String name = attribute.split("=")[0].toLowerCase(Locale.ROOT);
    return cookie.toLowerCase(Locale.ROOT).contains(";" + name)
            || cookie.toLowerCase(Locale.ROOT).contains("; " + name)
        ? cookie
        : cookie + ";" + attribute;
  }
}
