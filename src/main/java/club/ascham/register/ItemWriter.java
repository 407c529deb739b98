package club.ascham.register;

import club.ascham.form.Words;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes an item's details as the texts that {@link ItemReader} reads the same details from. */
public final class ItemWriter {
  private static final long SIXTEENTH_INCH = 158_750;

  private ItemWriter() {}

  /** Each field with its text, in order; a field that nothing is known of is left out. */
  public static Map<String, String> write(ItemDetails details, LengthUnit unit, Currency currency) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (details.kind().isKitItem()) {
      texts.put("kind", details.kind().word());
    }
    for (ItemField<?> field : ItemFields.of(details.kind())) {
      Object value = field.of().apply(details);
      if (value != null) {
        texts.put(field.name(), text(value, shownIn(field, unit), currency));
      }
    }
    return texts;
  }

  /** What is given in millimetres whatever a person's unit is shown in them, too. */
  private static LengthUnit shownIn(ItemField<?> field, LengthUnit unit) {
    return field.values() instanceof Values.Distance distance
            && distance.unit() == LengthUnit.MILLIMETRE
        ? LengthUnit.MILLIMETRE
        : unit;
  }

  private static String text(Object value, LengthUnit unit, Currency currency) {
    if (value instanceof Length length) {
      return text(length, unit);
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Enum<?> word) {
      return Words.of(word);
    }
    if (value instanceof Money money) {
      return money.plain(currency);
    }
    return value instanceof Double number && number == Math.rint(number)
        ? Long.toString(number.longValue())
        : value.toString();
  }

  /** In inches only where that says exactly the same. */
  private static String text(Length length, LengthUnit unit) {
    return unit == LengthUnit.INCH && length.units() % SIXTEENTH_INCH == 0
        ? LengthText.inches(length)
        : LengthText.exact(length);
  }
}
