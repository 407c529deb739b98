package club.ascham.hostile;

import club.ascham.web.Alternatives;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One way into the server, as its method declares it.
 *
 * @param roles who may; empty: everybody
 */
record Route(String verb, String template, String consumes, Set<String> roles) {
  private static final Pattern PARAMETER = Pattern.compile("\\{(\\w+)[^}]*}");
  private static final String SEGMENT = "([^/?]+)";

  /** Every one that a resource class declares. */
  static List<Route> all() {
    List<Route> found = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("club.ascham")) {
      if (type.isAnnotatedWith(Path.class)) {
        Class<?> resource = type.reflect();
        for (Method method : resource.getDeclaredMethods()) {
          for (Annotation annotation : method.getAnnotations()) {
            HttpMethod verb = annotation.annotationType().getAnnotation(HttpMethod.class);
            if (verb != null) {
              for (String template : Alternatives.of(declared(resource, method))) {
                found.add(of(verb.value(), template, resource, method));
              }
            }
          }
        }
      }
    }
    found.sort(
        Comparator.comparing(Route::template)
            .thenComparing(Route::verb)
            .thenComparing(Route::consumes));
    return found;
  }

  private static String declared(Class<?> resource, Method method) {
    Path below = method.getAnnotation(Path.class);
    return resource.getAnnotation(Path.class).value()
        + (below == null ? "" : below.value().startsWith("/") ? "" : "/")
        + (below == null ? "" : below.value());
  }

  private static Route of(String verb, String template, Class<?> resource, Method method) {
    Consumes consumes =
        method.isAnnotationPresent(Consumes.class)
            ? method.getAnnotation(Consumes.class)
            : resource.getAnnotation(Consumes.class);
    RolesAllowed roles =
        method.isAnnotationPresent(RolesAllowed.class)
            ? method.getAnnotation(RolesAllowed.class)
            : resource.getAnnotation(RolesAllowed.class);
    boolean open = method.isAnnotationPresent(PermitAll.class) || roles == null;
    return new Route(
        verb,
        PARAMETER.matcher(template.replace("//", "/")).replaceAll("{$1}"),
        consumes == null ? "" : consumes.value()[0],
        open ? Set.of() : Set.of(roles.value()));
  }

  boolean isApi() {
    return template.startsWith("/api");
  }

  boolean isRead() {
    return verb.equals("GET");
  }

  boolean isOpenTo(String role) {
    return roles.isEmpty() || roles.contains(role);
  }

  /** Whether an address is one of this route's. */
  boolean leads(String path) {
    Matcher parameters = PARAMETER.matcher(template);
    return Pattern.matches(parameters.replaceAll(SEGMENT), path);
  }

  /** The address with something in place of each parameter. */
  String with(UnaryOperator<String> value) {
    return PARAMETER
        .matcher(template)
        .replaceAll(found -> Matcher.quoteReplacement(value.apply(found.group(1))));
  }

  @Override
  public String toString() {
    return verb + " " + template;
  }
}
