package club.ascham.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.packaged.PackagedServer;
import club.ascham.people.Role;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every route and every form meets requests that no page and no honest program sends. The long form
 * is off by default: {@code mvn verify -Pmeasure -Dit.test=HostileInputIT -Dtest=none
 * -Dsurefire.failIfNoSpecifiedTests=false}; {@code -Dascham.malice-seed=} tries others.
 */
class HostileInputIT {
  private static final Logger LOG = Logger.getLogger(HostileInputIT.class);
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String PASSWORD = "demo-fleet";
  private static final int PAGES_OF_A_ROUTE = 2;
  private static final int FAULTS_SHOWN = 40;

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  /** What reads every sentence there is takes as long as there are sentences. */
  private static final Pattern WHOLE_RECORD = Pattern.compile("record/(verif|export)");

  /** A one-time key that one form has used and others bring again. */
  private static final String SHARED_KEY = "the-same";

  /** Requests without rights between two looks at the record. */
  private static final int BLOCK = 50;

  /** How much of the program shows through. */
  private static final Pattern INNARDS =
      Pattern.compile(
          "\\bat [\\w.$/]+\\(\\w+\\.java|\\.java:\\d+\\)|\\b(java|javax|jakarta|io\\.quarkus|io\\.vertx|io\\.netty|org\\.hibernate|org\\.sqlite|org\\.jboss|com\\.fasterxml|club\\.ascham)\\.[a-z]+\\.?[\\w$]*|Exception\\b|SQLITE_|\\[SQLITE");

  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
  private static final Pattern TOKEN = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");

  /** Someone with an account of the demo club, or a stranger. */
  private enum Who {
    NOBODY(null),
    COMMITTEE(Role.COMMITTEES),
    VOLUNTEER(Role.VOLUNTEERS),
    OFFICER(Role.OFFICERS);

    private final String role;

    Who(String role) {
      this.role = role;
    }

    boolean may(Route route) {
      return role == null ? route.roles().isEmpty() : route.isOpenTo(role);
    }

    String account() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A request's aim: a route, or a form that leads to it. */
  private record Aim(Route route, Form form) {
    @Override
    public String toString() {
      return form == null ? route.toString() : "form " + form.verb() + " " + form.action();
    }
  }

  private record Session(String cookies, String token) {}

  @TempDir Path folder;

  private Wire wire;
  private String host;
  private final Map<Who, Session> sessions = new HashMap<>();
  private final List<Route> routes = Route.all();
  private final Map<String, List<String>> examples = new HashMap<>();
  private final Map<String, Set<String>> asked = new HashMap<>();
  private final Map<Route, Set<String>> addresses = new HashMap<>();
  private final Map<String, Form> forms = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();
  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final Map<String, Set<Integer>> statusesOf = new HashMap<>();

  @Test
  void twoThousandMalformedRequests_breakNothing_tellNothing_andChangeNothingWithoutRights()
      throws Exception {
    run(2_000);
  }

  @Test
  @Tag("measure")
  void twentyThousandMalformedRequests_breakNothing_tellNothing_andChangeNothingWithoutRights()
      throws Exception {
    run(20_000);
  }

  private void run(int requests) throws Exception {
    long seed = Long.getLong("ascham.malice-seed", 20_261_126);
    // What the server does by itself a minute after its start would be taken for one of theirs.
    try (PackagedServer server =
        PackagedServer.demo(folder.resolve("data"), "-Dquarkus.scheduler.enabled=false")) {
      wire = new Wire(server.address());
      host = server.address().getAuthority();
      learn();
      attack(new Malice(new Random(seed)), requests);
      LOG.infof(
          "%d requests, seed %d: %d routes, %d forms, answers %s",
          requests, seed, routes.size(), forms.size(), statuses);
      assertEquals(
          List.of(), faults.subList(0, Math.min(FAULTS_SHOWN, faults.size())), server.log());
      assertEquals(200, get(Who.OFFICER, "/api/record/verification").status());
      assertEquals(
          List.of(),
          statusesOf.entrySet().stream()
              .filter(one -> one.getValue().equals(Set.of(429)))
              .map(Map.Entry::getKey)
              .toList(),
          "a limit of rate stood before what should be tried");
    }
  }

  // ---- what there is

