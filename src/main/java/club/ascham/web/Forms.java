package club.ascham.web;

import club.ascham.form.Typed;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A posted form as texts by field; of a field sent several times the last counts. */
public final class Forms {
  private Forms() {}

  /** Of the fields that begin with one of these names every tick counts, as one text by commas. */
  public static Typed typed(MultivaluedMap<String, String> form, String... ticksOf) {
    Map<String, String> texts = new LinkedHashMap<>();
    form.forEach(
        (name, values) ->
            texts.put(
                name,
                Arrays.stream(ticksOf).anyMatch(name::startsWith)
                    ? String.join(",", values)
                    : values.get(values.size() - 1)));
    return Typed.of(texts);
  }

  /** A field to the letter, blanks at its ends and all: a password. Empty where there is none. */
  public static String exactly(MultivaluedMap<String, String> form, String field) {
    List<String> values = form.getOrDefault(field, List.of());
    return values.isEmpty() ? "" : values.get(values.size() - 1);
  }
}
