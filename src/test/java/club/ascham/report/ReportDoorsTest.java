package club.ascham.report;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same told at any door has the same consequence. */
@QuarkusTest
class ReportDoorsTest {
  private static final String SHOCK = "FELL,LOOSED_WITHOUT_ARROW";

  @Inject ClubFixture fixture;
  @Inject ReportBench told;
  @Inject Rows rows;

  private long loansBefore;

  @BeforeEach
  void before() {
    loansBefore = told.newestLoan();
  }

  @AfterEach
  void asItWas() {
    told.takeBackAllSince(loansBefore);
  }

  /** Where something may be told, by page or by a program. */
  enum Door {
    RECEIVING,
    RECEIVING_OLD_TICK,
    RECEIPTS_API,
    RECEIPTS_API_OLD_FIELD,
    SESSION,
    SESSION_OLD_TICK,
    SESSIONS_API,
    LOAN,
    LOAN_API,
    BOW,
    BOW_API,
    ITEM,
    CHECK,
    CHECKS_API
  }

  @ParameterizedTest
  @EnumSource
  void aDryLooseOrFall_keepsTheBowIn_whereverItIsTold(Door door) {
    LaidBow bow = told(door);
    long report = newest(bow);

    assertEquals(
        SHOCK,
        rows.texts(
                "SELECT group_concat(sign) FROM (SELECT sign FROM report_sign WHERE report_id = ?1"
                    + " ORDER BY sign)",
                report)
            .get(0));
    assertEquals(1, rows.number("SELECT dangerous FROM report WHERE id = ?1", report));
    assertEquals(0, rows.number("SELECT part_known FROM report WHERE id = ?1", report));
    assertEquals(
        "LIMBS,RISER,STRING",
        rows.texts(
                """
                SELECT group_concat(kind) FROM (
                  SELECT i.kind FROM report_part p JOIN item i ON i.id = p.item_id WHERE p.report_id = ?1 ORDER BY i.kind)""",
                report)
            .get(0));
    assertEquals(
        3,
        rows.number(
            """
            SELECT count(*) FROM upkeep_task t WHERE t.blocks = 1 AND t.cause = 'REPORTED' AND t.closed_by_record IS NULL
               AND (t.item_id, t.work) IN (VALUES (?1, 'RISER_INSPECTION'), (?2, 'LIMB_INSPECTION'), (?3, 'STRING_REPLACEMENT'))""",
            bow.body().id(),
            bow.limbs().id(),
            bow.string().id()),
        "each part is to be looked at");
    assertEquals(
        3,
        rows.number(
            "SELECT count(*) FROM item_blocked WHERE item_id IN (?1, ?2, ?3)",
            bow.body().id(),
            bow.limbs().id(),
            bow.string().id()));
    String state = fixture.state(bow);
    assertEquals(
        switch (door) {
          case LOAN, LOAN_API -> "ON_LOAN";
          case CHECK, CHECKS_API -> "WITHDRAWN";
          default -> "TO_BE_CHECKED";
        },
        state);
    assertEquals(
        2,
        rows.number(
            """
            SELECT (SELECT count(DISTINCT a.rig_id) FROM story s JOIN story_about a ON a.story_id = s.id
                     WHERE s.sentence LIKE 'Reported: %' AND a.rig_id = ?1)
                 + (SELECT count(DISTINCT a.item_id) FROM story s JOIN story_about a ON a.story_id = s.id
                     WHERE s.sentence LIKE 'Reported: %' AND a.item_id = ?2)""",
            bow.id(), bow.limbs().id()),
        "it stands in the story of the bow and of its parts");
  }

  @Test
  void whoeverTellsOfADanger_isToldWhatToDo_onThePageThatAnswers() {
    String danger = "Don’t shoot it. Unstring it, with the stringer. Lay it aside.";
    Visitor volunteer = Visitor.signedInAs("volunteer");
    LaidBow out = fixture.aBowLentTo("Ida Fenn");
    String told =
        post(
            volunteer,
            "/reports/new",
            Map.of("rig", out.id().value(), "signs", "crack", "part", out.limbs().code()));
    volunteer
        .get(told)
        .then()
        .body(containsString("Don’t shoot it. Unstring it, with the stringer. Bring it."));

    LaidBow lent = fixture.aBowLentTo("Ida Fenn");
    long loan = fixture.number("SELECT max(id) FROM loan");
    volunteer.get("/receive/" + loan);
    String done = post(volunteer, "/receive/" + loan, received(lent, Map.of("signs", "crack")));
    volunteer.get(done).then().body(containsString(danger));

    LaidBow ready = fixture.aBowReadyToGoOut();
    String page = "/reports/new?rig=" + ready.id().value();
    volunteer.get(page).then().body(containsString("a limb may break when it is drawn"));
    String report =
        post(
            volunteer,
            "/reports/new",
            Map.of("rig", ready.id().value(), "signs", "crack", "part", ready.limbs().code()));
    volunteer.get(report).then().body(containsString(danger));
    assertEquals(
        List.of(ready.limbs().id().value() + ""),
        rows.texts("SELECT item_id FROM report_part WHERE report_id = ?1", newest(ready)));
  }

