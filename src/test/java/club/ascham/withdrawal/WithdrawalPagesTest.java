package club.ascham.withdrawal;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.check.CheckBench;
import club.ascham.check.CheckBench.Bow;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class WithdrawalPagesTest {
  @Inject CheckBench bench;

  private Bow bow;

  @BeforeEach
  void aBowOnTheBench() {
    bow = bench.ready();
    bench.mayTurnBolts("officer", true);
    bench.mayTurnBolts("volunteer", false);
  }

  private long open() {
    return bench.number(
        "SELECT coalesce(max(id), 0) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL",
        bow.limbs().id());
  }

  private void withdraw(Visitor visitor) {
    String page = "/items/" + bow.limbs().code() + "/withdraw";
    visitor.get(page).then().statusCode(200);
    visitor
        .post(page, Map.of("why", "a line across the lower limb", "work", "limb-inspection"))
        .then()
        .statusCode(303);
  }

  @Test
  void aVolunteerWithdraws_andOnlySomeoneWithThePermitReleases_sayingWhy() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    withdraw(volunteer);
    assertEquals("WITHDRAWN", bench.state(bow));
    volunteer.get("/withdrawals").then().body(containsString("a line across the lower limb"));

    String release = "/withdrawals/" + open() + "/release";
    volunteer.get(release).then().body(containsString("Ask the officer"));
    volunteer.post(release, Map.of("why", "looks fine")).then().statusCode(422);
    assertEquals("WITHDRAWN", bench.state(bow));

    Visitor officer = Visitor.signedInAs("officer");
    officer.get(release);
    officer.post(release, Map.of()).then().statusCode(422).body(containsString("Why may it"));
    officer.post(release, Map.of("why", "a scratch in the lacquer")).then().statusCode(303);
    officer
        .get("/withdrawals?show=released")
        .then()
        .body(containsString("a scratch in the lacquer"));
    assertEquals("TO_BE_CHECKED", bench.state(bow), "the inspection asked for keeps it in");
  }

  @Test
  void withoutAReason_nothingIsWithdrawn_andTheChoiceIsKept() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/items/" + bow.limbs().code() + "/withdraw";
    volunteer.get(page);
    volunteer
        .post(page, Map.of("work", "limb-inspection"))
        .then()
        .statusCode(422)
        .body(containsString("value=\"limb-inspection\" selected"));
    assertEquals(0, open());
  }

  @Test
  void committee_mayNeitherWithdrawNorRelease() {
    Visitor committee = Visitor.signedInAs("committee");
    committee.get("/withdrawals").then().statusCode(200).body(not(containsString("Release…")));
    committee
        .post("/items/" + bow.limbs().code() + "/withdraw", Map.of("why", "x"))
        .then()
        .statusCode(403);
  }

  @Test
  void theApi_withdraws_refusesASecondTime_andReleasesForThePermitHolderAlone() {
    String body =
        "{\"item\": \"%s\", \"why\": \"twisted\", \"work\": \"limb-inspection\"}"
            .formatted(bow.limbs().code());
    int id =
        as("volunteer", body)
            .post("/api/withdrawals")
            .then()
            .statusCode(201)
            .body("item", equalTo(bow.limbs().code()))
            .extract()
            .path("id");
    as("volunteer", body).post("/api/withdrawals").then().statusCode(409);
    String release = "/api/withdrawals/" + id + "/release";
    as("volunteer", "{\"why\": \"fine\"}").post(release).then().statusCode(403);
    as("officer", "{}").post(release).then().statusCode(422);
    as("officer", "{\"why\": \"inspected\"}")
        .post(release)
        .then()
        .statusCode(200)
        .body("releasedBy", equalTo("officer"));
    given()
        .auth()
        .preemptive()
        .basic("committee", "demo-fleet")
        .get("/api/withdrawals?open=false&item=" + bow.limbs().code())
        .then()
        .body("total", equalTo(1));
  }

  @Test
  void aCallSentAgainWithItsKey_isAnsweredAsTheFirst_evenAfterTheRelease() {
    String body =
        "{\"item\": \"%s\", \"why\": \"twisted\", \"onceKey\": \"again-%s\"}"
            .formatted(bow.limbs().code(), bow.limbs().code());
    int id = as("officer", body).post("/api/withdrawals").then().extract().path("id");
    as("officer", body).post("/api/withdrawals").then().statusCode(201).body("id", equalTo(id));
    as("officer", "{\"why\": \"inspected\"}").post("/api/withdrawals/" + id + "/release");

    as("officer", body).post("/api/withdrawals").then().statusCode(201).body("id", equalTo(id));
    assertEquals(0, open());
  }

  private static io.restassured.specification.RequestSpecification as(String name, String body) {
    return given()
        .auth()
        .preemptive()
        .basic(name, "demo-fleet")
        .contentType("application/json")
        .body(body);
  }
}
