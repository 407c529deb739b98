package club.ascham.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Headers of every answer: nothing inline runs, nobody frames us, and a shown flash is gone. */
class Headers {
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  @ServerResponseFilter
  void add(ContainerRequestContext request, ContainerResponseContext response) {
    MultivaluedMap<String, Object> headers = response.getHeaders();
    headers.putSingle("Content-Security-Policy", POLICY);
    headers.putSingle("X-Content-Type-Options", "nosniff");
    headers.putSingle("Referrer-Policy", "same-origin");
    headers.putSingle("Cache-Control", "no-store");
    MediaType type = response.getMediaType();
    boolean page = type != null && type.isCompatible(MediaType.TEXT_HTML_TYPE);
    if (page && response.getStatus() < 300 && request.getCookies().containsKey(Flash.COOKIE)) {
      headers.add(
          "Set-Cookie",
          new NewCookie.Builder(Flash.COOKIE).value("").path("/").httpOnly(true).maxAge(0).build());
    }
  }
}
