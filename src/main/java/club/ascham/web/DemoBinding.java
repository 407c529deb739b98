package club.ascham.web;

import io.smallrye.config.ConfigSourceInterceptor;
import io.smallrye.config.ConfigSourceInterceptorContext;
import io.smallrye.config.ConfigValue;

/** The demo club is for this machine alone: with it, the server listens on 127.0.0.1 only. */
public class DemoBinding implements ConfigSourceInterceptor {
  private static final long serialVersionUID = 1L;

  @Override
  public ConfigValue getValue(ConfigSourceInterceptorContext context, String name) {
    ConfigValue value = context.proceed(name);
    if (name.equals("quarkus.http.host") && isDemo(context.proceed("ascham.demo"))) {
      return value == null
          ? ConfigValue.builder().withName(name).withValue("127.0.0.1").build()
          : value.withValue("127.0.0.1");
    }
    return value;
  }

  private static boolean isDemo(ConfigValue demo) {
    return demo != null && Boolean.parseBoolean(demo.getValue());
  }
}
