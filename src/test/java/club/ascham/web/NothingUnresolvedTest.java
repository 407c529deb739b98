package club.ascham.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page that links lead to, as every role: no placeholder of a template is left in any. */
@QuarkusTest
@Order(2)
class NothingUnresolvedTest {
  /** Pages of one kind that are looked at: with more and with fewer things on them. */
  private static final int OF_ONE_KIND = 4;

  private static final Pattern LINK = Pattern.compile("(?:href|action)=\"(/[^\"#]*)");
  private static final Pattern NUMBER_OR_CODE =
      Pattern.compile("\\d+|[A-Z]-\\d{4}-\\w|=[^&]*|[a-z]+-(limbs|rigs|strings)\\.csv");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{[#/]?[A-Za-z][\\w.:]*}");
  private static final Pattern SCRIPT = Pattern.compile("(?s)<script.*?</script>");

  @ParameterizedTest
  @ValueSource(strings = {"officer", "volunteer", "committee"})
  void noPageShowsAPlaceholder(String name) {
    Visitor visitor = Visitor.signedInAs(name);
    Deque<String> waiting = new ArrayDeque<>(List.of("/", "/find"));
    Set<String> known = new HashSet<>(waiting);
    Map<String, Integer> ofKind = new HashMap<>();
    List<String> unresolved = new ArrayList<>();
    int pages = 0;
    while (!waiting.isEmpty()) {
      String address = waiting.poll();
      String kind = NUMBER_OR_CODE.matcher(address).replaceAll("*");
      if (ofKind.merge(kind, 1, Integer::sum) > OF_ONE_KIND) {
        continue;
      }
      Response page = visitor.get(address);
      assertTrue(page.statusCode() < 500, address + " answers " + page.statusCode());
      if (page.statusCode() != 200 || !page.contentType().startsWith("text/html")) {
        continue;
      }
      pages++;
      String words = SCRIPT.matcher(page.asString()).replaceAll("");
      Matcher placeholder = PLACEHOLDER.matcher(words);
      if (placeholder.find()) {
        unresolved.add(address + " shows " + placeholder.group());
      }
      Matcher link = LINK.matcher(words);
      while (link.find()) {
        String next = link.group(1).replace("&amp;", "&");
        if (known.add(next)) {
          waiting.add(next);
        }
      }
    }
    assertEquals(List.of(), unresolved);
    assertTrue(pages > 60, pages + " pages were looked at");
  }
}
