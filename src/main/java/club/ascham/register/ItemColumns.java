package club.ascham.register;

import club.ascham.store.Rows;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Some fields of items as columns of one statement, whatever the items' kinds. */
final class ItemColumns {
  private final List<ItemField<?>> fields;
  private final Map<String, Integer> places = new LinkedHashMap<>();

  /**
   * @param before how many columns the statement has before these
   */
  ItemColumns(List<ItemField<?>> fields, int before) {
    this.fields = fields;
    fields.forEach(field -> places.put(field.place(), before + places.size() + 1));
  }

  /** As selected: {@code riser.build, riser.hand, …}. */
  String selected() {
    return String.join(", ", places.keySet());
  }

  /** {@code LEFT JOIN riser ON riser.id = item.id …}, for all but the items themselves. */
  String joins() {
    return fields.stream()
        .map(ItemField::table)
        .distinct()
        .filter(table -> !table.equals("item"))
        .map(table -> " LEFT JOIN %1$s ON %1$s.id = item.id".formatted(table))
        .collect(Collectors.joining());
  }

  /** What the row holds of an item of this kind. */
  FieldValues read(Rows.Row row, ItemKind kind) {
    FieldValues told = new FieldValues();
    for (ItemField<?> field : ItemFields.of(kind)) {
      Integer place = places.get(field.place());
      if (place != null) {
        told.put(field, row.value(place, field.values().type()));
      }
    }
    return told;
  }
}
