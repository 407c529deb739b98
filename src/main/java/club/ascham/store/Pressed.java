package club.ascham.store;

import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/**
 * Remembers what the first press of a form led to, so that a second press of the same form is led
 * there too and changes nothing. Ask and tell inside the use case's transaction.
 */
@ApplicationScoped
public class Pressed {
  private final Rows rows;
  private final ClubTime time;

  Pressed(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * The page that this form's first press led to; empty for a first press, or a form without a key.
   */
  public Optional<String> ledTo(String formKey) {
    return formKey == null || formKey.isBlank()
        ? Optional.empty()
        : rows.texts("SELECT led_to FROM pressed WHERE form_key = ?1", formKey).stream()
            .findFirst();
  }

  public void leads(String formKey, String page) {
    if (formKey != null && !formKey.isBlank()) {
      rows.change(
          "INSERT INTO pressed (form_key, led_to, at) VALUES (?1, ?2, ?3)",
          formKey,
          page,
          time.now());
    }
  }
}
