package club.ascham.check;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Who;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
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
  @Inject ClubFixture fixture;
  @Inject Verdicts verdicts;
  @Inject BowRecords learnt;
  @Inject Queue queue;
  @Inject Rows rows;
  @Inject ClubTime time;

  @Test
  void twistsThatWereAdvised_andDoneWithoutACount_endTheCountOfTheString() {
    LaidBow bow = fixture.aBowJustReceived();
    rows.change("UPDATE set_up SET twists = 20 WHERE rig_id = ?1", bow.id());
    assertEquals(20, twists(bow));
    Map<String, Object> body = new HashMap<>();
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    CheckForms.braced(body, 198);
    body.put("braceFrom", "grip-throat");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    int check =
        sending("volunteer")
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
        fixture.number(
            "SELECT count(*) FROM verdict_line WHERE check_id = ?1 AND step = 'TWISTS' AND by_whom = 'VOLUNTEER' AND thousandths >= 1000",
            check));
    long entry =
        fixture.number(
            "SELECT c.story_id FROM change c JOIN verdict_line v ON v.id = c.row_id AND c.table_name = 'verdict_line' WHERE v.check_id = ?1",
            check);
    assertTrue(
        Visitor.signedInAs("officer").get("/record/" + entry).asString().contains("Put in about "),
        "the record tells it in words");
    sending("volunteer")
        .body("{\"words\": \"Some put in.\"}")
        .post("/api/checks/" + check + "/adjustment")
        .then()
        .statusCode(201);
    assertNull(twists(bow));
  }

  private Integer twists(LaidBow bow) {
    return learnt.of(bow.id(), bow.body().id(), bow.limbs().id(), bow.string().id(), null).twists();
  }

  @ParameterizedTest(name = "{0}: waits for {1}, {2} times in trouble")
  @CsvSource({
    "TWISTS, ADJUST, 1",
    "ANSWER_TOLD, RECEIVED, 1",
    "RELEASE, RECEIVED, 0",
  })
  void queueAndFleet_answerFromTheStep(BenchStep.Key step, Queue.Why why, int troubles) {
    LaidBow bow = fixture.aBowJustReceived();
    advised(bow, step, "Do it.");
    assertEquals(
        List.of(why),
        queue.today().stream()
            .filter(one -> one.rig().equals(bow.id()))
            .map(Queue.Waiting::why)
            .toList());
    sending("committee")
        .get("/api/fleet/rows?list=trouble&rig=" + bow.id().value())
        .then()
        .statusCode(200)
        .body("count", equalTo(troubles))
        .body("troubles.said", equalTo(troubles == 0 ? null : List.of(SAID)));
  }

  private static final String SAID = "As the test wants it.\nStep by volunteer: Do it.";

  @Test
  void troublesOfManyChecks_takeNoMoreStatements_thanThoseOfOne() {
    LaidBow bow = fixture.aBowJustReceived();
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

  private List<Long> checks(LaidBow bow) {
    return rows.texts("SELECT id FROM bow_check WHERE rig_id = ?1", bow.id()).stream()
        .map(Long::valueOf)
        .toList();
  }

  private void advised(LaidBow bow, BenchStep.Key step, String words) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              long check =
                  rows.number(
                      """
                      INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
                      VALUES (?1, 'CHECK', ?2, ?2, 1, 1, 'ADJUST') RETURNING id""",
                      bow.id(),
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
