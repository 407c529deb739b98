package club.ascham.exchange;

/** The letter that the codes of a kind of item begin with. */
final class CodeLetter {
  private CodeLetter() {}

  static char of(String kind) {
    return switch (kind) {
      case "RISER" -> 'R';
      case "LIMBS" -> 'L';
      case "BOW" -> 'B';
      case "STRING" -> 'S';
      case "STRINGER" -> 'T';
      case "ARROWS" -> 'A';
      default -> 'K';
    };
  }
}
