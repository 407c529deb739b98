package club.ascham.story;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The hashes of the record: SHA-256 (FIPS 180-4) in lower-case hexadecimal over UTF-8 text, so that
 * any program can reckon them again.
 */
final class Chain {
  /** Before the first sentence there is nothing. */
  static final String START = "";

  private Chain() {}

  /**
   * The seal of an entry.
   *
   * @param before the seal of the entry before it, or {@link #START}
   * @param entry as JSON, as {@link EntryText} tells and the export gives it
   */
  static String seal(String before, String entry) {
    return sha256(before + "\n" + entry);
  }

  /** What the chain holds of a personal value: worthless without the salt. */
  static String ofPersonal(String salt, String value) {
    return sha256(salt + "\n" + value);
  }

  private static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
