package club.ascham.people;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import org.apache.commons.codec.binary.Base32;

/**
 * What the club and someone's phone both know, and reckon one-time codes from: 160 random bits, as
 * RFC 4226 recommends.
 */
public final class SharedSecret {
  public static final int BYTES = 20;

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int GROUP = 4;

  private final byte[] bytes;

  private SharedSecret(byte[] bytes) {
    this.bytes = bytes;
  }

  public static SharedSecret fresh() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return new SharedSecret(bytes);
  }

  static SharedSecret of(byte[] bytes) {
    return new SharedSecret(bytes.clone());
  }

  public byte[] bytes() {
    return bytes.clone();
  }

  /** As apps take it where nothing is scanned: base32 (RFC 4648), in groups of four. */
  public String typed() {
    return grouped(base32(bytes), " ");
  }

  /**
   * The address that such apps read from a QR code. It is in no RFC: a format that its first app
   * published and that all apps known to us take. What it leaves out is what it takes for granted:
   * SHA-1, six digits, thirty seconds.
   *
   * @param club who asks for the codes; {@code name} of the account
   */
  public String address(String club, String name) {
    return "otpauth://totp/%s:%s?secret=%s&issuer=%s"
        .formatted(encoded(club), encoded(name), base32(bytes), encoded(club));
  }

  public static String base32(byte[] bytes) {
    return new Base32().encodeToString(bytes).replace("=", "");
  }

  static String grouped(String text, String between) {
    return text.replaceAll("(.{" + GROUP + "})(?=.)", "$1" + between);
  }

  /** A blank as {@code %20}: apps show a plus sign as one. */
  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  @Override
  public String toString() {
    return "a shared secret";
  }
}
