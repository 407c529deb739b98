package club.ascham.register;

import club.ascham.form.Typed;
import club.ascham.units.LengthUnit;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * Reads what is told of an item, from a page, the API or a file alike, into its details; whatever
 * is wrong is said at its field.
 */
public final class ItemReader {
  static final int LONGEST_NAME = 80;
  static final int LONGEST_MARK = 60;
  static final int LONGEST_NOTES = 2000;

  private ItemReader() {}

  /**
   * What reading depends on beside the text.
   *
   * @param unit the unit of lengths that name none
   */
  public record Setting(LengthUnit unit, Currency currency, LocalDate today) {}

  /** Empty where anything is wrong; then the faults stand at their fields. */
  public static Optional<ItemDetails> read(ItemKind kind, Typed typed, Setting setting) {
    Fields fields = new Fields(typed, setting);
    Provenance from = provenance(fields);
    Particulars particulars =
        switch (kind) {
          case RISER -> BowReader.riser(fields);
          case LIMBS -> BowReader.limbs(fields, from.model());
          case BOW -> BowReader.bow(fields);
          case STRING -> CordReader.string(fields, from.boughtOn());
          case STRINGER -> CordReader.stringer(fields);
          default -> KitReader.kitItem(kind, fields);
        };
    return typed.sound() ? Optional.of(new ItemDetails(kind, from, particulars)) : Optional.empty();
  }

  /** The fields that an item of this kind has, in the order in which they are written. */
  public static List<String> fields(ItemKind kind) {
    return ItemWriter.fields(kind);
  }

  private static Provenance provenance(Fields fields) {
    Typed typed = fields.typed();
    return new Provenance(
        typed.optional("maker", LONGEST_NAME),
        typed.optional("model", LONGEST_NAME),
        typed.optional("batch", LONGEST_MARK),
        typed.optional("serial", LONGEST_MARK),
        fields.pastDay("boughtOn", "It can't have been bought in the future."),
        typed.money("price", fields.setting().currency()),
        typed.text("notes", LONGEST_NOTES));
  }
}
