package club.ascham.story;

import java.util.Locale;
import java.util.Optional;

/** A seal as people meet it: on paper, in a backup's name, in a field they type it into. */
public final class Seal {
  private static final int SHORT = 12;

  private Seal() {}

  /** Its first twelve digits in groups of four. */
  public static String shortened(String seal) {
    return seal == null || seal.length() < SHORT
        ? "none"
        : seal.substring(0, 4) + " " + seal.substring(4, 8) + " " + seal.substring(8, SHORT);
  }

  /** The digits typed, spaces and hyphens left out; empty unless eight to 64 hexadecimal digits. */
  public static Optional<String> typed(String text) {
    String digits = text.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
    return digits.matches("[0-9a-f]{8,64}") ? Optional.of(digits) : Optional.empty();
  }
}
