package club.ascham.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Refuses a change that a page of another site asks for, whatever the browser sends along. */
class SameOrigin {
  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

  @ServerRequestFilter(preMatching = true)
  Response refuseForeign(ContainerRequestContext request) {
    if (SAFE.contains(request.getMethod())) {
      return null;
    }
    String site = request.getHeaderString("Sec-Fetch-Site");
    String origin = request.getHeaderString("Origin");
    boolean foreign =
        "cross-site".equals(site)
            || (origin != null && !sameHost(origin, request.getHeaderString("Host")));
    return foreign
        ? Problem.response(403, "Not from here", "This change was asked for by another site.")
        : null;
  }

  private static boolean sameHost(String origin, String host) {
    try {
      return URI.create(origin).getAuthority() != null
          && URI.create(origin).getAuthority().equalsIgnoreCase(host);
    } catch (IllegalArgumentException unreadable) {
      return false;
    }
  }
}
