package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds items. */
@ApplicationScoped
public class Items implements PanacheRepository<Item> {
  private final Rows rows;

  Items(Rows rows) {
    this.rows = rows;
  }

  /** An item as other features name it. */
  public record Named(ItemId id, ItemKind kind, String bareCode, String maker, String model) {
    public ItemCode code() {
      return new ItemCode(bareCode);
    }

    /** For a sentence: {@code the riser R-0147-J}. */
    public String said() {
      return "the " + kind.said() + " " + code().display();
    }

    /** Maker and model where known, else its kind. */
    public String what() {
      String words =
          Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
      return words.isEmpty() ? kind.said() : words;
    }
  }

  private static final String NAMED = "SELECT id, kind, code, maker, model FROM item ";

  /** The item with this code; empty where the club has none such. */
  public Optional<Named> coded(ItemCode code) {
    return rows.one(Named.class, NAMED + "WHERE code = ?1", code.bare());
  }

  /** The items of these ids that exist, in the order of the ids. */
  public Map<ItemId, Named> named(Collection<ItemId> ids) {
    Map<ItemId, Named> found = new LinkedHashMap<>();
    if (!ids.isEmpty()) {
      List<Named> named =
          rows.list(Named.class, NAMED + "WHERE id IN " + places(ids), ids.toArray());
      Map<ItemId, Named> byId = named.stream().collect(Collectors.toMap(Named::id, n -> n));
      ids.forEach(id -> Optional.ofNullable(byId.get(id)).ifPresent(n -> found.put(id, n)));
    }
    return found;
  }

  /** The highest number issued so far among the codes of a letter; 0 where none was. */
  int lastNumber(char letter) {
    return (int)
        rows.number(
            "SELECT max(CAST(substr(code, 2, 4) AS INTEGER)) FROM item WHERE substr(code, 1, 1) = ?1",
            String.valueOf(letter));
  }

  /** {@code (?1, ?2, …)}: one statement whatever their number. */
  static String places(Collection<ItemId> ids) {
    return IntStream.rangeClosed(1, ids.size())
        .mapToObj(i -> "?" + i)
        .collect(Collectors.joining(", ", "(", ")"));
  }
}
