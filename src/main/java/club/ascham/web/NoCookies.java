package club.ascham.web;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Programs get no cookies: the token that pages keep in one is of no use to them. */
class NoCookies {
  private static final String TOKEN = "ascham-csrf";

  private final RoutingContext routing;

  NoCookies(RoutingContext routing) {
    this.routing = routing;
  }

  /**
   * After the filter that sets the token's cookie: of those on an answer the highest goes first.
   */
  @ServerResponseFilter(priority = 1)
  void take(ContainerRequestContext request) {
    if (request.getUriInfo().getPath().startsWith("/api/")) {
      routing.response().removeCookie(TOKEN, false);
      routing.response().removeCookie(BehindTls.BOUND_TO_HOST + TOKEN, false);
    }
  }
}
