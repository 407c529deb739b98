package club.ascham.web;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** One sentence carried over a redirect: what the save did. */
final class Flash {
  static final String COOKIE = "ascham-said";

  private Flash() {}

  static String in(RoutingContext request) {
    Cookie cookie = request.request().getCookie(COOKIE);
    if (cookie == null || cookie.getValue().isEmpty()) {
      return null;
    }
    try {
      return URLDecoder.decode(cookie.getValue(), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notOurs) {
      return null;
    }
  }

  static String encoded(String said) {
    return URLEncoder.encode(said, StandardCharsets.UTF_8);
  }
}
