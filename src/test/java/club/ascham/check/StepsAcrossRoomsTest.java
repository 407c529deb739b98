package club.ascham.check;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Who;
import club.ascham.check.CheckBench.Bow;
import club.ascham.learnt.BowRecords;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import club.ascham.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a check advised is asked of its rows by every room, and of no words. */
@QuarkusTest
class StepsAcrossRoomsTest {
  @Inject CheckBench bench;
  @Inject Verdicts verdicts;
  @Inject BowRecords learnt;
  @Inject Queue queue;
  @Inject Rows rows;
  @Inject ClubTime time;

  private static RequestSpecification as(String name) {
    return given().auth().preemptive().basic(name, "demo-fleet").contentType("application/json");
  }

  @Test
  void twistsThatWereAdvised_andDoneWithoutACount_endTheCountOfTheString() {
    Bow bow = bench.received();
    rows.change("UPDATE set_up SET twists = 20 WHERE rig_id = ?1", bow.rig());
    assertEquals(20, twists(bow));
    Map<String, Object> body = new HashMap<>();
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    CheckBench.braced(body, 198);
    body.put("braceFrom", "grip-throat");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    int check =
        as("volunteer")
            .body(body)
            .post("/api/checks")
            .then()
            .statusCode(201)
            .body("verdict.kind", equalTo("adjust"))
            .body("verdict.steps.key", hasItem("twists"))
            .body("verdict.reasons[0]", startsWith("Brace is 7 13/16 in · 198 mm, "))
            .extract()
            .path("id");
    assertEquals(
        1,
        bench.number(
            "SELECT count(*) FROM verdict_line WHERE check_id = ?1 AND step = 'TWISTS' AND by_whom = 'VOLUNTEER' AND thousandths >= 1000",
            check));
    long entry =
        bench.number(
            "SELECT c.story_id FROM change c JOIN verdict_line v ON v.id = c.row_id AND c.table_name = 'verdict_line' WHERE v.check_id = ?1",
            check);
    assertTrue(
        Visitor.signedInAs("officer").get("/record/" + entry).asString().contains("Put in about "),
        "the record tells it in words");
    as("volunteer")
        .body("{\"words\": \"Some put in.\"}")
        .post("/api/checks/" + check + "/adjustment")
        .then()
        .statusCode(201);
    assertNull(twists(bow));
  }

  private Integer twists(Bow bow) {
    return learnt
        .of(bow.rig(), bow.body().id(), bow.limbs().id(), bow.string().id(), null)
        .twists();
  }

  @ParameterizedTest(name = "{0}: waits for {1}, {2} times in trouble")
  @CsvSource({
    "TWISTS, ADJUST, 1",
    "ANSWER_TOLD, RECEIVED, 1",
    "RELEASE, RECEIVED, 0",
  })
  void queueAndFleet_answerFromTheStep(BenchStep.Key step, Queue.Why why, int troubles) {
    Bow bow = bench.received();
    advised(bow, step, "Do it.");
    assertEquals(
        List.of(why),
        queue.today().stream()
            .filter(one -> one.rig().equals(bow.rig()))
            .map(Queue.Waiting::why)
            .toList());
    as("committee")
        .get("/api/fleet/rows?list=trouble&rig=" + bow.rig().value())
        .then()
        .statusCode(200)
        .body("count", equalTo(troubles))
        .body("troubles.said", equalTo(troubles == 0 ? null : List.of(SAID)));
  }

  private static final String SAID = "As the test wants it.\nStep by volunteer: Do it.";

  @Test
  void troublesOfManyChecks_takeNoMoreStatements_thanThoseOfOne() {
    Bow bow = bench.received();
    advised(bow, BenchStep.Key.TWISTS, "Do it.");
    List<Long> one = checks(bow);
    long few = statements(one);
    for (int i = 0; i < 20; i++) {
      advised(bow, BenchStep.Key.TWISTS, "Do it.");
    }
    assertEquals(21, verdicts.of(checks(bow)).size());
    assertEquals(few, statements(checks(bow)));
  }

  private long statements(List<Long> checks) {
    long before = StatementCount.run();
    verdicts.of(checks);
    return StatementCount.run() - before;
  }

  private List<Long> checks(Bow bow) {
    return rows.texts("SELECT id FROM bow_check WHERE rig_id = ?1", bow.rig()).stream()
        .map(Long::valueOf)
        .toList();
  }

  private void advised(Bow bow, BenchStep.Key step, String words) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              long check =
                  rows.number(
                      """
                      INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
                      VALUES (?1, 'CHECK', ?2, ?2, 1, 1, 'ADJUST') RETURNING id""",
                      bow.rig(),
                      time.now().minus(Duration.ofMinutes(5)));
              verdicts.keep(
                  check,
                  new Given(
                      Verdict.Kind.ADJUST,
                      List.of(Remark.asSaid("As the test wants it.")),
                      List.of(new BenchStep(step, Who.VOLUNTEER, null, Remark.asSaid(words))),
                      List.of(),
                      List.of(),
                      List.of(),
                      List.of()));
            });
  }
}
