package club.ascham.concern;

import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What stands against a thing, as far as a line of a list has room for it.
 *
 * @param heaviest of it
 * @param more how many things stand against it besides
 */
@TemplateData
public record Beside(Concern heaviest, int more) {

  /** Null where nothing is known. */
  static Beside of(List<Concern> heaviestFirst) {
    return heaviestFirst.isEmpty()
        ? null
        : new Beside(heaviestFirst.get(0), heaviestFirst.size() - 1);
  }

  public Weight weight() {
    return heaviest.weight();
  }

  public String brief() {
    return heaviest.brief();
  }
}
