package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ChainTest {
  @Test
  @DisplayName("SHA-256 of a line feed alone, as the coreutils' sha256sum prints it")
  void seal_isPlainSha256_overTheSealBeforeAndTheEntry() {
    // printf '\n' | sha256sum, GNU coreutils 9.1; FIPS 180-4 defines the function.
    assertEquals(
        "01ba4719c80b6fe911b091a7c05124b64eeece964e09c058ef8f9805daca546b",
        Chain.seal(Chain.START, ""));
    // printf '\nabc' | sha256sum
    assertEquals(ABC, Chain.seal(Chain.START, "abc"));
  }

  private static final String ABC =
      "f39d39bfc99287b848780d4110eb663f0e7c344ae41f46a390c4135b89dc2756";

  @Test
  void seal_changesWithAnythingBeforeIt() {
    String first = Chain.seal(Chain.START, "[1]");
    for (String other : List.of("[2]", "[1] ", "")) {
      assertNotEquals(
          Chain.seal(first, "[3]"), Chain.seal(Chain.seal(Chain.START, other), "[3]"), other);
    }
  }
}
