package club.ascham.door;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jboss.logmanager.ExtLogRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The code in the log, pressed by several people at once. */
@QuarkusTest
class FirstOfficerTest {
  private static final Pattern CODE = Pattern.compile("one-time code: (\\S+)");
  private static final int PRESSES = 8;

  @Inject FirstOfficer firstOfficer;
  @Inject Rows rows;

  @AfterEach
  void takeTheAccountsAway() {
    rows.change("DELETE FROM account WHERE name LIKE 'quick-hand-%'");
  }

  @Test
  void oneCode_makesOneOfficer_howeverManyPressAtOnce() throws Exception {
    String code = offered();
    List<Callable<Integer>> presses = new ArrayList<>();
    for (int i = 0; i < PRESSES; i++) {
      Visitor visitor = Visitor.unknown();
      assertTrue(visitor.get("/first-officer").asString().contains("One-time code"));
      Map<String, String> form =
          Map.of("code", code, "name", "quick-hand-" + i, "password", "wicket heron teasel " + i);
      presses.add(() -> visitor.post("/first-officer", form).statusCode());
    }
    ExecutorService hands = Executors.newFixedThreadPool(PRESSES);
    try {
      List<Integer> answers = new ArrayList<>();
      for (Future<Integer> answer : hands.invokeAll(presses)) {
        answers.add(answer.get());
      }
      assertEquals(1, Collections.frequency(answers, 303), answers.toString());
      assertEquals(PRESSES - 1, Collections.frequency(answers, 422), answers.toString());
    } finally {
      hands.shutdown();
    }
    assertEquals(1, rows.number("SELECT count(*) FROM account WHERE name LIKE 'quick-hand-%'"));
    Visitor.unknown()
        .get("/first-officer")
        .then()
        .body(containsString("This club has its first account."));
  }

  /** As whoever sets up the club reads it. */
  private String offered() {
    List<String> said = Collections.synchronizedList(new ArrayList<>());
    Handler reader =
        new Handler() {
          @Override
          public void publish(LogRecord record) {
            said.add(
                record instanceof ExtLogRecord ours
                    ? ours.getFormattedMessage()
                    : record.getMessage());
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Logger log = Logger.getLogger(FirstOfficer.class.getName());
    log.addHandler(reader);
    try {
      firstOfficer.offerCode();
    } finally {
      log.removeHandler(reader);
    }
    Matcher code = CODE.matcher(String.join("\n", said));
    assertTrue(code.find(), said.toString());
    return code.group(1);
  }
}
