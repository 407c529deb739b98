package club.ascham.people;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.List;

/** Who of the club may be named as the coach that agreed, offered beside the field. */
@ApplicationScoped
@Named("coaches")
public class Coaches {
  private final Rows rows;

  Coaches(Rows rows) {
    this.rows = rows;
  }

  public List<String> names() {
    return rows.texts("SELECT name FROM account WHERE closed_on IS NULL ORDER BY name");
  }
}
