package club.ascham.record;

import java.util.Optional;

/** A seal as people meet it: on paper, in a backup's name, in a field they type it into. */
final class Seal {
  static final int SHORT = 12;

  private Seal() {}

  /** Its first twelve digits in groups of four. */
  static String shortened(String seal) {
    return seal == null || seal.length() < SHORT
        ? "none"
        : seal.substring(0, 4) + " " + seal.substring(4, 8) + " " + seal.substring(8, SHORT);
  }

  /** The digits typed, spaces and hyphens left out; empty unless eight to 64 hexadecimal digits. */
  static Optional<String> typed(String text) {
    String digits = text.replaceAll("[\\s-]", "").toLowerCase(java.util.Locale.ROOT);
    return digits.matches("[0-9a-f]{8,64}") ? Optional.of(digits) : Optional.empty();
  }
}
