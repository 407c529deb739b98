package club.ascham.form;

/**
 * A name, a mark, a number to call: it stands on one line wherever it is shown, in a list, a
 * sentence of the record or the subject of a letter.
 */
public final class OneLine {
  public static final String WANTED = "On one line, please: it holds a line break.";

  private static final String BREAKS = "\n\r\u2028\u2029";

  private OneLine() {}

  public static boolean is(String text) {
    return text.chars().noneMatch(c -> BREAKS.indexOf(c) >= 0);
  }
}
