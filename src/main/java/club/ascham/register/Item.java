package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.units.ItemCode;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A thing the club owns, under its own code. What is recorded of it because of its kind stands in a
 * table of that kind ({@link ItemFields}); its version counts the changes of both.
 */
@Entity
class Item {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private String code;

  @Enumerated(EnumType.STRING)
  private ItemKind kind;

  private String maker;
  private String model;
  private String batch;
  private String serial;
  private LocalDate boughtOn;
  private Long priceMinor;
  private String notes;
  private LocalDate registeredOn;
  private LocalDate retiredOn;

  @Enumerated(EnumType.STRING)
  private RetiredWhy retiredWhy;

  private String retiredNote;

  private int version;

  /** A new item under this code. */
  static Item of(ItemCode code, ItemDetails details, LocalDate registeredOn) {
    if (code.kindLetter() != details.kind().letter()) {
      throw new IllegalArgumentException(
          code.display() + " is no code of a " + details.kind().said());
    }
    Item item = new Item();
    item.code = code.bare();
    item.kind = details.kind();
    item.registeredOn = registeredOn;
    item.origin(details.provenance());
    return item;
  }

  ItemId id() {
    return new ItemId(id);
  }

  ItemKind kind() {
    return kind;
  }

  ItemCode code() {
    return new ItemCode(code);
  }

  int version() {
    return version;
  }

  LocalDate registeredOn() {
    return registeredOn;
  }

  Optional<Retirement> retirement() {
    return retiredOn == null
        ? Optional.empty()
        : Optional.of(new Retirement(retiredOn, retiredWhy, retiredNote));
  }

  /** Takes over where it came from; the kind stays. */
  void describe(ItemDetails details) {
    if (details.kind() != kind) {
      throw new IllegalArgumentException("an item's kind never changes");
    }
    origin(details.provenance());
    version++;
  }

  private void origin(Provenance from) {
    maker = from.maker();
    model = from.model();
    batch = from.batch();
    serial = from.serial();
    boughtOn = from.boughtOn();
    priceMinor = from.price() == null ? null : from.price().minor();
    notes = from.notes();
  }

  void retire(Retirement retirement) {
    if (retiredOn != null) {
      throw new IllegalStateException("retired already");
    }
    retiredOn = retirement.on();
    retiredWhy = retirement.why();
    retiredNote = retirement.note();
    version++;
  }

  void findAgain() {
    if (retiredOn == null) {
      throw new IllegalStateException("not retired");
    }
    retiredOn = null;
    retiredWhy = null;
    retiredNote = null;
    version++;
  }
}
