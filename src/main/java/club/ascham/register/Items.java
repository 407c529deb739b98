package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Status;
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
  private static final String NAMED = "SELECT id, kind, code, maker, model FROM item ";

  private final Rows rows;
  private final ItemRecords records;

  Items(Rows rows, ItemRecords records) {
    this.rows = rows;
    this.records = records;
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
    return records.find("code", code.bare()).firstResultOptional().map(this::read);
  }

  /** All that the register holds of the items of these ids, in their order, in one statement. */
  List<Registered> registered(Collection<ItemId> ids) {
    Map<ItemId, Registered> found =
        records.list("id IN ?1", ids.stream().map(ItemId::value).toList()).stream()
            .map(this::read)
            .collect(Collectors.toMap(Registered::id, item -> item));
    return ids.stream().map(found::get).filter(Objects::nonNull).toList();
  }

  /**
   * Outside a transaction one session lives as long as the request: what it still held would be
   * shown again after a change.
   */
  private Registered read(Item item) {
    Registered registered = Registered.of(item);
    if (QuarkusTransaction.getStatus() == Status.STATUS_NO_TRANSACTION) {
      records.getEntityManager().detach(item);
    }
    return registered;
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
