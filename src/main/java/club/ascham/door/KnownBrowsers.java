package club.ascham.door;

import club.ascham.people.Passwords;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Recognizes a browser in which a name signed in before, so that others who guess at that name do
 * not keep its owner waiting. What the browser carries opens nothing.
 */
@Singleton
class KnownBrowsers {
  static final String COOKIE = "ascham-known";
  private static final Duration KEPT = Duration.ofDays(180);

  private final byte[] key;
  private final Passwords passwords;

  KnownBrowsers(
      @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key,
      Passwords passwords) {
    this.key = ("known browsers " + key).getBytes(StandardCharsets.UTF_8);
    this.passwords = passwords;
  }

  /** The mark of a browser that this name signed in from; empty for any other. */
  Optional<String> mark(String name, String carried) {
    if (carried == null) {
      return Optional.empty();
    }
    int dot = carried.indexOf('.');
    if (dot < 0) {
      return Optional.empty();
    }
    String browser = carried.substring(0, dot);
    boolean sealed =
        MessageDigest.isEqual(
            carried.getBytes(StandardCharsets.UTF_8),
            sealed(browser, name).getBytes(StandardCharsets.UTF_8));
    return sealed ? Optional.of(browser) : Optional.empty();
  }

  void remember(String name, RoutingContext request) {
    request
        .response()
        .addCookie(
            DoorCookie.written(COOKIE, sealed(passwords.secret(), name), request)
                .setPath("/sign-in")
                .setMaxAge(KEPT.toSeconds()));
  }

  String sealed(String browser, String name) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      mac.update(browser.getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      mac.update(name.toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8));
      return browser + "." + HexFormat.of().formatHex(mac.doFinal());
    } catch (NoSuchAlgorithmException | InvalidKeyException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
