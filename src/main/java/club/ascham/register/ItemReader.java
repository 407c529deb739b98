package club.ascham.register;

import club.ascham.form.Typed;
import club.ascham.units.LengthUnit;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;

/**
 * Reads what is told of an item, from a page, the API or a file alike, into its details; whatever
 * is wrong is said at its field.
 */
public final class ItemReader {
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
    FieldValues told = new FieldValues();
    for (ItemField<?> field : ItemFields.of(kind)) {
      told.put(field, field.values().read(fields, field.name()));
      if (field.missing() != null && told.get(field) == null) {
        typed.fault(field.name(), field.missing());
      }
    }
    FieldsTogether.hold(kind, told, fields);
    return typed.sound() ? Optional.of(ItemDetails.of(kind, told)) : Optional.empty();
  }
}