  private void learn() throws IOException {
    JsonNode paths = JSON.readTree(get(Who.OFFICER, "/q/openapi?format=json").body()).path("paths");
    Set<String> known = new HashSet<>();
    routes.forEach(route -> known.add(route.toString()));
    for (Map.Entry<String, JsonNode> path : paths.properties()) {
      for (Map.Entry<String, JsonNode> call : path.getValue().properties()) {
        String name = call.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey();
        if (known.contains(name)) {
          describe(name, call.getValue());
        } else if (path.getKey().startsWith("/api")) {
          faults.add("described and not found among the resources: " + name);
        }
      }
    }
    assertTrue(examples.size() > 30, examples.size() + " calls with an example");
    crawl();
    assertTrue(forms.size() > 30, forms.size() + " forms");
    for (Route route : routes) {
      if (route.isApi()) {
        addresses.computeIfAbsent(route, r -> new LinkedHashSet<>()).add(route.with(this::likely));
      }
    }
  }

  private void describe(String name, JsonNode call) {
    for (JsonNode content : call.path("requestBody").path("content")) {
      if (!content.path("example").isMissingNode()) {
        examples.computeIfAbsent(name, n -> new ArrayList<>()).add(plain(content.path("example")));
      }
      for (JsonNode example : content.path("examples")) {
        examples.computeIfAbsent(name, n -> new ArrayList<>()).add(plain(example.path("value")));
      }
    }
    for (JsonNode parameter : call.path("parameters")) {
      asked.computeIfAbsent(name, n -> new LinkedHashSet<>()).add(parameter.path("name").asText());
    }
  }

  private static String plain(JsonNode example) {
    return example.isTextual() ? example.asText() : example.toString();
  }

  /** A value that may exist. */
  private String likely(String parameter) {
    return switch (parameter) {
      case "code" -> codes.isEmpty() ? "R-0147-J" : codes.iterator().next();
      case "work" -> "bolt-inspection";
      case "file" -> "risers.csv";
      default -> "1";
    };
  }

  private final Set<String> codes = new LinkedHashSet<>();

  private void crawl() throws IOException {
    Deque<String> waiting = new ArrayDeque<>(List.of("/"));
    Set<String> seen = new HashSet<>(waiting);
    for (Route route : routes) {
      if (route.isRead() && !route.isApi() && !route.template().contains("{")) {
        waiting.add(route.template());
      }
    }
    Map<String, Integer> visited = new HashMap<>();
    while (!waiting.isEmpty()) {
      String address = waiting.poll();
      String path = address.split("\\?")[0];
      Route route = leadingTo("GET", path);
      if (route == null
          || visited.merge(route + query(address), 1, Integer::sum) > PAGES_OF_A_ROUTE) {
        continue;
      }
      addresses.computeIfAbsent(route, r -> new LinkedHashSet<>()).add(path);
      Wire.Answer page = get(Who.OFFICER, address);
      for (Form form : Form.on(page.body(), path)) {
        String action = form.action().split("\\?")[0];
        Route to = leadingTo(form.verb(), action);
        if (to != null) {
          addresses.computeIfAbsent(to, r -> new LinkedHashSet<>()).add(action);
          forms.putIfAbsent(to + " " + form.fields().keySet(), form);
        }
      }
      Matcher link = LINK.matcher(page.body());
      while (link.find()) {
        String next = link.group(1).replace("&amp;", "&");
        Matcher code = Pattern.compile("/items/([A-Z]-\\d{4}-\\w)").matcher(next);
        if (code.matches()) {
          codes.add(code.group(1));
        }
        if (seen.add(next)) {
          waiting.add(next);
        }
      }
    }
  }

  private static String query(String address) {
    return address.contains("?") ? "?" : "";
  }

  private Route leadingTo(String verb, String path) {
    return routes.stream()
        .filter(route -> route.verb().equals(verb) && route.leads(path))
        .min(Comparator.comparingInt(route -> route.template().split("\\{").length))
        .orElse(null);
  }

  // ---- the requests

  private void attack(Malice malice, int requests) throws IOException {
    List<Aim> aims = new ArrayList<>();
    routes.forEach(route -> aims.add(new Aim(route, null)));
    forms
        .values()
        .forEach(
            form -> aims.add(new Aim(leadingTo(form.verb(), form.action().split("\\?")[0]), form)));
    for (Who who : Who.values()) {
      sessions.put(who, signIn(who));
    }
    // First those without the right, so that whatever changes meanwhile is theirs.
    String before = newest();
    int without = requests / 2;
    int at = 0;
    List<String> block = new ArrayList<>();
    for (int i = 0; i < without; at++) {
      Aim aim = aims.get(at % aims.size());
      Who who = List.of(Who.NOBODY, Who.COMMITTEE, Who.VOLUNTEER).get(at / aims.size() % 3);
      if (who.may(aim.route()) && !aim.route().isRead()) {
        continue;
      }
      block.add(one(malice, aim, who));
      i++;
      if (block.size() == BLOCK || i == without) {
        String after = newest();
        if (!after.equals(before)) {
          faults.add("changed without a right, by one of: " + block + ": " + after);
        }
        before = after;
        block.clear();
      }
    }
    for (int i = without; i < requests; i++, at++) {
      Aim aim = aims.get(at % aims.size());
      List<Who> may = List.of(Who.values()).stream().filter(who -> who.may(aim.route())).toList();
      one(malice, aim, malice.anyOf(may));
    }
  }

