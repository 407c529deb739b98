package club.ascham.loan;

import club.ascham.form.Typed;
import java.util.List;

/** Something beside the bow, as JSON; {@code count} for arrows out of a pool. */
public record ItemBody(String code, Integer count) {
  /** The items become fields {@code items.0}, {@code items.0.count} and so on. */
  public static void into(Typed typed, List<ItemBody> items) {
    for (int i = 0; items != null && i < items.size(); i++) {
      ItemBody item = items.get(i);
      if (item == null || item.code() == null) {
        typed.fault("items." + i, "Which item? Give its code.");
      } else {
        typed.with("items." + i, item.code()).with("items." + i + ".count", item.count());
      }
    }
  }
}
