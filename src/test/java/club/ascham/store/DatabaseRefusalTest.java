package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DatabaseRefusalTest {
  /** No page can ask for what these refuse: they are for other programs. */
  private static final Pattern GUARDS_THE_RECORD =
      Pattern.compile("(sealed-)?(story|change|personal-value)-");

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
  void everyNamedTrigger_hasItsSentence() throws IOException, URISyntaxException {
    int seen = 0;
    for (String triggers : migrations()) {
      Matcher named = Pattern.compile("RAISE\\(ABORT, '([a-z-]+)'\\)").matcher(triggers);
      while (named.find()) {
        String rule = named.group(1);
        if (GUARDS_THE_RECORD.matcher(rule).lookingAt()) {
          continue;
        }
        assertEquals(
            rule,
            DatabaseRefusal.in(new SQLException("x " + rule))
                .orElseThrow(() -> new AssertionError(rule))
                .rule());
        seen++;
      }
    }
    assertTrue(seen > 20, "the files hold the triggers");
  }

  private static List<String> migrations() throws IOException, URISyntaxException {
    List<String> texts = new ArrayList<>();
    Path folder = Path.of(DatabaseRefusalTest.class.getResource("/db/migration").toURI());
    try (Stream<Path> files = Files.walk(folder).filter(Files::isRegularFile)) {
      for (Path file : files.toList()) {
        texts.add(Files.readString(file));
      }
    }
    return texts;
  }
}
