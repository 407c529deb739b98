package club.ascham.check;

import java.util.Map;

/** What is typed at a check, of a bow of which the set-up is 216, 190 and 186 mm. */
final class CheckForms {
  private CheckForms() {}

  /** The same form with another brace, and both distances changed by as much, as they do. */
  static Map<String, Object> braced(Map<String, Object> form, int mm) {
    form.put("brace", mm + " mm");
    form.put("tillerUpper", 190 + mm - 216 + " mm");
    form.put("tillerLower", 186 + mm - 216 + " mm");
    return form;
  }
}
