package club.ascham.people;

import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A code that stands for one from the phone, once. Its 120 random bits are too many to guess, so
 * that a plain digest of it may be kept and nobody who holds one has to wait.
 *
 * @param text 24 characters of base32
 */
public record RecoveryCode(String text) {
  public static final int HANDED_OUT = 8;

  private static final int BYTES = 15;
  private static final SecureRandom RANDOM = new SecureRandom();

  static List<RecoveryCode> fresh() {
    return Stream.generate(RecoveryCode::random).limit(HANDED_OUT).toList();
  }

  private static RecoveryCode random() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return new RecoveryCode(SharedSecret.base32(bytes));
  }

  /**
   * Reads it with or without its hyphens, in any case, and with 0 and 1 for the letters they look
   * like; empty where it is none.
   */
  public static Optional<RecoveryCode> parse(String typed) {
    String text =
        typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT).replace('0', 'O').replace('1', 'I');
    return text.matches("[A-Z2-7]{24}") ? Optional.of(new RecoveryCode(text)) : Optional.empty();
  }

  String digest() {
    return Passwords.digest(text);
  }

  /** As it is handed out. */
  public String said() {
    return SharedSecret.grouped(text, "-");
  }
}
