package club.ascham.door;

import club.ascham.web.BehindTls;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;

/** How the cookies of signing in are named and written. */
final class DoorCookie {
  private DoorCookie() {}

  /** Behind TLS the name itself binds the cookie to this host and to TLS. */
  static String named(String name, RoutingContext request) {
    return request.request().isSSL() ? BehindTls.BOUND_TO_HOST + name : name;
  }

  static Cookie written(String name, String value, RoutingContext request) {
    return Cookie.cookie(name, value)
        .setPath("/")
        .setHttpOnly(true)
        .setSecure(request.request().isSSL())
        .setSameSite(CookieSameSite.STRICT);
  }
}
