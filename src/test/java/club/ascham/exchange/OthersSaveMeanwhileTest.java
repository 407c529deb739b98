package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/**
 * Whoever saves while a file is taken in waits at the gate, and gets their turn in its patience.
 */
@QuarkusTest
class OthersSaveMeanwhileTest {
  private static final String LOANS =
      "number,kind,borrower,leader,issuedAt,dueOn,by,recordedAt,hand,drawLength,drawEstimated,"
          + "experience,overrideWhy,deposit,depositHow,depositBack,depositKeptWhy,termsAccepted,"
          + "overrideCoach,briefedAt,briefedBy\n";
  private static final String A_SESSION =
      ",session,,Sunniva Hale,2024-11-24T18:22:02.000Z,2024-11-24,officer,2024-11-24T18:22:37.000Z,"
          + ",,no,,,0.00,,,,no,,,\n";

  @Test
  void whileTheLargestFileIsTriedOut_othersSave() {
    String largest = LOANS + A_SESSION.repeat(CsvText.MOST_LINES);
    CompletableFuture<Response> tried =
        CompletableFuture.supplyAsync(
            () ->
                officer("text/csv").body(largest).queryParam("dryRun", "true").post("/api/import"));
    List<Integer> saved = new ArrayList<>();
    while (!tried.isDone()) {
      saved.add(save());
    }
    tried.join().then().statusCode(200).body("lists[0].added", equalTo(CsvText.MOST_LINES));
    assertTrue(saved.size() > 1, "some were sent meanwhile");
    assertEquals(List.of(201), saved.stream().distinct().toList(), "each got its turn");
  }

  /** The same person each time: kept once. */
  private static int save() {
    return officer("application/json")
        .body(Map.of("name", "Meanwhile", "contact", "m@example.org", "ageBand", "adult"))
        .post("/api/borrowers")
        .statusCode();
  }

  private static RequestSpecification officer(String kind) {
    return as("officer").contentType(kind);
  }
}
