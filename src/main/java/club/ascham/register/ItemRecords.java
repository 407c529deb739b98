package club.ascham.register;

import club.ascham.store.Rows;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Keeps the items, each with the row of its kind. */
@ApplicationScoped
class ItemRecords implements PanacheRepository<Item> {
  private final Rows rows;

  ItemRecords(Rows rows) {
    this.rows = rows;
  }

  void add(Item item, ItemDetails details) {
    persist(item);
    List<ItemField<?>> own = ItemFields.own(details.kind().slug());
    List<Object> values = new ArrayList<>(List.of(item.id()));
    own.forEach(field -> values.add(field.stored(details)));
    rows.add(
        own.stream()
            .map(ItemField::column)
            .collect(Collectors.joining(", ", own.get(0).table() + " (id, ", ")")),
        List.of(values));
  }

  void change(Item item, ItemDetails details) {
    item.describe(details);
    List<ItemField<?>> own = ItemFields.own(details.kind().slug());
    List<Object> values = new ArrayList<>(List.of(item.id()));
    List<String> put = new ArrayList<>();
    for (ItemField<?> field : own) {
      values.add(field.stored(details));
      put.add(field.column() + " = ?" + values.size());
    }
    rows.change(
        "UPDATE %s SET %s WHERE id = ?1".formatted(own.get(0).table(), String.join(", ", put)),
        values.toArray());
  }
}
