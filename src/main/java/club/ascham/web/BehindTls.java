package club.ascham.web;

import io.smallrye.config.ConfigSourceInterceptor;
import io.smallrye.config.ConfigSourceInterceptorContext;
import io.smallrye.config.ConfigValue;

/**
 * Behind a proxy that speaks TLS, the cookie of the forms' tokens is bound to this host by its
 * name.
 */
public class BehindTls implements ConfigSourceInterceptor {
  /** A browser takes a cookie of such a name over TLS alone, and from this very host. */
  public static final String BOUND_TO_HOST = "__Host-";

  private static final long serialVersionUID = 1L;

  @Override
  public ConfigValue getValue(ConfigSourceInterceptorContext context, String name) {
    ConfigValue value = context.proceed(name);
    return name.equals("quarkus.rest-csrf.cookie-name") && isBehind(context)
        ? value.withValue(BOUND_TO_HOST + value.getValue())
        : value;
  }

  private static boolean isBehind(ConfigSourceInterceptorContext context) {
    ConfigValue behind = context.proceed("ascham.behind-proxy");
    return behind != null && Boolean.parseBoolean(behind.getValue());
  }
}
