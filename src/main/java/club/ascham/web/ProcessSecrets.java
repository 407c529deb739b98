package club.ascham.web;

import io.smallrye.config.ConfigSourceInterceptor;
import io.smallrye.config.ConfigSourceInterceptorContext;
import io.smallrye.config.ConfigValue;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * Gives the session cookie a random key for as long as the process lives, unless the club set one:
 * the platform's own way would write the key into the log.
 */
public class ProcessSecrets implements ConfigSourceInterceptor {
  private static final long serialVersionUID = 1L;
  private static final String SESSION_KEY = "quarkus.http.auth.session.encryption-key";
  private static final String KEY = random();

  @Override
  public ConfigValue getValue(ConfigSourceInterceptorContext context, String name) {
    ConfigValue value = context.proceed(name);
    return value == null && name.equals(SESSION_KEY)
        ? ConfigValue.builder().withName(name).withValue(KEY).build()
        : value;
  }

  /** Whether what this key seals can be read no longer than this process lives. */
  public static boolean isOfThisProcess(String key) {
    return KEY.equals(key);
  }

  private static String random() {
    byte[] bytes = new byte[32];
    new SecureRandom().nextBytes(bytes);
    return Base64.getEncoder().encodeToString(bytes);
  }
}