  private String newest() throws IOException {
    JsonNode entry = JSON.readTree(get(Who.OFFICER, "/api/record?size=1").body()).path("items");
    assertEquals(64, entry.path(0).path("seal").asText().length(), entry.toString());
    return entry.path(0).path("seal").asText() + " " + entry.path(0).path("sentence").asText();
  }

  private String one(Malice malice, Aim aim, Who who) throws IOException {
    Route route = aim.route();
    boolean untouched = malice.oneIn(5);
    Collection<String> known = addresses.getOrDefault(route, Set.of());
    String address =
        known.isEmpty() || locksOut(route) || !untouched && malice.oneIn(4)
            ? route.with(
                name -> malice.oneIn(3) && !locksOut(route) ? likely(name) : malice.segment())
            : malice.anyOf(List.copyOf(known));
    String verb = !untouched && malice.oneIn(20) ? malice.verb() : route.verb();
    List<String> names = new ArrayList<>(asked.getOrDefault(route.toString(), Set.of()));
    if (aim.form() != null) {
      names.addAll(aim.form().fields().keySet());
    }
    if (route.isRead() && !malice.oneIn(4) || malice.oneIn(20)) {
      address += "?" + malice.query(names.isEmpty() ? List.of("page", "size", "q", "list") : names);
    }
    String type = route.consumes();
    byte[] body = new byte[0];
    if (!route.isRead()) {
      Map<String, String> fields =
          new LinkedHashMap<>(aim.form() == null ? Map.of("note", "x") : aim.form().fields());
      if (fields.containsKey("once-key") && malice.oneIn(3)) {
        fields.put("once-key", SHARED_KEY);
      }
      String token = sessions.get(who).token();
      if (type.equals("application/x-www-form-urlencoded")) {
        String form = malice.formOf(fields, untouched);
        body =
            (malice.oneIn(12) ? form : form + "&csrf-token=" + Malice.encoded(token))
                .getBytes(StandardCharsets.UTF_8);
      } else if (type.startsWith("multipart")) {
        fields.put("csrf-token", token);
        body = malice.multipart(fields, "x");
        type = "multipart/form-data; boundary=x";
      } else if (type.equals("text/csv")) {
        body = malice.csvLike("code,maker,model\r\nR-0147-J,Yewtree,One\r\n");
      } else {
        body =
            malice.jsonLike(
                malice.anyOf(examples.getOrDefault(route.toString(), List.of("{}"))), untouched);
      }
    }
    if (!untouched && malice.oneIn(12)) {
      type = malice.contentType();
    }
    String odd = untouched ? "" : malice.headers();
    Wire.Answer answer = send(who, route.isApi(), verb, address, type, body, odd);
    boolean mayClose = !odd.isEmpty() || !verb.equals(route.verb()) || address.contains("%");
    judge(
        answer,
        mayClose,
        WHOLE_RECORD.matcher(route.template()).find(),
        who
            + " "
            + verb
            + " "
            + cut(address)
            + " "
            + cut(odd)
            + " ["
            + type
            + "] "
            + cut(new String(body, StandardCharsets.UTF_8)));
    statusesOf.computeIfAbsent(aim.toString(), a -> new HashSet<>()).add(answer.status());
    if (!route.isApi() && answer.header("Location").contains("/sign-in") && who != Who.NOBODY) {
      sessions.put(who, signIn(who));
    }
    return who + " " + verb + " " + address;
  }

  /** What would take their accounts from those who try: of others only. */
  private static boolean locksOut(Route route) {
    return route.template().startsWith("/people/{") && !route.isRead();
  }

  private static String cut(String text) {
    return text.length() <= 400 ? text : text.substring(0, 400) + "…";
  }

