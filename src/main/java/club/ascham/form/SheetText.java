package club.ascham.form;

/** A text as a spreadsheet shows it: nothing that somebody typed is ever taken for a formula. */
public final class SheetText {
  private SheetText() {}

  /** The text with an apostrophe in front where it would be taken for a formula. */
  public static String safe(String text) {
    return startsFormula(text) ? "'" + text : text;
  }

  public static boolean startsFormula(String text) {
    return !text.isEmpty() && "=+-@'\t\r".indexOf(text.charAt(0)) >= 0;
  }
}
