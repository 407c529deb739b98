package club.ascham.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** A flash that a page has shown is gone. */
class ShownFlash {
  @ServerResponseFilter
  void forget(ContainerRequestContext request, ContainerResponseContext response) {
    MediaType type = response.getMediaType();
    boolean page = type != null && type.isCompatible(MediaType.TEXT_HTML_TYPE);
    if (page && response.getStatus() < 300 && request.getCookies().containsKey(Flash.COOKIE)) {
      response
          .getHeaders()
          .add(
              "Set-Cookie",
              new NewCookie.Builder(Flash.COOKIE)
                  .value("")
                  .path("/")
                  .httpOnly(true)
                  .maxAge(0)
                  .build());
    }
  }
}
