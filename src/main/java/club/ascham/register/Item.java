package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.units.ItemCode;
import club.ascham.units.Money;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Inheritance;
import jakarta.persistence.InheritanceType;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Optional;

/** A thing the club owns, under its own code. */
@Entity
@Inheritance(strategy = InheritanceType.JOINED)
abstract class Item {
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

  @Version private int version;

  /** A new item under this code. */
  static Item of(ItemCode code, ItemDetails details, LocalDate registeredOn) {
    Particulars particulars = details.particulars();
    Item item;
    if (particulars instanceof Particulars.OfRiser) {
      item = new Riser();
    } else if (particulars instanceof Particulars.OfLimbs) {
      item = new Limbs();
    } else if (particulars instanceof Particulars.OfBow) {
      item = new OnePieceBow();
    } else if (particulars instanceof Particulars.OfString) {
      item = new BowString();
    } else if (particulars instanceof Particulars.OfStringer) {
      item = new Stringer();
    } else {
      item = new KitItem();
    }
    if (code.kindLetter() != details.kind().letter()) {
      throw new IllegalArgumentException(
          code.display() + " is no code of a " + details.kind().said());
    }
    item.code = code.bare();
    item.kind = details.kind();
    item.registeredOn = registeredOn;
    item.describe(details);
    return item;
  }

  ItemId id() {
    return new ItemId(id);
  }

  ItemCode code() {
    return new ItemCode(code);
  }

  ItemKind kind() {
    return kind;
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

  ItemDetails details() {
    return new ItemDetails(
        kind,
        new Provenance(
            maker,
            model,
            batch,
            serial,
            boughtOn,
            priceMinor == null ? null : new Money(priceMinor),
            notes),
        particulars(model));
  }

  /** Takes over what is recorded now; the kind stays. */
  void describe(ItemDetails details) {
    if (details.kind() != kind) {
      throw new IllegalArgumentException("an item's kind never changes");
    }
    Provenance from = details.provenance();
    maker = from.maker();
    model = from.model();
    batch = from.batch();
    serial = from.serial();
    boughtOn = from.boughtOn();
    priceMinor = from.price() == null ? null : from.price().minor();
    notes = from.notes();
    describe(details.particulars());
  }

  void retire(Retirement retirement) {
    if (retiredOn != null) {
      throw new IllegalStateException("retired already");
    }
    retiredOn = retirement.on();
    retiredWhy = retirement.why();
    retiredNote = retirement.note();
  }

  void findAgain() {
    if (retiredOn == null) {
      throw new IllegalStateException("not retired");
    }
    retiredOn = null;
    retiredWhy = null;
    retiredNote = null;
  }

  abstract Particulars particulars(String model);

  abstract void describe(Particulars particulars);
}
