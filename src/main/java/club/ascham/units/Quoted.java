package club.ascham.units;

/** What somebody typed, in quotation marks for a message and no longer than one can take in. */
final class Quoted {
  private static final int LONGEST = 40;

  private Quoted() {}

  static String of(String text) {
    String stripped = text.strip();
    return "“%s”"
        .formatted(stripped.length() <= LONGEST ? stripped : stripped.substring(0, LONGEST) + "…");
  }
}
