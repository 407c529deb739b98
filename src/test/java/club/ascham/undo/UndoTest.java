package club.ascham.undo;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.story.VerifyRecord;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What was pressed too early, across the rooms: all is as it was before, and both stay told. */
@QuarkusTest
class UndoTest {
  private static final String WHOLE_WORDS = "Looked over at the bench by the coach tonight.";

  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject VerifyRecord verify;

  // ---- the receipt

  @Test
  void aReceiptUndone_leavesEveryRoomAsItWas_andBothPressesStayTold() {
    LaidBow bow = fixture.aBowLentTo("Tam Oakley");
    long loan = newestLoan();
    Map<String, String> before = rooms(bow, loan);

    receive(loan, Map.of()).then().statusCode(201);
    assertTrue(!before.equals(rooms(bow, loan)), "receiving shows");
    undo("volunteer", newestMove(loan)).then().statusCode(200).body("kind", equalTo("receipt"));

    rooms(bow, loan)
        .forEach((room, shown) -> assertEquals("", unlike(before.get(room), shown), room));
    assertEquals(
        List.of("Received from loan " + loan + "; all back.", "Undone"),
        rows
            .texts(
                "SELECT DISTINCT s.sentence FROM story s JOIN story_about a ON a.story_id = s.id"
                    + " WHERE a.rig_id = ?1 AND s.loan_id = ?2 ORDER BY s.id",
                bow.id(),
                loan)
            .stream()
            .map(said -> said.startsWith("Undone: the receipt of loan ") ? "Undone" : said)
            .toList());
    sending("committee")
        .get("/api/moves?loan=" + loan)
        .then()
        .body("[0].kind", equalTo("receipt"))
        .body("[0].codes.size()", equalTo(3))
        .body("[0].undoneBy", equalTo("volunteer"));
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/loans/" + loan)
        .then()
        .body(containsString("id=\"undone\""))
        .body(not(containsString("Undo this receipt")));
    officer.get("/rigs/" + bow.id().value()).then().body(containsString("Undone: the receipt"));
    assertTrue(verify.verify().whole(), "the record is whole");
  }

  @Test
  void aReceiptIsUndoneByItsButton_whereThePressLed_andOnTheLoan_andIsReceivedAnewAfter() {
    LaidBow bow = fixture.aBowLentTo("Una Oakley");
    long loan = newestLoan();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/receive/" + loan);
    String done =
        volunteer
            .post("/receive/" + loan, everythingTicked(loan))
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    String page = "/undo/" + newestMove(loan);
    String button = "action=\"" + page + "\"";
    volunteer.get(path(done)).then().body(containsString(button));
    volunteer.get("/loans/" + loan).then().body(containsString(button));
    volunteer.get("/rigs/" + bow.id().value()).then().body(containsString(button));

    Map<String, String> form = Map.of("once-key", "undo-" + System.nanoTime());
    Response first = volunteer.post(page, form);
    Response second = volunteer.post(page, form);

    assertEquals(303, first.statusCode(), "nothing could surprise: no page asks first");
    assertTrue(first.header("Location").endsWith("/loans/" + loan));
    assertEquals(first.header("Location"), second.header("Location"), "a second press");
    assertEquals("ON_LOAN", fixture.state(bow));
    volunteer.get(path(done)).then().body(not(containsString("Received from Una")));
    volunteer
        .post(page, Map.of("sure", "yes", "once-key", "again-" + System.nanoTime()))
        .then()
        .statusCode(422)
        .body(
            containsString("Undone already."),
            containsString("It was undone already."),
            not(containsString("It stands.")));
    receive(loan, Map.of()).then().statusCode(201);
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    undo("volunteer", newestMove(loan)).then().statusCode(200);
    assertEquals("ON_LOAN", fixture.state(bow));
  }

