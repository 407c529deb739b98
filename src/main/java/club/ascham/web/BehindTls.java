package club.ascham.web;

import io.smallrye.config.ConfigSourceInterceptor;
import io.smallrye.config.ConfigSourceInterceptorContext;
import io.smallrye.config.ConfigValue;

/**
 * Behind a proxy that speaks TLS, the cookie of the forms' tokens is bound to this host by its
 * name.
 */
public class BehindTls implements ConfigSourceInterceptor {
  private static final long serialVersionUID = 1L;

  @Override
  public ConfigValue getValue(ConfigSourceInterceptorContext context, String name) {
    ConfigValue value = context.proceed(name);
    return name.equals("quarkus.rest-csrf.cookie-name") && isBehind(context)
        ? value.withValue("__Host-" + value.getValue())
        : value;
  }

  private static boolean isBehind(ConfigSourceInterceptorContext context) {
    ConfigValue behind = context.proceed("ascham.behind-proxy");
    return behind != null && Boolean.parseBoolean(behind.getValue());
  }
}
