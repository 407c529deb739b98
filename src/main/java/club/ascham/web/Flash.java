package club.ascham.web;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** One sentence carried over a redirect: what the save did, and how it is undone. */
final class Flash {
  static final String COOKIE = "ascham-said";

  private Flash() {}

  /** Parts what was said from what may be undone of it; no encoded text holds one. */
  private static final String AND = "~";

  static String in(RoutingContext request) {
    return part(request, 0);
  }

  /** The press that may be undone; null: none. */
  static Go.Undo undoIn(RoutingContext request) {
    String move = part(request, 1);
    String button = part(request, 2);
    return move == null || button == null || !move.matches("\\d{1,12}")
        ? null
        : new Go.Undo(Long.parseLong(move), button);
  }

  private static String part(RoutingContext request, int nth) {
    Cookie cookie = request.request().getCookie(COOKIE);
    String[] parts = cookie == null ? new String[0] : cookie.getValue().split(AND);
    if (nth >= parts.length || parts[nth].isEmpty()) {
      return null;
    }
    try {
      return URLDecoder.decode(parts[nth], StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notOurs) {
      return null;
    }
  }

  static String encoded(String said) {
    return URLEncoder.encode(said, StandardCharsets.UTF_8);
  }

  static String encoded(String said, Go.Undo undo) {
    return encoded(said) + AND + undo.move() + AND + encoded(undo.button());
  }
}