  @Test
  void whatWasToldAsItCameBack_staysOpen_andIsAskedBack() {
    LaidBow bow = fixture.aBowLentTo("Vic Oakley");
    long loan = newestLoan();
    receive(loan, Map.of("signs", List.of("bang"), "part", "not-known")).then().statusCode(201);
    long report = rows.number("SELECT max(id) FROM report WHERE loan_id = ?1", loan);
    refusedWith(newestMove(loan), "an officer may undo it");
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/undo/" + newestMove(loan);
    officer.get("/loans/" + loan);

    officer
        .post(page, Map.of("once-key", "u-" + System.nanoTime()))
        .then()
        .statusCode(303)
        .header("Location", containsString(page));
    officer
        .get(page)
        .then()
        .body(containsString("stays told"))
        .body(containsString("ask it back at once"));
    officer
        .post(page, Map.of("sure", "yes", "once-key", "v-" + System.nanoTime()))
        .then()
        .statusCode(303);

    assertEquals(1, outLinesOf(loan, bow));
    assertEquals(1, rows.number("SELECT answer IS NULL FROM report WHERE id = ?1", report));
    officer.get("/reports/" + report).then().statusCode(200);
    officer.get("/loans/" + loan).then().body(containsString("Ask it back now: do not shoot"));
    sending("officer").get("/api/ask-back").then().body(containsString(bow.body().code()));
    sending("officer")
        .body(Map.of("dueOn", time.today().plusDays(20).toString()))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422);
  }

  @Test
  void damagedAsItCameBack_staysWithdrawn() {
    LaidBow bow = fixture.aBowLentTo("Wyn Oakley");
    long loan = newestLoan();
    receive(
            loan,
            Map.of(
                "lines",
                List.of(
                    Map.of("code", bow.body().code(), "back", true),
                    Map.of("code", bow.string().code(), "back", true),
                    Map.of("code", bow.limbs().code(), "back", true, "damage", "a dent"))))
        .then()
        .statusCode(201);
    refusedWith(newestMove(loan), "an officer may undo it");
    undo("officer", newestMove(loan)).then().statusCode(200);
    assertEquals(1, outLinesOf(loan, bow));
    assertEquals("WITHDRAWN", fixture.state(bow));
    sending("officer").get("/api/ask-back").then().body(containsString(bow.limbs().code()));
  }

  @Test
  void withdrawnWhileItWasOut_itIsOutAgain_andAskedBackAsBefore() {
    LaidBow bow = fixture.aBowLentTo("Xan Oakley");
    long loan = newestLoan();
    withdraw(bow.limbs().code()).then().statusCode(201);
    receive(loan, Map.of()).then().statusCode(201);
    refusedWith(newestMove(loan), "an officer may undo it");
    undo("officer", newestMove(loan)).then().statusCode(200);
    sending("officer").get("/api/ask-back").then().body(containsString(bow.limbs().code()));
  }

  @Test
  void whatKeepsItInSince_keepsItInHere_inItsOwnWords() {
    LaidBow bow = fixture.aBowLentTo("Yaz Oakley");
    long loan = newestLoan();
    receive(loan, Map.of()).then().statusCode(201);
    withdraw(bow.limbs().code()).then().statusCode(201);
    undo("volunteer", newestMove(loan))
        .then()
        .statusCode(409)
        .body("detail", containsString("It would be out again, and since it came in: "))
        .body("detail", containsString(WHOLE_WORDS));
    assertEquals(0, outLinesOf(loan, bow));
    Visitor.signedInAs("officer")
        .get("/loans/" + loan)
        .then()
        .body(not(containsString("Undo this receipt")));
    assertRefused("undone-though-kept-in-since", loan, bow);
  }

  @Test
  void toldOfSince_andCheckedSince_itStands() {
    LaidBow told = fixture.aBowLentTo("Zed Oakley");
    long loan = newestLoan();
    receive(loan, Map.of()).then().statusCode(201);
    sending("volunteer")
        .body(Map.of("rig", told.body().code(), "signs", List.of("serving"), "part", "string"))
        .post("/api/reports")
        .then()
        .statusCode(201);
    refusedWith(newestMove(loan), "Something was told of it since");

    LaidBow checked = fixture.aBowLentTo("Zoe Oakley");
    long other = newestLoan();
    receive(other, Map.of()).then().statusCode(201);
    check(checked).then().statusCode(201);
    refusedWith(newestMove(other), "The bow was checked or put back since");
  }

  @Test
  void lentAgainSince_itStands_andSoSaysTheDatabase() {
    LaidBow bow = fixture.aBowLentTo("Abe Oakley");
    long loan = newestLoan();
    receive(loan, Map.of()).then().statusCode(201);
    check(bow).then().statusCode(201);
    putBack(bow).then().statusCode(200);
    sending("volunteer")
        .body(Map.of("leader", "Quenby", "rigIds", List.of(bow.id().value())))
        .post("/api/sessions")
        .then()
        .statusCode(201);
    refusedWith(newestMove(loan), "was lent again since, with loan ");
    refusedWith(
        rows.number("SELECT max(id) FROM move WHERE check_id = ?1", lastCheck(bow)),
        "The bow was lent again since");
    assertRefused("undone-though-lent-since", loan, bow);
  }

  @Test
  void theDeposit_isHeldAgain_afterThePageAsked_andStandsWhereTheRestCameBackLater() {
    LaidBow bow = fixture.aBowLentTo("Bea Oakley");
    long loan = newestLoan();
    rows.change("UPDATE loan SET deposit_minor = 2000, deposit_how = 'CASH' WHERE id = ?1", loan);
    receive(loan, Map.of("lines", List.of(Map.of("code", bow.string().code(), "back", true))))
        .then()
        .statusCode(201);
    long part = newestMove(loan);
    receive(loan, Map.of("depositKept", "5", "depositKeptWhy", WHOLE_WORDS)).then().statusCode(201);
    long rest = newestMove(loan);

    refusedWith(part, "Its deposit was settled since");
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/undo/" + rest)
        .then()
        .body(containsString("counts as held again"))
        .body(containsString("15.00"));
    undo("volunteer", rest).then().statusCode(200);

    assertEquals(
        1,
        rows.number(
            "SELECT deposit_back_minor IS NULL AND deposit_kept_why IS NULL FROM loan WHERE id = ?1",
            loan));
    undo("volunteer", part).then().statusCode(200);
    assertEquals(1, outLinesOf(loan, bow));
  }

  @Test
  void anothersPress_isAnOfficersToUndo_forAWeek() {
    fixture.aBowLentTo("Cal Oakley");
    long loan = newestLoan();
    sending("officer").body(Map.of("loanId", loan)).post("/api/receipts").then().statusCode(201);
    refusedWith(newestMove(loan), "Whoever pressed it may undo it, on the same day");
    undo("officer", newestMove(loan)).then().statusCode(200);

    fixture.aBowLentTo("Dot Oakley");
    long late = newestLoan();
    long receipt =
        ((Number) receive(late, Map.of()).then().statusCode(201).extract().path("id")).longValue();
    long move = pressedDaysAgo(late, receipt, 2);
    refusedWith(move, "The day it was pressed on is over: ask an officer");
    undo("officer", move).then().statusCode(200);

    fixture.aBowLentTo("Eli Oakley");
    long older = newestLoan();
    receipt =
        ((Number) receive(older, Map.of()).then().statusCode(201).extract().path("id")).longValue();
    move = pressedDaysAgo(older, receipt, 8);
    undo("officer", move)
        .then()
        .statusCode(409)
        .body("detail", containsString("more than a week ago"));
  }

  // ---- a session's return

  @Test
  void aSessionsReturnUndone_isOutAgain_andItsLooksCountForNothing() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    LaidBow other = fixture.aBowReadyToGoOut();
    long loan =
        ((Number)
                sending("volunteer")
                    .body(
                        Map.of(
                            "leader",
                            "Quenby",
                            "rigIds",
                            List.of(bow.id().value(), other.id().value())))
                    .post("/api/sessions")
                    .then()
                    .statusCode(201)
                    .extract()
                    .path("id"))
            .longValue();
    Map<String, String> before = rooms(bow, loan);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/sessions/" + loan);
    volunteer
        .post("/sessions/" + loan, Map.of("once-key", "back-" + System.nanoTime()))
        .then()
        .statusCode(303);
    assertEquals("READY", fixture.state(bow));
    String page = "/undo/" + newestMove(loan);
    volunteer.get("/sessions/" + loan).then().body(containsString("action=\"" + page + "\""));
    volunteer
        .post(page, Map.of("once-key", "a-" + System.nanoTime()))
        .then()
        .header("Location", containsString(page));
    volunteer.get(page).then().body(containsString("All 2 bows"));
    volunteer
        .post(page, Map.of("sure", "yes", "once-key", "b-" + System.nanoTime()))
        .then()
        .statusCode(303)
        .header("Location", containsString("/sessions/" + loan));

    rooms(bow, loan)
        .forEach((room, shown) -> assertEquals("", unlike(before.get(room), shown), room));
    assertEquals("ON_LOAN", fixture.state(other));
    volunteer.get("/sessions/" + loan).then().body(containsString("and undone"));
    sending("officer")
        .get("/api/checks?rig=" + bow.id().value())
        .then()
        .body("items[0].undone", equalTo(true));
    volunteer
        .post("/sessions/" + loan, Map.of("once-key", "real-" + System.nanoTime()))
        .then()
        .statusCode(303);
    assertEquals("READY", fixture.state(bow));
  }

  // ---- an exchange

  @Test
  void aStringExchangedOnALentBow_isUndone_withItsFittingAndItsFigures() {
    LaidBow bow = fixture.aBowLentTo("Fay Oakley");
    long loan = newestLoan();
    LaidBow spare = fixture.aBowReadyToGoOut();
    String string = spare.string().code();
    neverFitted(spare);
    rows.change(
        "INSERT INTO kept_with (item_id, rig_id) VALUES (?1, ?2)", spare.string().id(), bow.id());
    Map<String, String> before = rooms(bow, loan);

    sending("volunteer")
        .body(Map.of("body", bow.body().code(), "limbs", bow.limbs().code(), "string", string))
        .put("/api/rigs/" + bow.id().value() + "/parts")
        .then()
        .statusCode(200);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL",
            spare.string().id()));
    undo("volunteer", newestMove(loan)).then().statusCode(200).body("kind", equalTo("exchange"));

    rooms(bow, loan)
        .forEach((room, shown) -> assertEquals("", unlike(before.get(room), shown), room));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM kept_with WHERE item_id = ?1 AND rig_id = ?2",
            spare.string().id(),
            bow.id()));
    assertEquals(
        1,
        rows.number("SELECT first_used IS NULL FROM bowstring WHERE id = ?1", spare.string().id()));
    assertEquals(
        1,
        rows.number("SELECT set_up_id IS NOT NULL FROM rig_parts WHERE rig_id = ?1", bow.id()),
        "the set-up of these parts holds again");
  }

  @Test
  void kitExchanged_isUndone_andAFollowingExchangeRestsOnIt() {
    fixture.aBowLentTo("Gus Oakley");
    long loan = newestLoan();
    rows.change(
        "UPDATE loan SET hand = 'RIGHT', draw_length = 65000000, experience = 'IMPROVER' WHERE id = ?1",
        loan);
    String pool =
        rows.texts(
                "SELECT i.code FROM item i JOIN kit_item k ON k.id = i.id WHERE i.kind = 'ARROWS'"
                    + " AND k.pool = 1 AND k.arrow_count > 20 AND k.arrow_length > 72000000 ORDER BY i.code LIMIT 1")
            .get(0);
    Response given =
        sending("officer")
            .body(Map.of("item", pool, "count", 6, "overrideWhy", WHOLE_WORDS))
            .post("/api/loans/" + loan + "/items");
    assertEquals(200, given.statusCode(), given.asString());
    long first = newestMove(loan);
    long line = rows.number("SELECT max(id) FROM loan_line WHERE loan_id = ?1", loan);
    long held = arrowsOf(pool);
    sending("officer")
        .body(
            Map.of(
                "line", line, "countBack", 4, "item", pool, "count", 5, "overrideWhy", WHOLE_WORDS))
        .post("/api/loans/" + loan + "/items")
        .then()
        .statusCode(200);
    assertEquals(held - 2, arrowsOf(pool));
    undo("officer", first)
        .then()
        .statusCode(409)
        .body("detail", containsString("exchanged again, since: undo that first"));
    undo("officer", newestMove(loan)).then().statusCode(200);

    assertEquals(held, arrowsOf(pool), "two arrows are missing no more");
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL AND arrow_count = 6",
            loan));
    undo("officer", first).then().statusCode(200);
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL AND arrow_count IS NOT NULL",
            loan));
  }

  // ---- a put-back

  @Test
  void aPutBack_isUndoneFromThePageItLedTo_andTheBowWaitsAgain() {
    LaidBow bow = fixture.aBowJustReceived();
    check(bow).then().statusCode(201);
    long check = lastCheck(bow);
    Map<String, String> before = rooms(bow, newestLoan());
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String verdict = "/check/" + bow.id().value() + "/" + check;
    volunteer.get(verdict);
    Response back =
        volunteer.post(verdict + "/put-back", Map.of("once-key", "pb-" + System.nanoTime()));
    assertEquals(303, back.statusCode());
    assertEquals("READY", fixture.state(bow));
    String page = "/undo/" + rows.number("SELECT max(id) FROM move WHERE check_id = ?1", check);
    volunteer.get("/check").then().body(containsString("href=\"" + page + "\""));
    volunteer.get("/rigs/" + bow.id().value()).then().body(containsString("Undo this put-back"));
    volunteer
        .post(page, Map.of("once-key", "un-" + System.nanoTime()))
        .then()
        .statusCode(303)
        .header("Location", containsString(verdict));

    rooms(bow, newestLoan())
        .forEach((room, shown) -> assertEquals("", unlike(before.get(room), shown), room));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    putBack(bow).then().statusCode(200);
    assertEquals("READY", fixture.state(bow));
  }

  // ---- what the database says

  @Test
  void nothingReopensWithoutAnUndo() {
    LaidBow bow = fixture.aBowJustReceived();
    assertEquals(
        "reopened-without-an-undo",
        assertThrows(
                DatabaseRefusal.class,
                () ->
                    rows.change(
                        "UPDATE loan_line SET back_at = NULL, outcome = NULL WHERE rig_id = ?1",
                        bow.id()))
            .rule());
  }

  private void assertRefused(String rule, long loan, LaidBow bow) {
    long move = newestMove(loan);
    rows.change("UPDATE move SET undone_at = made_at, undone_by = 1 WHERE id = ?1", move);
    assertEquals(
        rule,
        assertThrows(
                DatabaseRefusal.class,
                () ->
                    rows.change(
                        "UPDATE loan_line SET back_at = NULL, outcome = NULL, receipt_id = NULL"
                            + " WHERE loan_id = ?1 AND item_id = ?2",
                        loan,
                        bow.limbs().id()))
            .rule());
  }

  // ---- what is done

  private long newestLoan() {
    return rows.number("SELECT max(id) FROM loan");
  }

  private long newestMove(long loan) {
    return rows.number("SELECT max(id) FROM move WHERE loan_id = ?1", loan);
  }

  private long lastCheck(LaidBow bow) {
    return rows.number("SELECT max(id) FROM bow_check WHERE rig_id = ?1", bow.id());
  }

  private long arrowsOf(String pool) {
    return rows.number(
        "SELECT k.arrow_count FROM kit_item k JOIN item i ON i.id = k.id WHERE i.code = ?1", pool);
  }

  /** 1 where all of the bow is out with the loan. */
  private long outLinesOf(long loan, LaidBow bow) {
    return rows.number(
        "SELECT count(*) = 3 FROM loan_line WHERE loan_id = ?1 AND rig_id = ?2 AND back_at IS NULL",
        loan,
        bow.id());
  }

  /** As if it had been pressed then: a press itself is never changed. */
  private long pressedDaysAgo(long loan, long receipt, int days) {
    String then = Stored.moment(time.now().minus(Duration.ofDays(days)));
    long move =
        rows.number(
            "INSERT INTO move (kind, loan_id, made_at, made_by) SELECT 'RECEIPT', ?1, ?2, received_by"
                + " FROM receipt WHERE id = ?3 RETURNING id",
            loan,
            then,
            receipt);
    rows.change("INSERT INTO moved (move_id, receipt_id) VALUES (?1, ?2)", move, receipt);
    rows.change(
        "INSERT INTO moved (move_id, line_id, went) SELECT ?1, id, 'IN' FROM loan_line WHERE receipt_id = ?2",
        move,
        receipt);
    return move;
  }

  /** A string that nobody ever fitted. */
  private void neverFitted(LaidBow bow) {
    rows.change(
        "DELETE FROM fitting WHERE rig_id = ?1 AND item_id = ?2", bow.id(), bow.string().id());
    rows.change("UPDATE bowstring SET first_used = NULL WHERE id = ?1", bow.string().id());
  }

  private static Response receive(long loan, Map<String, Object> more) {
    Map<String, Object> body = new LinkedHashMap<>(more);
    body.put("loanId", loan);
    return sending("volunteer").body(body).post("/api/receipts");
  }

  private static Response undo(String who, long move) {
    return sending(who).body(Map.of()).post("/api/moves/" + move + "/undo");
  }

  private static void refusedWith(long move, String said) {
    undo("volunteer", move).then().statusCode(409).body("detail", containsString(said));
  }

  private static Response withdraw(String code) {
    return sending("volunteer")
        .body(Map.of("item", code, "why", WHOLE_WORDS))
        .post("/api/withdrawals");
  }

  private static Response check(LaidBow bow) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("rig", Long.toString(bow.id().value()));
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return sending("volunteer").body(body).post("/api/checks");
  }

  private Response putBack(LaidBow bow) {
    return sending("volunteer").body(Map.of()).post("/api/checks/" + lastCheck(bow) + "/release");
  }

  private Map<String, String> everythingTicked(long loan) {
    Map<String, String> form = new LinkedHashMap<>();
    rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan)
        .forEach(line -> form.put("back-" + line, "on"));
    form.put("once-key", "receive-" + System.nanoTime());
    return form;
  }

  private static String path(String location) {
    return location.substring(location.indexOf("/", "http://".length()));
  }

  /** Where one text goes another way than it did before; empty: nowhere. */
  private static String unlike(String before, String now) {
    int at = 0;
    while (at < before.length() && at < now.length() && before.charAt(at) == now.charAt(at)) {
      at++;
    }
    return before.equals(now)
        ? ""
        : before.substring(Math.max(0, at - 80), Math.min(before.length(), at + 80))
            + " <> "
            + now.substring(Math.max(0, at - 80), Math.min(now.length(), at + 80));
  }

  /** What the rooms show that a press concerns, but for one-time keys and the story itself. */
  private Map<String, String> rooms(LaidBow bow, long loan) {
    Map<String, String> rooms = new LinkedHashMap<>();
    for (String address :
        List.of(
            "/api/rigs/" + bow.id().value(),
            "/api/loans/" + loan,
            "/api/rigs",
            "/api/fleet",
            "/api/ask-back",
            "/api/upkeep")) {
      rooms.put(
          address,
          sending("officer")
              .get(address)
              .then()
              .statusCode(200)
              .extract()
              .asString()
              .replaceAll("\"version\":\\d+", ""));
    }
    Visitor officer = Visitor.signedInAs("officer");
    for (String page : List.of("/", "/receive", "/check", "/loans", "/sessions", "/rigs")) {
      rooms.put(
          page,
          officer
              .get(page)
              .then()
              .statusCode(200)
              .extract()
              .asString()
              .replaceAll("name=\"(csrf-token|once-key)\" value=\"[^\"]*\"", ""));
    }
    rooms.put(
        "slip",
        officer.get("/loans/" + loan + "/slip").asString().replaceAll("value=\"[^\"]*\"", ""));
    rooms.put(
        "planned",
        rows.texts(
                "SELECT item_id || ' ' || rule_id || ' ' || coalesce(due_on, '') || coalesce(because, '')"
                    + " FROM upkeep_plan ORDER BY item_id, rule_id")
            .toString());
    return rooms;
  }
}
