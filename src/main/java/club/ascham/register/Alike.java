package club.ascham.register;

import club.ascham.units.LengthUnit;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an item has in common with more of its like, as texts by field. */
final class Alike {
  private static final List<String> ITS_OWN =
      List.of(
          "serial",
          "serialUpper",
          "serialLower",
          "boughtOn",
          "notes",
          "measuredLength",
          "twists",
          "firstUsed");

  private Alike() {}

  static Map<String, String> of(Registered item, LengthUnit unit, Currency currency) {
    Map<String, String> alike =
        new LinkedHashMap<>(ItemWriter.write(item.details(), unit, currency));
    ITS_OWN.forEach(alike::remove);
    return alike;
  }
}
