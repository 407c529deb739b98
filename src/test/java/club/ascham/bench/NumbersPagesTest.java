package club.ascham.bench;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import club.ascham.statistics.Drift;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class NumbersPagesTest {
  private static Visitor volunteer() {
    return Visitor.signedInAs("volunteer");
  }

  @Test
  void theBench_leadsThere() {
    volunteer().get("/bench").then().body(containsString("href=\"/bench/numbers\""));
  }

  @Test
  void chart_takesWhatIsNotTyped_fromTheReadings() {
    volunteer()
        .ask(
            "/bench/numbers",
            Map.of("ask", "chart", "readings", "210 211 209 210\n210,5 211 206 205 205 205"))
        .then()
        .statusCode(200)
        .body(containsString("Signal at reading"), containsString("data-label=\"Average\""));
    volunteer()
        .ask(
            "/bench/numbers",
            Map.of(
                "ask",
                "chart",
                "kind",
                "cusum",
                "centre",
                "210",
                "readings",
                "210 211 209 210 210 211 206 205 205 205"))
        .then()
        .statusCode(200)
        .body(containsString("Signal at reading 8"), containsString("Sum down"));
  }

  @Test
  void life_isToldWithItsRange_orRefusedInWords() {
    volunteer()
        .ask(
            "/bench/numbers",
            Map.of(
                "ask", "life",
                "failed", "54 187 216 240 244 335 361 373 375 386",
                "suspended", "500 500 500 500 500 500 500 500 500 500"))
        .then()
        .statusCode(200)
        .body(containsString("Half last 490.2"), containsString("10 failures of 20 parts"));
    volunteer()
        .ask("/bench/numbers", Map.of("ask", "life", "failed", "54", "suspended", "60"))
        .then()
        .statusCode(200)
        .body(containsString("No life can be told yet"), containsString("1 of 2 parts failed"));
  }

  @Test
  void replacementAge_isTold_orThatNonePays() {
    Map<String, String> costs = Map.of("scale", "1000", "plannedCost", "1", "unplannedCost", "5");
    Map<String, String> wearsOut = new HashMap<>(costs);
    wearsOut.putAll(Map.of("ask", "age", "shape", "2"));
    volunteer().ask("/bench/numbers", wearsOut).then().body(containsString("Replace at 510.7"));
    wearsOut.put("shape", "0,8");
    volunteer()
        .ask("/bench/numbers", wearsOut)
        .then()
        .body(containsString("No age pays: inspect instead"));
  }

  @Test
  void readers_goByALetter() {
    volunteer()
        .ask("/bench/numbers", Map.of("ask", "readers", "readings", "a 220\na 222\nb 224\nb: 226"))
        .then()
        .statusCode(200)
        .body(containsString("Two people may differ by 8.32"), containsString("Reads more by"));
  }

  @Test
  void whatIsNoNumber_staysWithItsMessage() {
    volunteer()
        .ask("/bench/numbers", Map.of("ask", "readers", "readings", "a 220\n<b> much"))
        .then()
        .statusCode(422)
        .body(
            containsString("One reading a line, please"),
            containsString("&lt;b&gt; much"),
            not(containsString("Two people may")));
    volunteer()
        .ask("/bench/numbers", Map.of("ask", "life", "failed", "12 twelve"))
        .then()
        .statusCode(422)
        .body(containsString("Numbers only, please"), containsString("12 twelve"));
    volunteer()
        .ask("/bench/numbers", Map.of("ask", "age", "shape", "2"))
        .then()
        .statusCode(422)
        .body(containsString("A number, please."));
  }

  @Test
  void theHelpPage_statesTheChecksThatTheTestsMeasure() {
    volunteer()
        .get("/bench/how-upkeep")
        .then()
        .statusCode(200)
        .body(
            containsString("within %d checks, one of 2 mm".formatted(Drift.CHECKS_FOR_A_FALL)),
            containsString("within %d checks a fortnight apart".formatted(Drift.CHECKS_FOR_CREEP)),
            containsString("one check of 200"));
  }
}
