package club.ascham.borrower;

/** Part of a name to look for, in lower case as the database has it: ASCII letters alone change. */
public final class NamePart {
  private NamePart() {}

  /** Null where nothing is looked for. */
  public static String of(String text) {
    if (text == null || text.isBlank()) {
      return null;
    }
    StringBuilder folded = new StringBuilder();
    for (char c : text.strip().toCharArray()) {
      folded.append(c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c);
    }
    return folded.toString();
  }
}
