package club.ascham.form;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SentTest {
  private record Body(String name, Integer count, List<String> signs, String onceKey) {}

  private record Upload(byte[] file) {}

  private static String digest(Object sent) {
    return Sent.of(sent).digest(Set.of("onceKey"));
  }

  @Test
  void theOrderOfFields_blanks_andHowANumberIsWritten_makeNoDifference() {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("name", " Ada ");
    one.put("count", 2);
    Map<String, Object> other = new LinkedHashMap<>();
    other.put("count", 2.0);
    other.put("words", "");
    other.put("name", "Ada");
    assertEquals(digest(one), digest(other));
    assertEquals(digest(one), digest(new Body("Ada", 2, null, "k")));
  }

  @Test
  void theKeyItself_isNoPartOfWhatWasSent() {
    assertEquals(digest(new Body("Ada", 2, null, "k")), digest(new Body("Ada", 2, null, "l")));
    assertEquals("k", Sent.of(new Body("Ada", 2, null, " k ")).text("onceKey"));
    assertEquals("", Sent.of(null).text("onceKey"));
  }

  @Test
  void whatDiffers_isTold() {
    String body = digest(new Body("Ada", 2, List.of("creak"), null));
    assertNotEquals(body, digest(new Body("Ada", 3, List.of("creak"), null)));
    assertNotEquals(body, digest(new Body("Ada", 2, List.of("creak", "serving"), null)));
    assertNotEquals(body, digest(new Body("Ada", 2, null, null)));
    assertNotEquals(
        digest(new Upload("a,b\n".getBytes(UTF_8))), digest(new Upload("a,c\n".getBytes(UTF_8))));
  }

  @Test
  void whatStandsInOneField_neverLooksLikeTwo() {
    assertNotEquals(digest(Map.of("a", "b=c")), digest(Map.of("a", "b", "c", "")));
    assertNotEquals(
        digest(Map.of("list", List.of("ab"))), digest(Map.of("list", List.of("a", "b"))));
    assertNotEquals(
        digest(Map.of("list", Arrays.asList("a", null))), digest(Map.of("list", List.of("a"))));
  }
}
