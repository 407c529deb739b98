package club.ascham.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What differs between two versions of an item's details, field by field. */
final class Changes {
  private static final int LONGEST_SHOWN = 60;

  private Changes() {}

  /** A field whose text differs; an empty text is none. */
  record Change(String field, String label, String before, String after) {}

  static List<Change> between(
      ItemKind kind, Map<String, String> before, Map<String, String> after) {
    List<Change> changes = new ArrayList<>();
    for (ItemField<?> field : ItemFields.of(kind)) {
      String was = before.getOrDefault(field.name(), "");
      String is = after.getOrDefault(field.name(), "");
      if (!was.equals(is)) {
        changes.add(new Change(field.name(), field.label(), was, is));
      }
    }
    return changes;
  }

  /** For the story, which volunteers read as well: a price is not said. */
  static String sentence(List<Change> changes) {
    List<String> said = new ArrayList<>();
    for (Change change : changes) {
      if (change.field().equals("price") || change.field().equals("notes")) {
        said.add(change.label());
      } else if (change.before().isEmpty()) {
        said.add(change.label() + " is " + shortened(change.after()));
      } else if (change.after().isEmpty()) {
        said.add(change.label() + " no longer " + shortened(change.before()));
      } else {
        said.add(
            change.label()
                + " from "
                + shortened(change.before())
                + " to "
                + shortened(change.after()));
      }
    }
    return "Changed: " + String.join("; ", said) + ".";
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 1) + "…";
  }
}
