package club.ascham.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;

/**
 * A form whose token is no longer good: the platform refuses it with an empty answer, which would
 * lose what was typed. It comes back with all of it and a good token, to be sent again by one
 * press; passwords, codes and files have to be given again. Only a form of our own page comes this
 * far ({@link SameOrigin}).
 */
class StaleForm {
  private static final int TOKEN_BYTES = 16;
  private static final Pattern SECRET = Pattern.compile("(?i).*password|(codes|off)code");
  private static final Pattern DOORS = Pattern.compile("/(sign-in|me|first-officer)(/.*)?");
  private static final String TOKEN_FIELD = "csrf-token";

  /** What was typed into one field. */
  public record Kept(String name, String value) {}

  @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record StaleFormPage(String address, String token, List<Kept> fields, boolean lost)
      implements TemplateInstance {}

  private final SecureRandom random = new SecureRandom();
  private final RoutingContext routing;
  private final String cookie;

  StaleForm(
      RoutingContext routing,
      @ConfigProperty(name = "quarkus.rest-csrf.cookie-name") String cookie) {
    this.routing = routing;
    this.cookie = cookie;
  }

  /** Every refusal of our own says something; the platform's of a token says nothing. */
  @ServerResponseFilter
  void giveBack(ContainerRequestContext request, ContainerResponseContext response) {
    String path = request.getUriInfo().getPath();
    if (response.getStatus() != 400 || response.hasEntity()) {
      return;
    }
    if (path.startsWith("/api/")) {
      Response said =
          Problem.response(415, "Not that kind", "No address of a program takes a form.");
      response.setStatus(said.getStatus());
      response.setEntity(said.getEntity(), null, said.getMediaType());
      return;
    }
    List<Kept> fields = new ArrayList<>();
    boolean lost = false;
    FormData form = form();
    for (String name : form) {
      for (FormValue value : form.get(name)) {
        if (name.equals(TOKEN_FIELD)) {
          continue;
        }
        boolean kept = !value.isFileItem() && !isSecret(path, name);
        lost |= !kept;
        if (kept) {
          fields.add(new Kept(name, value.getValue()));
        }
      }
    }
    response.setEntity(
        new StaleFormPage(address(request), token(), fields, lost).render(),
        null,
        MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"));
  }

  private static FormData form() {
    FormData read = CurrentRequestManager.get().getFormData();
    return read == null ? new FormData(0) : read;
  }

  private static boolean isSecret(String path, String name) {
    return SECRET.matcher(name).matches() || name.equals("code") && DOORS.matcher(path).matches();
  }

  private static String address(ContainerRequestContext request) {
    String query = request.getUriInfo().getRequestUri().getRawQuery();
    String path = request.getUriInfo().getRequestUri().getRawPath();
    return query == null ? path : path + "?" + query;
  }

  /** The one in the cookie; where that is gone, a new one in a new cookie like the platform's. */
  private String token() {
    Cookie known = routing.request().getCookie(cookie);
    if (known != null) {
      return known.getValue();
    }
    byte[] bytes = new byte[TOKEN_BYTES];
    random.nextBytes(bytes);
    String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    routing
        .response()
        .addCookie(
            Cookie.cookie(cookie, token)
                .setPath("/")
                .setHttpOnly(true)
                .setSecure(routing.request().isSSL())
                .setSameSite(CookieSameSite.STRICT));
    return token;
  }
}
