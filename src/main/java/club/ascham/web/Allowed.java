package club.ascham.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Says which requests an address takes, to whoever asks or sent another one. The platform names all
 * that any address of the same class takes, and with 405 none.
 */
@Singleton
class Allowed {
  private static final int SOON = 999;
  private static final String ALLOW = "Allow";
  private static final Pattern PARAMETER = Pattern.compile("\\{\\w+\\s*(?::\\s*([^}]+))?}");

  private record Route(Pattern address, long parameters, String verb) {}

  private final List<Route> routes;

  Allowed(BeanManager beans) {
    this.routes =
        beans.getBeans(Object.class, Any.Literal.INSTANCE).stream()
            .<Class<?>>map(Bean::getBeanClass)
            .distinct()
            .filter(type -> type.isAnnotationPresent(Path.class))
            .flatMap(Allowed::routesOf)
            .toList();
  }

  private static Stream<Route> routesOf(Class<?> type) {
    List<Route> found = new ArrayList<>();
    for (Method method : type.getDeclaredMethods()) {
      for (Annotation annotation : method.getAnnotations()) {
        var verb = annotation.annotationType().getAnnotation(jakarta.ws.rs.HttpMethod.class);
        if (verb != null) {
          Path below = method.getAnnotation(Path.class);
          String template =
              type.getAnnotation(Path.class).value() + "/" + (below == null ? "" : below.value());
          long parameters = PARAMETER.matcher(template).results().count();
          found.add(new Route(address(template), parameters, verb.value()));
        }
      }
    }
    return found.stream();
  }

  /** {@code /rigs/{id:\\d+}} as a pattern of addresses. */
  private static Pattern address(String template) {
    String whole = template.replaceAll("/+", "/").replaceAll("/$", "");
    StringBuilder pattern = new StringBuilder();
    Matcher parameter = PARAMETER.matcher(whole);
    int end = 0;
    while (parameter.find()) {
      pattern.append(Pattern.quote(whole.substring(end, parameter.start())));
      pattern.append(parameter.group(1) == null ? "[^/]+" : parameter.group(1));
      end = parameter.end();
    }
    return Pattern.compile(pattern + Pattern.quote(whole.substring(end)) + "/?");
  }

  void everywhere(@Observes Filters filters) {
    filters.register(
        request -> {
          request.addHeadersEndHandler(end -> tell(request));
          request.next();
        },
        SOON);
  }

  private void tell(RoutingContext request) {
    int status = request.response().getStatusCode();
    boolean asked = request.request().method() == HttpMethod.OPTIONS && status == 200;
    if (!asked && status != 405) {
      return;
    }
    TreeSet<String> here = at(request.normalizedPath());
    if (!here.isEmpty()) {
      request.response().putHeader(ALLOW, String.join(", ", here));
    } else if (asked) {
      request.response().headers().remove(ALLOW);
    }
  }

  /** Of an address of ours; empty: it is none. What is named in full goes before a parameter. */
  private TreeSet<String> at(String path) {
    List<Route> here =
        routes.stream().filter(route -> route.address().matcher(path).matches()).toList();
    long fewest = here.stream().mapToLong(Route::parameters).min().orElse(0);
    TreeSet<String> verbs =
        here.stream()
            .filter(route -> route.parameters() == fewest)
            .map(Route::verb)
            .collect(Collectors.toCollection(TreeSet::new));
    if (verbs.contains("GET")) {
      verbs.add("HEAD");
    }
    if (!verbs.isEmpty()) {
      verbs.add("OPTIONS");
    }
    return verbs;
  }
}
