package club.ascham.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Lets nothing but a form change anything through a page: the platform looks for a token in forms
 * only, and a body of no kind at all would come in without.
 */
class FormsOnly {
  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

  @ServerRequestFilter(preMatching = true)
  Response refuseOthers(ContainerRequestContext request) {
    if (SAFE.contains(request.getMethod())
        || request.getUriInfo().getPath().startsWith("/api/")
        || isForm(request.getHeaderString("Content-Type"))) {
      return null;
    }
    return Problem.response(415, "Not that kind", "This address takes a form.");
  }

  private static boolean isForm(String type) {
    if (type == null) {
      return false;
    }
    String kind = type.split(";", 2)[0].strip();
    return kind.equalsIgnoreCase(MediaType.APPLICATION_FORM_URLENCODED)
        || kind.equalsIgnoreCase(MediaType.MULTIPART_FORM_DATA);
  }
}
