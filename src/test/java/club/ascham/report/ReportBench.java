package club.ascham.report;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.equalTo;

import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.restassured.response.ValidatableResponse;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells, checks and answers over the API, for the tests of reports. */
@ApplicationScoped
class ReportBench {
  private final Rows rows;
  private final ClubTime time;

  ReportBench(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** The newest loan, for taking back what a test lends after it. */
  long newestLoan() {
    return rows.number("SELECT max(id) FROM loan");
  }

  /** So that other tests find the club's loans as they were. */
  void takeBackAllSince(long loan) {
    rows.change(
        "UPDATE loan_line SET back_at = max(out_at, ?2), outcome = 'BACK' WHERE back_at IS NULL AND"
            + " loan_id > ?1",
        loan,
        time.now());
  }

  /** A stringer of this test's own, in the room. */
  String stringer() {
    return sending("officer")
        .body(Map.of("stringerKind", "tip-to-tip", "bowFromIn", 48, "bowToIn", 60))
        .post("/api/stringers")
        .then()
        .statusCode(201)
        .extract()
        .path("code");
  }

  ValidatableResponse check(LaidBow bow, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return sending("volunteer").body(body).post("/api/checks").then();
  }

  Map<String, Object> inspected(LaidBow bow, Map<String, Object> more) {
    Map<String, Object> form = new HashMap<>(more);
    List<String> looks =
        sending("volunteer")
            .get("/api/inspections/lists/" + bow.limbs().code() + "/limb-inspection")
            .then()
            .extract()
            .path("looks.key");
    looks.forEach(look -> form.put(look, "fine"));
    return form;
  }

  long tell(Map<String, Object> body) {
    int id =
        sending("volunteer")
            .body(body)
            .post("/api/reports")
            .then()
            .statusCode(201)
            .body("open", equalTo(true))
            .extract()
            .path("id");
    return id;
  }

  ValidatableResponse answer(String who, long report, Map<String, Object> body) {
    return sending(who).body(body).post("/api/reports/" + report + "/answer").then();
  }

  long open(LaidBow bow) {
    return rows.number(
        """
        SELECT count(DISTINCT r.id) FROM report r JOIN report_part p ON p.report_id = r.id
          JOIN fitting f ON f.item_id = p.item_id AND f.until_at IS NULL
         WHERE f.rig_id = ?1 AND r.answer IS NULL""",
        bow.id());
  }
}
