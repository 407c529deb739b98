package club.ascham.form;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The components of a JSON body as texts by field; what was not sent is left out. */
final class BodyTexts {
  private BodyTexts() {}

  static Map<String, String> of(Record body) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (RecordComponent component : body.getClass().getRecordComponents()) {
      try {
        component.getAccessor().setAccessible(true);
        Object value = component.getAccessor().invoke(body);
        if (value instanceof Collection<?> ticks) {
          value =
              ticks.stream()
                  .filter(tick -> !(tick instanceof Record))
                  .map(String::valueOf)
                  .collect(Collectors.joining(","));
        }
        if (value != null && !(value instanceof Map)) {
          texts.put(
              component.getName(),
              value instanceof Double number ? Typed.plain(number) : value.toString());
        }
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException(impossible);
      }
    }
    return texts;
  }
}
