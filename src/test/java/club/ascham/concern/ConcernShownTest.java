package club.ascham.concern;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A fact is laid, and every page and call that shows its bow says the same sentence. */
@QuarkusTest
class ConcernShownTest {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.US);

  @Inject Rack rack;
  @Inject Rows rows;
  @Inject ClubTime time;

  private void lay(String sql, Object... parameters) {
    QuarkusTransaction.requiringNew().run(() -> rows.change(sql, parameters));
  }

  private static Response api(String path) {
    return as("officer").get(path);
  }

  /** What is laid, on which part, and how it is told; R, L and S stand for the codes. */
  static Stream<Arguments> facts() {
    return Stream.of(
        fact(
            "withdrawn",
            Weight.BLOCKS,
            "L is withdrawn: crack in the lower limb.",
            null,
            (test, rig) -> test.rack.withdraw(rig.limbs(), "crack in the lower limb")),
        fact(
            "inspection overdue",
            Weight.BLOCKS,
            "R: limb-bolt inspection overdue, 180 days since {2 years ago}.",
            "limb-bolt inspection overdue",
            (test, rig) -> test.rack.neverInspected(rig.riser())),
        fact(
            "string overdue",
            Weight.SPEAKS_AGAINST,
            "S: string replacement overdue, 730 days since {800 days ago}.",
            "string replacement overdue",
            (test, rig) -> test.rack.firstUsed(rig.string(), test.time.today().minusDays(800))),
        fact(
            "string beyond",
            Weight.BLOCKS,
            "S: string replacement overdue since {269 days ago}, 730 days since {1000 days ago}, by more than the club lets pass.",
            "string replacement overdue",
            (test, rig) -> test.rack.firstUsed(rig.string(), test.time.today().minusDays(1000))),
        fact(
            "failed, then released",
            Weight.BLOCKS,
            "L did not pass its limb inspection: a line at the butt.",
            "limb inspection not passed",
            ConcernShownTest::failAndRelease),
        fact(
            "work asked for",
            Weight.BLOCKS,
            "L: limb inspection asked for: it fell over.",
            "limb inspection asked for",
            (test, rig) -> test.ask(rig.limbs(), "LIMB_INSPECTION", "it fell over", "ASKED", 1)),
        fact(
            "readings change",
            Weight.SPEAKS_AGAINST,
            "S: Its readings change by more than readers differ.",
            "its readings change",
            (test, rig) ->
                test.ask(
                    rig.string(),
                    "STRING_REPLACEMENT",
                    "Its readings change by more than readers differ.",
                    "CHANGING",
                    0)),
        fact(
            "something told",
            Weight.BLOCKS,
            "L, told and not answered yet: a bang or a crack was heard; “at full draw”.",
            "something told of it",
            ConcernShownTest::report));
  }

  private static Arguments fact(
      String name,
      Weight weight,
      String said,
      String brief,
      BiConsumer<ConcernShownTest, Rack.Hung> laid) {
    return Arguments.of(name, weight, said, brief, laid);
  }

  private void failAndRelease(Rack.Hung rig) {
    Instant then = time.now().minus(Duration.ofDays(3));
    lay(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)
        VALUES (?1, 'LIMB_INSPECTION', ?2, ?2, 1, 'FAILED', 'a line at the butt')""",
        rig.limbs(),
        then);
    lay(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, released_at, released_by,
                                release_why)
        VALUES (?1, ?2, ?2, 1, 'failed', ?3, 1, 'nothing more seen')""",
        rig.limbs(),
        then,
        time.now());
  }

  private void report(Rack.Hung rig) {
    lay(
        """
        INSERT INTO report (told_at, rig_id, happened_at, recorded_at, told_to, part_known, dangerous, words)
        VALUES ('BOW', ?1, ?2, ?2, 1, 1, 1, 'at full draw')""",
        rig.id(),
        time.now());
    lay(
        "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report), ?1)",
        rig.limbs());
    lay("INSERT INTO report_sign (report_id, sign) VALUES ((SELECT max(id) FROM report), 'BANG')");
  }

  private void ask(ItemId item, String work, String why, String cause, int blocks) {
    lay(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, ?2, ?3, 1, ?4, ?5, ?6)""",
        item,
        work,
        time.now().minus(Duration.ofDays(2)),
        why,
        blocks,
        cause);
  }

  private String of(Rack.Hung rig, String said) {
    LocalDate today = time.today();
    return said.replaceFirst("^R", rig.riserCode())
        .replaceFirst("^L", rig.limbsCode())
        .replaceFirst("^S", rig.stringCode())
        .replace("{2 years ago}", DAY.format(today.minusYears(2)))
        .replace("{800 days ago}", DAY.format(today.minusDays(800)))
        .replace("{269 days ago}", DAY.format(today.minusDays(269)))
        .replace("{1000 days ago}", DAY.format(today.minusDays(1000)));
  }

  private static String slug(String said) {
    return said.startsWith("R") ? "risers" : said.startsWith("L") ? "limbs" : "strings";
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("facts")
  void aFact_isToldInTheSameSentence_whereverItsBowIsShown(
      String name,
      Weight weight,
      String template,
      String brief,
      BiConsumer<ConcernShownTest, Rack.Hung> laid) {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    laid.accept(this, rig);
    String said = of(rig, template);
    String code = said.substring(0, 8);
    Visitor officer = Visitor.signedInAs("officer");
    long id = rig.id().value();

    for (String page : List.of("/rigs/" + id, "/items/" + code)) {
      String html = officer.get(page).then().statusCode(200).extract().asString();
      assertTrue(html.contains("<li class=\"" + weight.word() + "\">"), page);
      assertTrue(
          html.contains("<strong class=\"weight\">" + weight.said() + "</strong> " + said),
          page + " of: " + said);
    }
    for (String call :
        List.of(
            "/api/rigs/" + id,
            "/api/" + slug(said) + "/" + code,
            "/api/concerns?rig=" + id,
            "/api/concerns?item=" + code)) {
      api(call)
          .then()
          .statusCode(200)
          .body("concerns.said", hasItem(said))
          .body("concerns.weight", hasItem(weight.word()));
    }
    everyPageOf("/api/rigs?size=200", "items.find { it.id == " + id + " }.concerns.said", said);
    everyPageOf(
        "/api/" + slug(said) + "?size=200",
        "items.find { it.code == '" + code + "' }.concerns.said",
        said);
    if (brief != null) {
      String row = row(officer.get("/register?words=" + code).asString(), code);
      assertTrue(row.contains("beside " + weight.word()) && row.contains(brief), row);
      row = row(officer.get("/fleet/rows?list=rigs").asString(), rig.riserCode());
      assertTrue(row.contains("beside " + weight.word()) && row.contains(brief), row);
    }
    if (weight == Weight.BLOCKS) {
      String rows = officer.get("/fleet/rows?list=rigs&course=as-it-is").asString();
      assertTrue(!rows.contains(">" + rig.riserCode() + "<"), "counted on for the course");
      assertTrue(
          row(officer.get("/fleet/rows?list=rigs").asString(), rig.riserCode()).contains(said),
          "why it is not counted on");
    }
  }

  /** The list has it on one of its pages. */
  private void everyPageOf(String list, String path, String said) {
    for (int page = 1; page <= 20; page++) {
      Response answer = api(list + "&page=" + page);
      List<String> found = answer.path(path);
      if (found != null) {
        assertTrue(found.contains(said), found.toString());
        return;
      }
    }
    throw new AssertionError("not in " + list);
  }

  private static String row(String html, String code) {
    int at = html.indexOf(">" + code + "<");
    assertTrue(at > 0, code + " is listed");
    return html.substring(at, html.indexOf("</tr>", at));
  }

  @Test
  void theListOfRigs_hasOneShortMarkARow_andOfWhatIsWithdrawnSaysWhy() {
    Rack.Hung overdue = rack.readyRig("RIGHT", 20);
    rack.neverInspected(overdue.riser());
    Rack.Hung withdrawn = rack.readyRig("RIGHT", 20);
    rack.withdraw(withdrawn.limbs(), "crack");
    Rack.Hung sound = rack.readyRig("RIGHT", 20);
    assertTrue(
        rowOfRigs(overdue).contains("beside blocks")
            && rowOfRigs(overdue).contains("limb-bolt inspection overdue"));
    assertTrue(rowOfRigs(withdrawn).contains("</span>crack</span>"), rowOfRigs(withdrawn));
    rack.withdraw(overdue.string(), "a frayed loop");
    assertTrue(
        rowOfRigs(overdue).contains("</span>a frayed loop and 2 more</span>"), rowOfRigs(overdue));
    assertTrue(!rowOfRigs(sound).contains("beside "), rowOfRigs(sound));
    rack.clear(List.of(withdrawn, sound));
  }

  private String rowOfRigs(Rack.Hung rig) {
    Visitor officer = Visitor.signedInAs("officer");
    for (int page = 1; page <= 20; page++) {
      String html = officer.get("/rigs?page=" + page).asString();
      if (html.contains(">" + rig.riserCode() + "<")) {
        return row(html, rig.riserCode());
      }
    }
    throw new AssertionError("not listed");
  }

  @Test
  void anUnfinishedSetUp_isToldByTheRigAndOnTheBench_withThePageThatEndsIt() {
    Rack.Hung rig = rack.rigWithoutSetUp();
    String said = "It has no complete set-up figures for these parts.";
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/rigs/" + rig.id().value())
        .then()
        .body(containsString(said))
        .body(containsString("href=\"/rigs/" + rig.id().value() + "/set-up\">See to it"));
    api("/api/concerns?rig=" + rig.id().value())
        .then()
        .body("blocked", is(true))
        .body("concerns.matter", is(List.of("not-set-up")))
        .body("concerns[0].rig", is((int) rig.id().value()))
        .body("concerns[0].item", nullValue());
    officer.get("/").then().body(containsString(said));
    rack.clear(List.of(rig));
  }

  @Test
  void theCommittee_readsTheLine_andIsOfferedNothingToDo() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.withdraw(rig.limbs(), "crack");
    Visitor.signedInAs("committee")
        .get("/rigs/" + rig.id().value())
        .then()
        .body(containsString(rig.limbsCode() + " is withdrawn: crack."))
        .body(not(containsString("See to it")));
    rack.clear(List.of(rig));
  }

  @Test
  void theFirstPage_tellsWhatIsKeptInLongest_andWhereThatEnds() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    Instant longAgo = Instant.parse("2001-02-03T10:00:00Z");
    lay(
        "INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)"
            + " VALUES (?1, 'LIMB_INSPECTION', ?2, 1, 'found in the loft', 1, 'ASKED')",
        rig.limbs(),
        longAgo);
    lay(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)"
            + " VALUES (?1, ?2, ?2, 1, 'a frayed loop')",
        rig.string(),
        longAgo);
    Visitor.signedInAs("volunteer")
        .get("/")
        .then()
        .body(containsString(rig.limbsCode() + ": limb inspection asked for: found in the loft."))
        .body(containsString("href=\"/upkeep/" + rig.limbsCode() + "/limb-inspection\""))
        .body(containsString(rig.stringCode() + " is withdrawn: a frayed loop."));
    lay("DELETE FROM upkeep_task WHERE item_id = ?1", rig.limbs());
    lay("DELETE FROM withdrawal WHERE item_id = ?1", rig.string());
  }

  @Test
  void whatTheBoxFinds_saysWhatKeepsItIn() {
    Rack.Hung one = rack.readyRig("RIGHT", 20);
    Rack.Hung other = rack.readyRig("RIGHT", 20);
    rack.called(one.riser(), "Quillfeather", "Marsh", null);
    rack.called(other.riser(), "Quillfeather", "Marsh", null);
    rack.withdraw(one.limbs(), "crack");
    String page =
        Visitor.signedInAs("officer").look("/find", Map.of("q", "quillfeather")).asString();
    String said = one.limbsCode() + " is withdrawn: crack.";
    int at = page.indexOf(">" + one.riserCode() + "<");
    assertTrue(page.substring(at, page.indexOf("</li>", at)).contains(said), page);
    assertEquals(1, page.split(said, -1).length - 1, "of the other nothing");
  }

  @Test
  void aLoanTypedInLate_saysSo_andWhatStoodAgainstItThen_besideTheReasonKept() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    ItemId arrows = arrows();
    LoanId loan = rack.lend(rig, "Wilma Reed", time.today().plusDays(20));
    Instant out = time.now().minus(Duration.ofDays(20));
    lay("INSERT INTO loan_line (loan_id, item_id, out_at) VALUES (?1, ?2, ?3)", loan, arrows, out);
    lay("UPDATE loan_line SET out_at = ?2 WHERE loan_id = ?1", loan, out);
    lay(
        "UPDATE loan SET issued_at = ?2, recorded_at = ?3, override_why = 'no other was left' WHERE id = ?1",
        loan,
        out,
        time.now());
    lay(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, 'STRING_REPLACEMENT', ?2, 1, 'it is furred', 0, 'ASKED')""",
        rig.string(),
        out.minus(Duration.ofDays(1)));
    rack.withdraw(rig.limbs(), "crack seen on a picture");
    String then = rig.stringCode() + ": string replacement asked for: it is furred.";
    String now = rig.limbsCode() + " is withdrawn: crack seen on a picture.";

    Visitor officer = Visitor.signedInAs("officer");
    String page = officer.get("/loans/" + loan.value()).asString();
    String whenLent = page.substring(page.indexOf("When it went out"));
    assertTrue(page.contains(now) && !whenLent.contains(now), "now, and not then");
    assertTrue(whenLent.contains(then), whenLent);
    assertTrue(whenLent.contains("no other was left"));
    assertTrue(whenLent.contains("Typed in late"));

    api("/api/loans/" + loan.value())
        .then()
        .body("concerns.said", hasItems(now, then))
        .body("concernsWhenIssued.said", hasItem(then))
        .body("concernsWhenIssued.said", not(hasItem(now)))
        .body("recordedAt", notNullValue());
    api("/api/concerns?loan=" + loan.value() + "&on=" + time.dayOf(out))
        .then()
        .body("blocked", is(false))
        .body("concerns.said", hasItem(then));
    api("/api/loans?size=200")
        .then()
        .body("items.find { it.id == " + loan.value() + " }.concerns.said", hasItems(now, then));

    String slip = officer.get("/loans/" + loan.value() + "/slip").asString();
    String known = slip.substring(slip.indexOf("What you should know"));
    known = known.substring(0, known.indexOf("</section>"));
    assertTrue(known.contains(then), known);
    assertFalse(known.contains("the mass of an arrow is not known"), "a note is for the club");
    assertTrue(!known.contains(now), "what keeps it in is told elsewhere");
    assertTrue(!known.contains("href"), "no addresses on paper");
  }

  /** A set of arrows that nobody weighed. */
  private ItemId arrows() {
    ItemCode code = null;
    for (int number = 900; code == null; number++) {
      ItemCode next =
          ItemCode.of('A', ItemCode.nextIssuable('A', number).orElseThrow()).orElseThrow();
      if (rows.number("SELECT count(*) FROM item WHERE code = ?1", next) == 0) {
        code = next;
      }
    }
    lay(
        "INSERT INTO item (code, kind, registered_on) VALUES (?1, 'ARROWS', ?2)",
        code,
        time.today().minusDays(100));
    ItemId id = new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code));
    lay(
        "INSERT INTO kit_item (id, arrow_length, arrow_count, pool) VALUES (?1, 71120000, 6, 0)",
        id);
    return id;
  }

  @Test
  void arrowsThatNobodyWeighed_areNotedOnTheirPageAndInTheirList() {
    ItemId arrows = arrows();
    String code =
        new ItemCode(rows.texts("SELECT code FROM item WHERE id = ?1", arrows).get(0)).display();
    String said = code + ": the mass of an arrow is not known, so it is held against no bow.";
    Visitor.signedInAs("officer").get("/items/" + code).then().body(containsString(said));
    api("/api/kit-items/" + code)
        .then()
        .body("concerns.said", is(List.of(said)))
        .body("concerns.weight", is(List.of("note")));
  }

  @Test
  void aSession_tellsWhatStandsAgainstWhatIsOutWithIt() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId session = rack.lendToSession(rig, "Quenby");
    rack.withdraw(rig.limbs(), "crack");
    String said = rig.limbsCode() + " is withdrawn: crack.";
    api("/api/sessions/" + session.value()).then().body("concerns.said", is(List.of(said)));
    api("/api/sessions?size=200")
        .then()
        .body("items.find { it.id == " + session.value() + " }.concerns.said", is(List.of(said)));
    rack.clear(List.of(rig));
  }

  @Test
  void whatWasRead_canBeSentBack_withItsConcerns() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.withdraw(rig.limbs(), "crack");
    Map<String, Object> read = api("/api/limbs/" + rig.limbsCode()).path("$");
    sending("officer")
        .body(read)
        .put("/api/limbs/" + rig.limbsCode())
        .then()
        .statusCode(200)
        .body("concerns", hasSize(1));
    rack.clear(List.of(rig));
  }

  @ParameterizedTest(name = "/api/concerns{0}: {1}")
  @MethodSource("wrong")
  void whatIsAskedWrongly_isToldAtItsField(String query, String field) {
    api("/api/concerns" + query)
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItem(field))
        .body("errors.message", everyItem(notNullValue()));
  }

  static Stream<Arguments> wrong() {
    return Stream.of(
        Arguments.of("", "rig"),
        Arguments.of("?rig=1&item=R-0101-E", "item"),
        Arguments.of("?rig=1&loan=1", "loan"),
        Arguments.of("?rig=x", "rig"),
        Arguments.of("?rig=999999999", "rig"),
        Arguments.of("?loan=999999999", "loan"),
        Arguments.of("?item=R-0101-X", "item"),
        Arguments.of("?rig=1&on=yesterday", "on"));
  }

  @Test
  void onADayThatIsPast_andOneToCome_itIsReadAsItWasAndWillBe() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.withdraw(rig.limbs(), "crack");
    String of = "/api/concerns?rig=" + rig.id().value() + "&on=";
    LocalDate today = time.today();
    api(of + today.minusDays(1)).then().body("blocked", is(false)).body("concerns", hasSize(0));
    api(of + today).then().body("blocked", is(true)).body("on", is(today.toString()));
    api(of + today.plusYears(1)).then().body("concerns.matter", hasItems("withdrawn", "overdue"));
    rack.clear(List.of(rig));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/rigs",
        "/",
        "/fleet",
        "/fleet/rows?list=rigs",
        "/register",
        "/loans/{loan}",
        "/rigs/{rig}",
        "/items/{code}",
        "/api/rigs?size=200",
        "/api/limbs?size=200",
        "/api/loans?size=200",
        "/api/sessions?size=200"
      })
  void aPage_needsTheSameStatements_whateverStandsAgainstHowManyBows(String address) {
    Rack.Hung first = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lend(first, "Otto Stone", time.today());
    Rack.Hung shot = rack.readyRig("RIGHT", 20);
    rack.lendToSession(shot, "Oda");
    String path =
        address
            .replace("{rig}", Long.toString(first.id().value()))
            .replace("{code}", first.limbsCode())
            .replace("{loan}", Long.toString(loan.value()));
    rack.withdraw(first.limbs(), "crack");
    long few = statements(path);
    List<Rack.Hung> more = rack.readyRigs(6);
    more.subList(0, 3).forEach(rig -> rack.withdraw(rig.limbs(), "crack"));
    more.subList(3, 5).forEach(rig -> rack.lend(rig, "Olga Stone", time.today()));
    rack.lendToSession(more.get(5), "Oskar");
    long many = statements(path);
    rack.clear(more);
    rack.clear(List.of(first, shot));
    assertEquals(few, many);
  }

  private static long statements(String path) {
    if (path.startsWith("/api")) {
      api(path).then().statusCode(200);
      long before = StatementCount.run();
      api(path).then().statusCode(200);
      return StatementCount.run() - before;
    }
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(path).then().statusCode(200);
    long before = StatementCount.run();
    officer.get(path).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
