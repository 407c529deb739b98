package club.ascham.door;

import club.ascham.web.Caller;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import java.time.Duration;

/**
 * Where a try to sign in comes from.
 *
 * @param browser what the browser carries from an earlier sign-in; null: nothing
 */
record Visit(Caller caller, String browser) {
  static Visit of(RoutingContext request) {
    Cookie carried = request.request().getCookie(KnownBrowsers.COOKIE);
    return new Visit(Caller.of(request), carried == null ? null : carried.getValue());
  }

  /** As Retry-After says it: whole seconds, rounded up. */
  static String seconds(Duration wait) {
    return Long.toString(Math.max(1, wait.plusMillis(999).toSeconds()));
  }
}
