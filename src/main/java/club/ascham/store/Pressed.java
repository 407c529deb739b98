package club.ascham.store;

import club.ascham.time.ClubTime;
import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/**
 * Remembers what the first press of a form led to, so that a second press of the same form is led
 * there too and changes nothing. Ask and tell inside the use case's transaction. A key counts at
 * the address it was sent to: elsewhere the same one is another form's.
 */
@ApplicationScoped
public class Pressed {
  private final Rows rows;
  private final ClubTime time;
  private final CurrentVertxRequest request;

  Pressed(Rows rows, ClubTime time, CurrentVertxRequest request) {
    this.rows = rows;
    this.time = time;
    this.request = request;
  }

  /**
   * The page that this form's first press led to; empty for a first press, or a form without a key.
   */
  public Optional<String> ledTo(String formKey) {
    return formKey == null || formKey.isBlank()
        ? Optional.empty()
        : rows.texts("SELECT led_to FROM pressed WHERE form_key = ?1", here(formKey)).stream()
            .findFirst();
  }

  public void leads(String formKey, String page) {
    if (formKey != null && !formKey.isBlank()) {
      rows.change(
          "INSERT INTO pressed (form_key, led_to, at) VALUES (?1, ?2, ?3)",
          here(formKey),
          page,
          time.now());
    }
  }

  private String here(String formKey) {
    RoutingContext asked =
        Arc.container().requestContext().isActive() ? request.getCurrent() : null;
    return asked == null ? formKey : formKey + " " + asked.normalizedPath();
  }
}
