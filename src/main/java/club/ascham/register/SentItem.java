package club.ascham.register;

import club.ascham.form.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a program sends of an item, taken as if it had been typed. */
final class SentItem {
  private SentItem() {}

  static Map<String, Object> orEmpty(Map<String, Object> sent) {
    return sent == null ? Map.of() : sent;
  }

  static void refuseCode(Map<String, Object> body, Typed typed) {
    if (body.get("code") != null) {
      typed.fault("code", "The register gives each thing its code: leave it out.");
    }
  }

  /** The kind of a list, or which of its kinds; null: that stands at its field. */
  static ItemKind kind(List<ItemKind> kinds, Map<String, Object> body, Typed typed) {
    if (kinds.size() == 1) {
      return kinds.get(0);
    }
    typed.with("kind", body.get("kind"));
    ItemKind kind = typed.requiredWord("kind", ItemKind.class, "Say which kind it is, say tab.");
    if (kind != null && !kinds.contains(kind)) {
      typed.fault("kind", kind.capital() + " has a list of its own: /api/" + kind.slug() + ".");
      return null;
    }
    return kind;
  }

  /** All fields that an item of this kind has. */
  static void copy(Map<String, Object> body, ItemKind kind, Typed typed) {
    List<String> known =
        new ArrayList<>(ItemFields.of(kind).stream().map(ItemField::name).toList());
    if (kind.isKitItem()) {
      known.add("kind");
    }
    copy(body, typed, known);
  }

  /** The known fields; any other is a slip that would else go unseen. */
  static void copy(Map<String, Object> body, Typed typed, List<String> known) {
    body.forEach(
        (field, value) -> {
          boolean wanted = known.contains(field) || field.equals("onceKey");
          if (!wanted && ItemJson.ONLY_READ.contains(field)) {
            return;
          }
          if (value instanceof Map || value instanceof List) {
            typed.fault(field, "A text, a number, or true or false, please.");
          } else if (wanted) {
            typed.with(field, value);
          } else {
            typed.fault(field, "There is no such field.");
          }
        });
  }
}
