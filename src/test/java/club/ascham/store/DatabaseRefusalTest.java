package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class DatabaseRefusalTest {
  @Test
  void aTriggersName_becomesTheSentenceForThePerson() {
    DatabaseRefusal refusal =
        DatabaseRefusal.in(
                new IllegalStateException(
                    new SQLException("[SQLITE_CONSTRAINT_TRIGGER] rig-is-on-loan")))
            .orElseThrow();
    assertEquals("rig-is-on-loan", refusal.rule());
    assertTrue(refusal.getMessage().startsWith("That rig is on loan"));
  }

  @Test
  void aFailureThatNoRuleSpoke_isNoRefusal() {
    assertTrue(DatabaseRefusal.in(new SQLException("disk I/O error")).isEmpty());
  }

  @Test
  void everyNamedTrigger_hasItsSentence() throws IOException {
    String triggers =
        read("/db/migration/V008__what_the_database_refuses.sql")
            + read("/db/migration/V024__a_release_says_what_was_looked_at.sql");
    Matcher named = Pattern.compile("RAISE\\(ABORT, '([a-z-]+)'\\)").matcher(triggers);
    int seen = 0;
    while (named.find()) {
      String rule = named.group(1);
      assertEquals(
          rule,
          DatabaseRefusal.in(new SQLException("x " + rule))
              .orElseThrow(() -> new AssertionError(rule))
              .rule());
      seen++;
    }
    assertTrue(seen > 10, "the file holds the triggers");
  }

  private static String read(String resource) throws IOException {
    try (InputStream in = DatabaseRefusalTest.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
