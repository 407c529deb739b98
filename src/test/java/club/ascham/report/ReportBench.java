package club.ascham.report;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;

import club.ascham.check.CheckBench.Bow;
import club.ascham.store.Rows;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells, checks and answers over the API, for the tests of reports. */
@ApplicationScoped
class ReportBench {
  private final Rows rows;

  ReportBench(Rows rows) {
    this.rows = rows;
  }

  ValidatableResponse check(Bow bow, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return api("volunteer").body(body).post("/api/checks").then();
  }

  Map<String, Object> inspected(Bow bow, Map<String, Object> more) {
    Map<String, Object> form = new HashMap<>(more);
    List<String> looks =
        api("volunteer")
            .get("/api/inspections/lists/" + bow.limbs().code() + "/limb-inspection")
            .then()
            .extract()
            .path("looks.key");
    looks.forEach(look -> form.put(look, "fine"));
    return form;
  }

  long tell(Map<String, Object> body) {
    int id =
        api("volunteer")
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
    return api(who).body(body).post("/api/reports/" + report + "/answer").then();
  }

  long open(Bow bow) {
    return rows.number(
        """
        SELECT count(DISTINCT r.id) FROM report r JOIN report_part p ON p.report_id = r.id
          JOIN fitting f ON f.item_id = p.item_id AND f.until_at IS NULL
         WHERE f.rig_id = ?1 AND r.answer IS NULL""",
        bow.rig());
  }

  static RequestSpecification api(String who) {
    return given().auth().preemptive().basic(who, "demo-fleet").contentType("application/json");
  }
}
