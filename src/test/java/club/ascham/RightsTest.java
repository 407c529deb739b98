package club.ascham;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.people.Role;
import club.ascham.store.Rows;
import club.ascham.web.Alternatives;
import club.ascham.web.Visitor;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import io.vertx.ext.web.Route;
import io.vertx.ext.web.Router;
import jakarta.annotation.security.DenyAll;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every route there is, asked by everyone there is: nobody, committee, volunteer, officer. The
 * routes come from the classes themselves, so that a new one is asked too, and one without a rule
 * is a red test.
 */
@QuarkusTest
class RightsTest {
  private static final String NO_SUCH = "999999999";
  private static final Set<String> EVERYONE =
      Set.of(Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES);

  /** What stands open to whoever comes: all else asks who it is. Each is here on purpose. */
  private static final Set<String> OPEN =
      Set.of(
          "GET /sign-in",
          "POST /sign-in",
          "GET /sign-in/code",
          "POST /sign-in/code",
          "GET /join/{secret}",
          "POST /join/{secret}",
          "GET /first-officer",
          "POST /first-officer");

  /** POST because they are handed a body, or stop what is being reckoned: they keep nothing. */
  private static final List<String> RECKONING =
      List.of("POST /api/fit", "POST /api/bench/", "POST /plan/stop", "POST /api/plan/stop/");

  /** POST because what is looked for may be a name, which no address should hold. */
  private static final Set<String> LOOKING = Set.of("POST /find", "POST /loans", "POST /borrowers");

  @Inject Rows rows;
  @Inject Router router;

  /** A route with the roles that may; empty: whoever comes. */
  record Way(String verb, String path, String consumes, Optional<Set<String>> may) {
    boolean isApi() {
      return path.startsWith("/api/");
    }

    String address() {
      return path.replaceAll("\\{[^/]*\\}", NO_SUCH);
    }

    @Override
    public String toString() {
      return verb + " " + path;
    }
  }

