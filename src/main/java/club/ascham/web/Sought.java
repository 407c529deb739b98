package club.ascham.web;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/**
 * The words that a person looks for on a page. They may be somebody's name, and addresses stay in
 * histories and in a proxy's log: so words are posted, and kept for the page in a cookie of its own
 * path, which also serves the browser's button back and the next page of a list. They are read for
 * the account that typed them alone.
 *
 * <p>Only a program that asks with {@code ?q=} writes the words into an address.
 */
@RequestScoped
public class Sought {
  private static final String COOKIE = "ascham-sought";
  private static final Duration KEPT = Duration.ofHours(1);

  private final WhoActs actor;
  private final RoutingContext request;

  Sought(WhoActs actor, RoutingContext request) {
    this.actor = actor;
    this.request = request;
  }

  /**
   * On to a page of ours that reads the words with {@link #words()}.
   *
   * @param words none (empty): what was looked for there before is forgotten
   */
  public Response on(String page, String words) {
    URI address = URI.create(page);
    return Response.seeOther(address)
        .cookie(
            new NewCookie.Builder(COOKIE)
                .value(words.isEmpty() ? "" : encoded(mark() + words))
                .path(address.getPath())
                .httpOnly(true)
                .sameSite(NewCookie.SameSite.STRICT)
                .maxAge(words.isEmpty() ? 0 : (int) KEPT.toSeconds())
                .build())
        .build();
  }

  /** What this person last looked for at this page; empty: nothing, or too long ago. */
  public String words() {
    Cookie cookie = request.request().getCookie(COOKIE);
    if (cookie == null || !actor.signedIn()) {
      return "";
    }
    try {
      String kept = URLDecoder.decode(cookie.getValue(), StandardCharsets.UTF_8);
      return kept.startsWith(mark()) ? kept.substring(mark().length()) : "";
    } catch (IllegalArgumentException notOurs) {
      return "";
    }
  }

  private String mark() {
    return actor.id().value() + " ";
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
