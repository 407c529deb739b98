package club.ascham.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** Where a request goes on: to another page after a save, or the same page with what was wrong. */
public final class Go {
  private Go() {}

  /** After a save: see the other page, which says what was done; empty: it shows that itself. */
  public static Response to(String path, String said) {
    return said.isEmpty() ? to(path) : flashed(path, Flash.encoded(said));
  }

  /**
   * A press that may be undone.
   *
   * @param button the words that say so
   */
  public record Undo(long move, String button) {}

  /** The same, where what was done may be undone. */
  public static Response to(String path, String said, Undo undo) {
    return flashed(path, Flash.encoded(said, undo));
  }

  private static Response flashed(String path, String flash) {
    return Response.seeOther(URI.create(path))
        .cookie(
            new NewCookie.Builder(Flash.COOKIE)
                .value(flash)
                .path("/")
                .httpOnly(true)
                .sameSite(NewCookie.SameSite.STRICT)
                .maxAge(60)
                .build())
        .build();
  }

  public static Response to(String path) {
    return Response.seeOther(URI.create(path)).build();
  }

  /** A page that answers a press, and shows what is shown this once. */
  public static Response shown(TemplateInstance page) {
    return Response.ok(page).type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8")).build();
  }

  /** The same page again, with what was typed and what is wrong; nothing was changed. */
  public static Response again(TemplateInstance page) {
    return Response.status(422)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page)
        .build();
  }
}
