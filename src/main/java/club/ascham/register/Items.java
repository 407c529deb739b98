package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds items. */
@ApplicationScoped
public class Items {
  private static final String NAMED = "SELECT id, kind, code AS bare_code, maker, model FROM item ";

  private static final ItemColumns ALL = new ItemColumns(ItemFields.everything(), 8);
  private static final String REGISTERED =
      "SELECT item.id, item.kind, item.code, item.version, item.registered_on, item.retired_on,"
          + " item.retired_why, item.retired_note, "
          + ALL.selected()
          + " FROM item"
          + ALL.joins()
          + " WHERE ";

  private final Rows rows;

  Items(Rows rows) {
    this.rows = rows;
  }

  /** An item as other features name it. */
  @TemplateData
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

  /** The item with this code; empty where the club has none such. */
  public Optional<Named> coded(ItemCode code) {
    return rows.one(Named.class, NAMED + "WHERE code = ?1", code.bare());
  }

  /** All that the register holds of the item with this code, in one statement. */
  public Optional<Registered> registered(ItemCode code) {
    return rows.list(Items::read, REGISTERED + "item.code = ?1", code.bare()).stream().findFirst();
  }

  /** All that the register holds of the items of these ids, in their order, in one statement. */
  List<Registered> registered(Collection<ItemId> ids) {
    Map<ItemId, Registered> found =
        rows.list(Items::read, REGISTERED + "item.id IN " + places(ids), ids.toArray()).stream()
            .collect(Collectors.toMap(Registered::id, item -> item));
    return ids.stream().map(found::get).filter(Objects::nonNull).toList();
  }

  private static Registered read(Rows.Row row) {
    ItemKind kind = row.value(2, ItemKind.class);
    LocalDate retiredOn = row.value(6, LocalDate.class);
    return new Registered(
        row.value(1, ItemId.class),
        new ItemCode(row.value(3, String.class)),
        row.value(4, Integer.class),
        row.value(5, LocalDate.class),
        retiredOn == null
            ? null
            : new Retirement(retiredOn, row.value(7, RetiredWhy.class), row.value(8, String.class)),
        ItemDetails.of(kind, ALL.read(row, kind)));
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
