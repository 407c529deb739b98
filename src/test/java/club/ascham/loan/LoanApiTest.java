package club.ascham.loan;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class LoanApiTest {
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void fit_ranksTheReadyRigs() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    LaidBow heavy = fixture.aBowReadyToGoOut(46);
    sending("volunteer")
        .body(
            Map.of(
                "hand",
                "right",
                "drawLength",
                "28 in",
                "ageBand",
                "adult",
                "experience",
                "beginner"))
        .post("/api/fit")
        .then()
        .statusCode(200)
        .body("bowPreferredIn", is(70))
        .body("shortestArrow", is("762 mm"))
        .body("rigs.rig", hasItem((int) rig.id().value()))
        .body("rigs.rig", not(hasItem((int) heavy.id().value())))
        .body("unsuited.find { it.rig == " + heavy.id().value() + " }.adviceOnly", is(true));
  }

  @Test
  void fit_namesEachWrongField() {
    sending("officer")
        .body(Map.of("hand", "right", "drawLength", "700", "ageBand", "old"))
        .post("/api/fit")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItem("drawLength"))
        .body("errors.find { it.field == 'drawLength' }.suggestion", is("700 mm"))
        .body("errors.field", hasItem("ageBand"))
        .body("errors.field", hasItem("experience"));
  }

  @Test
  void kit_isIssued_extended_changed_andPartlyLost() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(29);
    Laid pool = fixture.aPoolOfArrows(31, 12);
    Laid tab = fixture.aKitItem("TAB", "RIGHT", "M");
    Map<String, Object> body = body(rig);
    body.put(
        "items", List.of(Map.of("code", arrows.code()), Map.of("code", pool.code(), "count", 4)));
    body.put("onceKey", "api-" + rig.id().value());
    int loan =
        sending("officer")
            .body(body)
            .post("/api/loans")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    int again =
        sending("officer")
            .body(body)
            .post("/api/loans")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    assertEquals(loan, again);

    String due = time.today().plusDays(50).toString();
    sending("officer")
        .body(Map.of("dueOn", due))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(200)
        .body("dueOn", is(due));
    sending("officer")
        .body(Map.of("dueOn", due))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("dueOn"));

    int arrowLine = lineOf(loan, arrows);
    sending("officer")
        .body(Map.of("line", arrowLine, "item", tab.code()))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(200)
        .body("lines.find { it.line == " + arrowLine + " }.outcome", is("changed"))
        .body("lines.code", hasItem(tab.code()));

    sending("officer")
        .body(
            Map.of(
                "lines", List.of(lineOf(loan, tab), lineOf(loan, pool)), "words", "left on a bus"))
        .post("/api/loans/" + loan + "/lost")
        .then()
        .statusCode(200)
        .body("open", is(true));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM item WHERE id = ?1 AND retired_why = 'LOST'", tab.id()));
    assertEquals(8, fixture.number("SELECT arrow_count FROM kit_item WHERE id = ?1", pool.id()));
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM item WHERE id = ?1 AND retired_on IS NOT NULL", pool.id()));
  }

  @Test
  void wholeBowLost_isRetired_itsRigIsNoMore_andTheDepositIsSettled() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Map<String, Object> body = body(rig);
    body.put("deposit", "20.00");
    body.put("depositHow", "card");
    fixture.keepWith(fixture.aStringer(60, 72), rig.id());
    int loan =
        sending("officer")
            .body(body)
            .post("/api/loans")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    List<Integer> lines =
        List.of(lineOf(loan, rig.body()), lineOf(loan, rig.limbs()), lineOf(loan, rig.string()));
    sending("officer")
        .body(Map.of("lines", lines, "depositBack", "30.00"))
        .post("/api/loans/" + loan + "/lost")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("depositBack"));
    sending("officer")
        .body(Map.of("lines", lines, "depositBack", "5.00"))
        .post("/api/loans/" + loan + "/lost")
        .then()
        .statusCode(200)
        .body("open", is(false))
        .body("depositBack", is("5.00"));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM rig WHERE id = ?1 AND dissolved_at IS NOT NULL", rig.id()));
    assertEquals(
        0,
        fixture.number("SELECT count(*) FROM kept_with WHERE rig_id = ?1", rig.id()),
        "what was kept with it is free again");
    sending("officer")
        .body(Map.of("lines", lines))
        .post("/api/loans/" + loan + "/lost")
        .then()
        .statusCode(422);
  }

  @Test
  void aStringLost_leavesTheRigWithoutOne_andWhoeverHoldsItsPageIsTold() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    int loan =
        sending("officer")
            .body(body(rig))
            .post("/api/loans")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    long before = fixture.number("SELECT version FROM rig WHERE id = ?1", rig.id());
    sending("officer")
        .body(Map.of("lines", List.of(lineOf(loan, rig.string())), "words", "blown off the line"))
        .post("/api/loans/" + loan + "/lost")
        .then()
        .statusCode(200)
        .body("open", is(true));
    assertEquals(
        2,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE rig_id = ?1 AND until_at IS NULL", rig.id()));
    assertEquals(before + 1, fixture.number("SELECT version FROM rig WHERE id = ?1", rig.id()));
  }

  @Test
  void juniorsDraw_isAskedAgain_andArrowsNowTooShortCannotGoOn() {
    LaidBow rig = fixture.aBowReadyToGoOut(14);
    Laid arrows = fixture.arrows(26);
    Map<String, Object> body = body(rig);
    body.put("ageBand", "from-13-to-14");
    body.put("guardian", "Tess Ant");
    body.put("name", "Ivo Ant");
    body.put("drawLength", "24 in");
    body.put("items", List.of(Map.of("code", arrows.code())));
    int loan =
        sending("officer")
            .body(body)
            .post("/api/loans")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String due = time.today().plusDays(60).toString();
    sending("officer")
        .body(Map.of("dueOn", due))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("drawLength"));
    sending("officer")
        .body(Map.of("dueOn", due, "drawLength", "25 in"))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString(arrows.code()));

    Laid longer = fixture.arrows(27);
    sending("officer")
        .body(Map.of("line", lineOf(loan, arrows), "item", longer.code()))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(200);
    sending("officer")
        .body(Map.of("dueOn", due, "drawLength", "25 in"))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(200)
        .body("drawLength", is("635 mm"));
  }

  @Test
  void arrowsTooLightForTheDraw_areRefusedWhenChangedAndWhenExtended() {
    Laid arrows = fixture.arrows(30);
    fixture.weigh(arrows, 60);
    int loan = issued(fixture.aBowReadyToGoOut(20));
    sending("officer")
        .body(Map.of("item", arrows.code()))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("item"))
        .body("errors[0].message", containsString("60 gr"));
    fixture.weigh(arrows, 300);
    sending("officer")
        .body(Map.of("item", arrows.code()))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(200);
    fixture.weigh(arrows, 60);
    sending("officer")
        .body(Map.of("dueOn", time.today().plusDays(60).toString(), "drawLength", "28 in"))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("drawLength"))
        .body("errors[0].message", containsString("Too light for this draw"));
  }

  @Test
  void staleExtension_isRefused() {
    int loan = issued(fixture.aBowReadyToGoOut(20));
    sending("officer")
        .body(Map.of("dueOn", time.today().plusDays(40).toString(), "version", 7))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("version"));
  }

  @Test
  void lastThingOut_isReceived_notExchanged() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    int loan = issued(rig);
    sending("officer")
        .body(Map.of("line", lineOf(loan, rig.string())))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("rig's page"));
  }

  @Test
  void whatWasShown_andTheWeeks_areToldByTheApiToo() {
    Map<String, Object> body = body(fixture.aBowReadyToGoOut(20));
    body.put("dueWeeks", 8);
    sending("officer")
        .body(body)
        .post("/api/loans")
        .then()
        .statusCode(201)
        .body("briefedBy", is("officer"))
        .body("dueOn", is(time.today().plusWeeks(8).toString()));
  }

  @Test
  void arrowsHandedBack_areCounted_andTheSetHoldsWhatCameBack() {
    Laid arrows = fixture.arrows(29);
    Laid longer = fixture.arrows(30);
    Map<String, Object> body = body(fixture.aBowReadyToGoOut(20));
    body.put("items", List.of(Map.of("code", arrows.code())));
    int loan = sending("officer").body(body).post("/api/loans").then().extract().path("id");
    Map<String, Object> change = new HashMap<>();
    change.put("line", lineOf(loan, arrows));
    change.put("item", longer.code());
    change.put("countBack", 7);
    sending("officer")
        .body(change)
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("countBack"));
    change.put("countBack", 4);
    sending("officer")
        .body(change)
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(200)
        .body("lines.find { it.code == '" + arrows.code() + "' }.backCount", is(4))
        .body("lines.find { it.code == '" + arrows.code() + "' }.missing", is(2))
        .body("lines.find { it.code == '" + arrows.code() + "' }.arrows", is(6));
    assertEquals(4, fixture.number("SELECT arrow_count FROM kit_item WHERE id = ?1", arrows.id()));
    assertTrue(
        Visitor.signedInAs("officer").get("/loans").asString().contains("4 of 4 out"),
        "what was exchanged is one thing, not two");
  }

  @Test
  void wrongBody_namesEachField() {
    sending("officer")
        .body("{}")
        .post("/api/loans")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("hand"))
        .body("errors.field", hasItem("rig"))
        .body("errors.field", hasItem("name"))
        .body("errors.field", hasItem("termsAccepted"))
        .body("errors.field", hasItem("briefingGiven"));
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Map<String, Object> body = body(rig);
    body.put("items", List.of(Map.of("count", 3)));
    sending("officer")
        .body(body)
        .post("/api/loans")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("items.0"));
  }

  @Test
  void unknownLoan_isNotFound() {
    sending("officer").get("/api/loans/999999").then().statusCode(404);
    sending("officer").body("{}").post("/api/loans/999999/extend").then().statusCode(404);
    sending("officer").get("/api/borrowers/999999").then().statusCode(404);
  }

  @Test
  void list_isPaged_andFiltered() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    fixture.lend(rig, "Zeb Ouse", "2026-02-01", "2026-02-05");
    sending("volunteer")
        .get("/api/loans?show=overdue&q=ouse&size=1")
        .then()
        .statusCode(200)
        .body("size", is(1))
        .body("total", greaterThan(0))
        .body("items[0].who", is("Zeb Ouse"))
        .body("items[0].overdue", is(true));
    sending("volunteer").get("/api/loans?show=lately").then().statusCode(422);
  }

  @Test
  void committee_seesLoansWithoutNames() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long loan = fixture.lend(rig, "Yve Nar", "2026-02-01", "2026-02-05");
    sending("committee")
        .get("/api/loans?size=200")
        .then()
        .statusCode(200)
        .body("items.who", everyItem(nullValue()));
    sending("committee")
        .get("/api/loans/" + loan)
        .then()
        .statusCode(200)
        .body("name", nullValue())
        .body("lines.size()", is(3));
    sending("committee").get("/api/borrowers").then().statusCode(403);
  }

  @ParameterizedTest
  @ValueSource(strings = {"committee", "volunteer"})
  void othersThanOfficers_changeNoLoan(String who) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    sending(who).body(body(rig)).post("/api/loans").then().statusCode(403);
    long loan = fixture.lend(rig, "Uma Tas", "2026-02-01", "2026-02-05");
    for (String change : List.of("extend", "items", "lost")) {
      sending(who).body("{}").post("/api/loans/" + loan + "/" + change).then().statusCode(403);
    }
    sending(who).body("{}").post("/api/borrowers").then().statusCode(403);
    sending(who).body("{}").put("/api/borrowers/1").then().statusCode(403);
  }

  @Test
  void borrower_isEntered_foundAndCorrected() {
    Map<String, Object> body =
        Map.of(
            "name",
            "Quin Lark",
            "contact",
            "quin@example.org",
            "ageBand",
            "adult",
            "memberNo",
            "L-9");
    int id =
        sending("officer")
            .body(body)
            .post("/api/borrowers")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    sending("officer").body(body).post("/api/borrowers").then().statusCode(201).body("id", is(id));
    sending("volunteer")
        .get("/api/borrowers?q=l-9")
        .then()
        .body("items.name", hasItem("Quin Lark"));
    int version = sending("officer").get("/api/borrowers/" + id).then().extract().path("version");
    Map<String, Object> moved = new HashMap<>(body);
    moved.put("contact", "07700 900555");
    moved.put("version", version);
    sending("officer")
        .body(moved)
        .put("/api/borrowers/" + id)
        .then()
        .statusCode(200)
        .body("contact", equalTo("07700 900555"));
    sending("officer").body(moved).put("/api/borrowers/" + id).then().statusCode(409);
    sending("officer")
        .body(Map.of("name", "Kit", "contact", "kit@example.org", "ageBand", "up-to-12"))
        .post("/api/borrowers")
        .then()
        .statusCode(422)
        .body("errors[0].field", is("guardian"));
  }

  @Test
  void description_holdsTheLoans() {
    String described = given().get("/q/openapi?format=json").asString();
    assertTrue(described.contains("/api/loans/{id}/extend"));
    assertTrue(described.contains("/api/fit"));
    assertTrue(described.contains("Nell Harker"));
  }

  private int issued(LaidBow rig) {
    return sending("officer")
        .body(body(rig))
        .post("/api/loans")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private int lineOf(int loan, Laid item) {
    return (int)
        fixture.number(
            "SELECT id FROM loan_line WHERE loan_id = ?1 AND item_id = ?2", loan, item.id());
  }

  private static Map<String, Object> body(LaidBow rig) {
    Map<String, Object> body = new HashMap<>();
    body.put("hand", "right");
    body.put("drawLength", "27 in");
    body.put("ageBand", "adult");
    body.put("experience", "beginner");
    body.put("rig", rig.id().value());
    body.put("name", "Orla Wensum");
    body.put("contact", "07700 900333");
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    return body;
  }
}
