package club.ascham.loan;

import club.ascham.form.Typed;
import club.ascham.units.ItemCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * An item that is to go out beside the bow.
 *
 * @param field where it was asked for
 * @param count arrows out of a pool; null: the whole item
 */
public record ItemAsked(String field, ItemCode code, Integer count) {
  private static final String ITEM = "items.";
  private static final String COUNT = ".count";

  /**
   * Items stand in fields {@code items.NAME}, with {@code items.NAME.count} for those of a pool;
   * more of them, by their codes, in {@code moreItems}.
   */
  public static List<ItemAsked> parse(Typed typed) {
    List<ItemAsked> items = new ArrayList<>();
    for (String field : typed.all().keySet().stream().sorted().toList()) {
      if (field.startsWith(ITEM) && !field.endsWith(COUNT)) {
        ItemCode code = typed.code(field);
        if (code != null) {
          items.add(new ItemAsked(field, code, typed.whole(field + COUNT, 1, 2000)));
        }
      }
    }
    for (String text : typed.value("moreItems").split("[,;\n]")) {
      Typed one = Typed.of(Map.of("code", text));
      ItemCode code = one.code("code");
      if (code != null) {
        items.add(new ItemAsked("moreItems", code, null));
      } else if (!one.sound()) {
        typed.fault("moreItems", one.messageAt("code"));
      }
    }
    return List.copyOf(items);
  }

  /** The name of its field in a list to tick. */
  static String field(String code) {
    return ITEM + code;
  }
}
