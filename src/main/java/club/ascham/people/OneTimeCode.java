package club.ascham.people;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The six digits that a phone and the club reckon from a shared secret and the time: RFC 6238 with
 * HMAC-SHA-1 and steps of thirty seconds, on top of RFC 4226.
 */
public final class OneTimeCode {
  public static final Duration STEP = Duration.ofSeconds(30);

  /** Steps that phone and club may be apart, either way (RFC 6238, 5.2 and 6). */
  static final int DRIFT = 1;

  private static final int DIGITS = 6;

  private OneTimeCode() {}

  /** The time step that a moment lies in, counted from 1970. */
  public static long stepOf(Instant moment) {
    return Math.floorDiv(moment.getEpochSecond(), STEP.toSeconds());
  }

  public static String at(byte[] secret, long step) {
    return digits(secret, step, DIGITS);
  }

  /**
   * The time step whose code was typed; empty where it is the code of none that counts now. Every
   * step is reckoned and compared in full, whichever fits.
   */
  public static OptionalLong matched(byte[] secret, String typed, Instant now) {
    byte[] given = typed.replaceAll("\\s", "").getBytes(StandardCharsets.UTF_8);
    OptionalLong found = OptionalLong.empty();
    for (long step = stepOf(now) - DRIFT; step <= stepOf(now) + DRIFT; step++) {
      if (MessageDigest.isEqual(given, at(secret, step).getBytes(StandardCharsets.UTF_8))) {
        found = OptionalLong.of(step);
      }
    }
    return found;
  }

  /** RFC 4226, 5.3: four bytes of the HMAC, from where its last half-byte points to. */
  static String digits(byte[] secret, long counter, int digits) {
    byte[] mac = mac(secret, ByteBuffer.allocate(Long.BYTES).putLong(counter).array());
    int from = mac[mac.length - 1] & 0x0f;
    int number = ByteBuffer.wrap(mac, from, Integer.BYTES).getInt() & 0x7fffffff;
    return String.format(Locale.ROOT, "%0" + digits + "d", number % (long) Math.pow(10, digits));
  }

  private static byte[] mac(byte[] secret, byte[] counter) {
    try {
      Mac mac = Mac.getInstance("HmacSHA1");
      mac.init(new SecretKeySpec(secret, "HmacSHA1"));
      return mac.doFinal(counter);
    } catch (NoSuchAlgorithmException | InvalidKeyException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
