package club.ascham.register;

import club.ascham.form.Typed;
import java.util.List;

/** How many items that are alike a form asks for. */
final class Copies {
  private static final List<String> SERIALS = List.of("serial", "serialUpper", "serialLower");

  private Copies() {}

  /** From 1 (also where left empty) to 50; a serial can't stand on several. */
  static int read(Typed typed) {
    Integer copies = typed.whole("copies", 1, AddItem.MOST_AT_ONCE);
    if (copies != null && copies > 1) {
      for (String serial : SERIALS) {
        if (typed.has(serial)) {
          typed.fault(
              serial,
              "One serial can't stand on %d of them: leave it empty, or add this one alone."
                  .formatted(copies));
        }
      }
    }
    return copies == null ? 1 : copies;
  }
}
