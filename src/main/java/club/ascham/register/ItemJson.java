package club.ascham.register;

import club.ascham.bow.ArrowMass;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Words;
import club.ascham.standing.State;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The items in JSON, under the names that forms and files use too; what is unknown is left out. */
final class ItemJson {
  /** What a change may carry because it was read, and does not change. */
  static final Set<String> ONLY_READ =
      Set.of(
          "code",
          "kind",
          "state",
          "version",
          "registeredOn",
          "retiredOn",
          "retiredWhy",
          "retiredNote",
          "concerns",
          "soundUpToLb",
          "onceKey");

  private ItemJson() {}

  /** One page of a list. */
  record Listed(List<Map<String, Object>> items, int page, int size, long total) {}

  /**
   * @param prices whether this reader is told what it cost: officers and the committee are
   */
  static Map<String, Object> of(
      Registered item, State state, Against against, boolean prices, Currency currency) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", item.code().display());
    json.put("kind", item.kind().word());
    json.put("state", state.word());
    json.put("version", item.version());
    for (ItemField<?> field : ItemFields.of(item.kind())) {
      if (prices || field != ItemFields.PRICE) {
        put(json, field.name(), written(field.of().apply(item.details()), currency));
      }
    }
    if (item.details().particulars() instanceof Particulars.OfKitItem kit
        && kit.arrowMassGr() != null) {
      json.put("soundUpToLb", ArrowMass.heaviestLb(kit.arrowMassGr()));
    }
    json.put("registeredOn", item.registeredOn());
    Retirement retired = item.retirement();
    if (retired != null) {
      json.put("retiredOn", retired.on());
      json.put("retiredWhy", retired.why().word());
      put(json, "retiredNote", retired.note());
    }
    json.put("concerns", ConcernJson.of(against));
    return json;
  }

  private static void put(Map<String, Object> json, String name, Object value) {
    if (value != null) {
      json.put(name, value);
    }
  }

  private static Object written(Object value, Currency currency) {
    if (value instanceof Length length) {
      return LengthText.exact(length);
    }
    if (value instanceof Money money) {
      return money.plain(currency);
    }
    return value instanceof Enum<?> word ? Words.of(word) : value;
  }
}
