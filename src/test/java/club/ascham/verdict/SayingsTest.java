package club.ascham.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SayingsTest {
  /** One that is missing here, or said of other things, could not be read from an older check. */
  @Test
  void whatWasEverKept_canStillBeRead() throws IOException {
    try (InputStream known = SayingsTest.class.getResourceAsStream("sayings.txt")) {
      assertEquals(
          new String(known.readAllBytes(), StandardCharsets.UTF_8),
          Arrays.stream(Saying.values())
              .map(SayingsTest::kept)
              .sorted()
              .collect(Collectors.joining("\n", "", "\n")));
    }
  }

  @Test
  void wordsOfSeveralLines_areSaidOnOne_whateverBreaksThem() {
    assertEquals(
        "Worn. Frayed. Cut. Old.", Remark.asSaid("Worn.\nFrayed.\r\n Cut.\u2028Old.").words());
  }

  private static String kept(Saying saying) {
    return saying
        + saying.blanks().stream()
            .map(blank -> " " + blank.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining());
  }
}