  private void judge(Wire.Answer answer, boolean mayClose, boolean whole, String request) {
    statuses.merge(answer.status(), 1, Integer::sum);
    int status = answer.status();
    if (status == Wire.Answer.TOO_LATE || answer.took().compareTo(PATIENCE) > 0 && !whole) {
      faults.add("no answer within " + PATIENCE + ": " + request);
    } else if (status == Wire.Answer.CLOSED && !mayClose) {
      faults.add("closed without an answer: " + request);
    } else if (status >= 500
        && (status != 503 || answer.header("Retry-After").isEmpty())
        && status != 501) {
      faults.add(status + ": " + request);
    }
    Matcher innards = INNARDS.matcher(answer.body());
    if (innards.find()) {
      faults.add("tells “" + innards.group() + "”: " + request);
    }
    if (answer.isPage() && answer.body().contains(Malice.SCRIPT)) {
      faults.add("gives a script back: " + request);
    }
    if (answer.headers().stream().anyMatch(line -> line.startsWith("Set-Cookie: hostile"))) {
      faults.add("lets a header in: " + request);
    }
    if (!leadsHere(answer.header("Location"))) {
      faults.add("leads elsewhere: " + request);
    }
  }

  /** None, or a path: what a browser takes for another host begins with a scheme or two strokes. */
  private boolean leadsHere(String location) {
    return location.isEmpty()
        || location.startsWith("http://" + host + "/")
        || location.matches("/(?![/\\\\]).*");
  }

  // ---- signing in and sending

  private Session signIn(Who who) throws IOException {
    Wire.Answer page = send(who, true, "GET", "/sign-in", "", new byte[0], "");
    String token = token(page.body());
    List<String> cookies = new ArrayList<>(page.cookies());
    if (who != Who.NOBODY) {
      String form =
          "name="
              + who.account()
              + "&password="
              + PASSWORD
              + "&csrf-token="
              + Malice.encoded(token);
      Wire.Answer in =
          wire.send(
              request(
                  "POST",
                  "/sign-in",
                  "Cookie: "
                      + String.join("; ", cookies)
                      + "\r\nContent-Type: application/x-www-form-urlencoded\r\n",
                  form.getBytes(StandardCharsets.UTF_8)));
      assertTrue(
          in.cookies().stream().anyMatch(c -> c.startsWith("ascham-session=")), in.toString());
      cookies.addAll(in.cookies());
    }
    String jar = String.join("; ", cookies);
    if (who != Who.NOBODY) {
      Wire.Answer me = wire.send(request("GET", "/me", "Cookie: " + jar + "\r\n", new byte[0]));
      assertEquals(200, me.status(), who.toString());
      if (!me.cookies().isEmpty()) {
        jar += "; " + String.join("; ", me.cookies());
      }
      token = token(me.body());
    }
    return new Session(jar, token);
  }

  private static String token(String page) {
    Matcher token = TOKEN.matcher(page);
    return token.find() ? token.group(1) : "";
  }

  private Wire.Answer get(Who who, String address) throws IOException {
    if (!address.startsWith("/api") && !sessions.containsKey(who)) {
      sessions.put(who, signIn(who));
    }
    return send(who, address.startsWith("/api"), "GET", address, "", new byte[0], "");
  }

  private Wire.Answer send(
      Who who, boolean api, String verb, String address, String type, byte[] body, String odd)
      throws IOException {
    StringBuilder head = new StringBuilder(odd);
    if (api && who != Who.NOBODY && address.startsWith("/api")) {
      head.append("Authorization: Basic ")
          .append(
              Base64.getEncoder()
                  .encodeToString(
                      (who.account() + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8)))
          .append("\r\n");
    } else if (!api) {
      head.append("Cookie: ").append(sessions.get(who).cookies()).append("\r\n");
    }
    if (!type.isEmpty() && (body.length > 0 || !verb.equals("GET"))) {
      head.append("Content-Type: ").append(type).append("\r\n");
    }
    return wire.send(request(verb, address, head.toString(), body));
  }

  private byte[] request(String verb, String address, String head, byte[] body) {
    byte[] start =
        (verb
                + " "
                + address
                + " HTTP/1.1\r\nHost: "
                + host
                + "\r\nConnection: close\r\n"
                + head
                + (body.length > 0 || !verb.equals("GET")
                    ? "Content-Length: " + body.length + "\r\n"
                    : "")
                + "\r\n")
            .getBytes(StandardCharsets.UTF_8);
    byte[] whole = Arrays.copyOf(start, start.length + body.length);
    System.arraycopy(body, 0, whole, start.length, body.length);
    return whole;
  }
}
