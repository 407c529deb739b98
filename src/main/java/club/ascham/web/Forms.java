package club.ascham.web;

import club.ascham.form.Typed;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** A posted form as texts by field; of a field sent several times the last counts. */
public final class Forms {
  private Forms() {}

  public static Typed typed(MultivaluedMap<String, String> form) {
    Map<String, String> texts = new LinkedHashMap<>();
    form.forEach((name, values) -> texts.put(name, values.get(values.size() - 1)));
    return Typed.of(texts);
  }
}
