package club.ascham.register;

import java.util.LinkedHashMap;
import java.util.Map;

/** The values of an item's fields, as they were typed or as they are stored. */
final class FieldValues {
  private final Map<String, Object> values = new LinkedHashMap<>();

  /** Null puts nothing. */
  FieldValues put(ItemField<?> field, Object value) {
    if (value != null) {
      values.put(field.name(), value);
    }
    return this;
  }

  /** What is known, or else what holds without; null: neither. */
  @SuppressWarnings("unchecked")
  <T> T get(ItemField<T> field) {
    return (T) values.getOrDefault(field.name(), field.otherwise());
  }
}
