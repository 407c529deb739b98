package club.ascham.register;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What differs between two versions of an item's details, field by field. */
final class Changes {
  private static final Map<String, String> LABELS =
      Map.ofEntries(
          Map.entry("maker", "maker"),
          Map.entry("model", "model"),
          Map.entry("batch", "batch"),
          Map.entry("serial", "serial"),
          Map.entry("boughtOn", "bought on"),
          Map.entry("price", "price"),
          Map.entry("notes", "notes"),
          Map.entry("build", "build"),
          Map.entry("hand", "hand"),
          Map.entry("lengthIn", "length (in)"),
          Map.entry("limbFitting", "limb fitting"),
          Map.entry("limbModel", "model of its limbs"),
          Map.entry("threadPitch", "thread pitch"),
          Map.entry("maxTurnsOut", "turns out allowed"),
          Map.entry("lateral", "sideways adjustment"),
          Map.entry("massG", "mass (g)"),
          Map.entry("size", "size"),
          Map.entry("bowLengthIn", "bow length (in)"),
          Map.entry("markedLb", "marked weight (lb)"),
          Map.entry("markedAtIn", "marked at (in)"),
          Map.entry("markedRiserIn", "marked on a riser of (in)"),
          Map.entry("serialUpper", "serial of the upper limb"),
          Map.entry("serialLower", "serial of the lower limb"),
          Map.entry("hmpeTips", "tips fit for HMPE"),
          Map.entry("braceLow", "maker's lowest brace"),
          Map.entry("braceHigh", "maker's highest brace"),
          Map.entry("forBowIn", "for a bow of (in)"),
          Map.entry("measuredLength", "measured length"),
          Map.entry("material", "material"),
          Map.entry("strands", "strands"),
          Map.entry("strandDiameter", "strand diameter"),
          Map.entry("twists", "twists"),
          Map.entry("firstUsed", "first used"),
          Map.entry("stringerKind", "kind of stringer"),
          Map.entry("bowFromIn", "shortest bow (in)"),
          Map.entry("bowToIn", "longest bow (in)"),
          Map.entry("arrowLength", "arrow length"),
          Map.entry("spine", "spine"),
          Map.entry("arrowMassGr", "mass of an arrow (gr)"),
          Map.entry("arrowCount", "number of arrows"),
          Map.entry("pool", "given out by count"));
  private static final int LONGEST_SHOWN = 60;

  private Changes() {}

  /** A field whose text differs; an empty text is none. */
  record Change(String field, String label, String before, String after) {}

  static List<Change> between(Map<String, String> before, Map<String, String> after) {
    Set<String> fields = new LinkedHashSet<>(before.keySet());
    fields.addAll(after.keySet());
    List<Change> changes = new ArrayList<>();
    for (String field : fields) {
      String was = before.getOrDefault(field, "");
      String is = after.getOrDefault(field, "");
      if (!was.equals(is)) {
        changes.add(new Change(field, LABELS.getOrDefault(field, field), was, is));
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