  @Test
  void cameBackStrung_saysUnstringItNow_andKeepsNothingIn() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    tellByApi(Map.of("rig", bow.body().code(), "signs", List.of("came-back-strung")))
        .statusCode(201)
        .body("dangerous", equalTo(false))
        .body("doNow[0]", equalTo("Unstring it now, with the stringer."));
    assertEquals("READY", fixture.state(bow));
    Visitor.signedInAs("volunteer")
        .get("/check")
        .then()
        .body(containsString("href=\"/check/" + bow.id().value() + "\""));
  }

  private LaidBow told(Door door) {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    return switch (door) {
      case RECEIVING -> receiving(volunteer, "signs", "fell,loosed-without-arrow");
      case RECEIVING_OLD_TICK -> receiving(volunteer, "dryLooseOrFall", "on");
      case RECEIPTS_API -> receipt("signs", List.of("fell", "loosed-without-arrow"));
      case RECEIPTS_API_OLD_FIELD -> receipt("dryLooseOrFall", true);
      case SESSION -> session(volunteer, "signs-", "fell,loosed-without-arrow");
      case SESSION_OLD_TICK -> session(volunteer, "dry-", "on");
      case SESSIONS_API -> sessionByApi();
      case LOAN -> {
        LaidBow bow = fixture.aBowLentTo("Ida Fenn");
        long loan = fixture.number("SELECT max(id) FROM loan");
        tell(volunteer, "loan", loan);
        yield bow;
      }
      case LOAN_API -> {
        LaidBow bow = fixture.aBowLentTo("Ida Fenn");
        tellByApi(
                Map.of(
                    "loan",
                    fixture.number("SELECT max(id) FROM loan"),
                    "signs",
                    List.of("fell", "loosed-without-arrow")))
            .statusCode(201);
        yield bow;
      }
      case BOW -> {
        LaidBow bow = fixture.aBowReadyToGoOut();
        tell(volunteer, "rig", bow.id().value());
        yield bow;
      }
      case BOW_API -> {
        LaidBow bow = fixture.aBowReadyToGoOut();
        tellByApi(
                Map.of(
                    "rig",
                    bow.string().code(),
                    "signs",
                    List.of("fell", "loosed-without-arrow"),
                    "part",
                    "not-known"))
            .statusCode(201);
        yield bow;
      }
      case ITEM -> {
        LaidBow bow = fixture.aBowReadyToGoOut();
        tell(volunteer, "item", bow.limbs().code());
        yield bow;
      }
      case CHECK -> {
        LaidBow bow = fixture.aBowJustReceived();
        String page = "/check/" + bow.id().value();
        volunteer.get(page);
        post(volunteer, page, Map.of("allAsListed", "on", "dryLooseOrFall", "on"));
        yield bow;
      }
      case CHECKS_API -> {
        LaidBow bow = fixture.aBowJustReceived();
        sending("volunteer")
            .body(Map.of("rig", bow.body().code(), "allAsListed", true, "dryLooseOrFall", true))
            .post("/api/checks")
            .then()
            .statusCode(201);
        yield bow;
      }
    };
  }

  private LaidBow receiving(Visitor volunteer, String field, String value) {
    LaidBow bow = fixture.aBowLentTo("Ida Fenn");
    long loan = fixture.number("SELECT max(id) FROM loan");
    volunteer.get("/receive/" + loan);
    post(volunteer, "/receive/" + loan, received(bow, Map.of(field, value)));
    return bow;
  }

  private Map<String, Object> received(LaidBow bow, Map<String, Object> more) {
    Map<String, Object> form = new HashMap<>(more);
    rows.texts("SELECT id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL", bow.id())
        .forEach(line -> form.put("back-" + line, "on"));
    return form;
  }

  private LaidBow receipt(String field, Object value) {
    LaidBow bow = fixture.aBowLentTo("Ida Fenn");
    sending("volunteer")
        .body(Map.of("loanId", fixture.number("SELECT max(id) FROM loan"), field, value))
        .post("/api/receipts")
        .then()
        .statusCode(201)
        .body("dryLooseOrFall", equalTo(true));
    return bow;
  }

  private LaidBow session(Visitor volunteer, String field, String value) {
    LaidBow bow = fixture.aBowReadyToGoOut();
    String page = "/sessions/" + lend(bow);
    volunteer.get(page);
    post(volunteer, page, Map.of(field + bow.id().value(), value));
    return bow;
  }

  private LaidBow sessionByApi() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    int session = lend(bow);
    sending("volunteer")
        .body(Map.of("rigs", List.of(Map.of("rigId", bow.id().value(), "dryLooseOrFall", true))))
        .post("/api/sessions/" + session + "/return")
        .then()
        .statusCode(200);
    return bow;
  }

  private int lend(LaidBow bow) {
    return sending("volunteer")
        .body(Map.of("leader", "Ottoline", "rigIds", List.of(bow.id().value())))
        .post("/api/sessions")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static void tell(Visitor volunteer, String of, Object which) {
    volunteer.get("/reports/new?" + of + "=" + which).then().statusCode(200);
    post(
        volunteer,
        "/reports/new",
        Map.of(of, which, "signs", "fell,loosed-without-arrow", "part", "not-known"));
  }

  private static ValidatableResponse tellByApi(Map<String, Object> body) {
    return sending("volunteer").body(body).post("/api/reports").then();
  }

  private static String post(Visitor visitor, String page, Map<String, ?> form) {
    String location = visitor.post(page, form).then().statusCode(303).extract().header("Location");
    return location.replaceFirst("^https?://[^/]+", "");
  }

  private long newest(LaidBow bow) {
    return rows.number("SELECT max(id) FROM report WHERE rig_id = ?1", bow.id());
  }
}