  @Test
  void everyRoute_saysWhoMay_andLittleIsOpenToAll() {
    Set<String> open =
        ways().stream()
            .filter(way -> way.may().isEmpty())
            .map(Way::toString)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(OPEN), open);
    assertTrue(ways().size() > 100, "the whole table was read: " + ways().size());
  }

  @Test
  void nobody_isLedToTheSignInPage_orAskedForAPassword_andChangesNothing() {
    List<String> wrong = new ArrayList<>();
    String before = newest();
    for (Way way : ways()) {
      Visitor nobody = Visitor.unknown();
      nobody.get("/sign-in");
      Response answer = way.isApi() ? api(way, null) : page(way, nobody);
      boolean turnedAway =
          way.isApi()
              ? answer.statusCode() == 401
              : answer.statusCode() == 302 && "/sign-in".equals(answer.header("Location"));
      if (way.may().isEmpty() ? isDenied(answer) || answer.statusCode() >= 500 : !turnedAway) {
        wrong.add(way + " answered nobody " + answer.statusCode());
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(before, newest(), "nobody changed anything");
  }

  @Test
  void theCommittee_mayWhatItsRoutesSay_andNoMore() {
    mayWhatTheRoutesSay("committee", Role.COMMITTEES);
  }

  @Test
  void aVolunteer_mayWhatItsRoutesSay_andNoMore() {
    mayWhatTheRoutesSay("volunteer", Role.VOLUNTEERS);
  }

  @Test
  void anOfficer_mayWhatItsRoutesSay_andNoMore() {
    mayWhatTheRoutesSay("officer", Role.OFFICERS);
  }

  @Test
  void theCommittee_changesNothingButItsOwnAccount() {
    List<String> changing =
        ways().stream()
            .filter(way -> !way.verb().equals("GET"))
            .filter(way -> way.may().map(may -> may.contains(Role.COMMITTEES)).orElse(false))
            .map(Way::toString)
            .filter(way -> !way.startsWith("POST /me/") && !way.equals("POST /sign-out"))
            .filter(way -> RECKONING.stream().noneMatch(way::startsWith))
            .filter(way -> !LOOKING.contains(way))
            .toList();
    assertEquals(List.of(), changing);
  }

  @Test
  void whatThePlatformServesItself_isKnown() {
    Set<String> paths =
        router.getRoutes().stream()
            .map(Route::getPath)
            .filter(path -> path != null && !path.equals("/") && !path.equals("/q/"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        Set.of(),
        paths.stream()
            .filter(path -> !path.startsWith("/q/health") && !path.startsWith("/q/openapi"))
            .collect(Collectors.toCollection(TreeSet::new)),
        "health and the description are open on purpose; anything new needs a rule and a line here");
  }

  private void mayWhatTheRoutesSay(String name, String role) {
    List<String> wrong = new ArrayList<>();
    Visitor visitor = Visitor.signedInAs(name);
    visitor.get("/me");
    for (Way way : ways()) {
      boolean may = way.may().map(roles -> roles.contains(role)).orElse(true);
      String before = newest();
      Response answer = way.isApi() ? api(way, name) : page(way, visitor);
      if (may ? isDenied(answer) || answer.statusCode() >= 500 : answer.statusCode() != 403) {
        wrong.add(way + " answered the " + name + " " + answer.statusCode());
      }
      if (!may && !before.equals(newest())) {
        wrong.add(way + " refused the " + name + " and yet changed something");
      }
      if (way.toString().equals("POST /sign-out")) {
        visitor = Visitor.signedInAs(name);
        visitor.get("/me");
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean isDenied(Response answer) {
    return answer.statusCode() == 401
        || answer.statusCode() == 403
        || "/sign-in".equals(answer.header("Location"));
  }

  private static Response page(Way way, Visitor visitor) {
    if (way.verb().equals("GET")) {
      return visitor.get(way.address());
    }
    return way.consumes().startsWith("multipart")
        ? visitor.postFile(way.address(), "file", "x.csv", "x".getBytes())
        : visitor.post(way.address(), Map.of("x", "y"));
  }

  private static Response api(Way way, String name) {
    RequestSpecification request = given().redirects().follow(false);
    if (name != null) {
      request = request.auth().preemptive().basic(name, "demo-fleet");
    }
    if (!way.consumes().isEmpty()) {
      String type = way.consumes().equals("*/*") ? "text/plain" : way.consumes();
      request = request.contentType(type).body(type.endsWith("json") ? "{}" : "x");
    }
    return request.request(way.verb(), way.address());
  }

  private String newest() {
    return rows.texts("SELECT max(id) || ' ' || (SELECT max(id) FROM change) FROM story")
        .toString();
  }

  /** Read once: the classes are the same for everyone who asks. */
  private static final class All {
    private static final List<Way> WAYS = read();
  }

  private static List<Way> ways() {
    return All.WAYS;
  }

  private static List<Way> read() {
    return new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("club.ascham")
            .stream()
            .filter(found -> found.isAnnotatedWith(Path.class))
            .map(JavaClass::reflect)
            .flatMap(
                home ->
                    Arrays.stream(home.getDeclaredMethods()).flatMap(method -> way(home, method)))
            // Signing out last: what comes after would be nobody.
            .sorted(
                Comparator.comparing((Way way) -> way.path().equals("/sign-out"))
                    .thenComparing(Way::toString))
            .toList();
  }

  private static Stream<Way> way(Class<?> home, Method method) {
    return verb(method).stream()
        .flatMap(
            verb ->
                Alternatives.of(path(home, method)).stream()
                    .map(path -> way(verb, path, home, method)));
  }

  private static Way way(String verb, String path, Class<?> home, Method method) {
    return new Way(
        verb,
        path,
        Stream.of(method.getAnnotation(Consumes.class), home.getAnnotation(Consumes.class))
            .filter(consumes -> consumes != null)
            .map(consumes -> consumes.value()[0])
            .findFirst()
            .orElse(""),
        may(home, method));
  }

  private static Optional<String> verb(Method method) {
    return Arrays.stream(method.getAnnotations())
        .map(Annotation::annotationType)
        .map(type -> type.getAnnotation(HttpMethod.class))
        .filter(found -> found != null)
        .map(HttpMethod::value)
        .findFirst();
  }

  private static String path(Class<?> home, Method method) {
    Path more = method.getAnnotation(Path.class);
    String path = "/" + home.getAnnotation(Path.class).value();
    if (more != null) {
      path += "/" + more.value();
    }
    path = path.replaceAll("//+", "/");
    return path.length() > 1 && path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
  }

  /** The method's own rule, else its class's; no rule at all is a failure. */
  private static Optional<Set<String>> may(Class<?> home, Method method) {
    if (method.isAnnotationPresent(DenyAll.class)) {
      return Optional.of(Set.of());
    }
    if (method.isAnnotationPresent(PermitAll.class)) {
      return Optional.empty();
    }
    RolesAllowed own = method.getAnnotation(RolesAllowed.class);
    RolesAllowed rule = own != null ? own : home.getAnnotation(RolesAllowed.class);
    if (rule != null) {
      Set<String> may = Set.of(rule.value());
      assertTrue(EVERYONE.containsAll(may), "a role that does not exist: " + may);
      return Optional.of(may);
    }
    if (home.isAnnotationPresent(PermitAll.class)) {
      return Optional.empty();
    }
    throw new AssertionError(
        "no rule who may: " + method.getName().toLowerCase(Locale.ROOT) + " of " + home.getName());
  }
}
