package club.ascham.loan;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.concern.Concerns;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.id.LoanId;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is known of a bow, asked at each way out of the club, by page and by program. */
@QuarkusTest
class WhatStandsAgainstTest {
  private static final String A_REASON = "The only bow that fits her, looked over by the coach.";

  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject Concerns concerns;

  /** A fact that was written by another hand than the one that issues. */
  private enum Known {
    WITHDRAWN(true, "is withdrawn: crack in the lower limb.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.fixture.withdraw(rig.limbs(), "crack in the lower limb");
      }
    },
    FAILED_AND_RELEASED(true, "did not pass its limb inspection: a line across it.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.record(rig.limbs(), "LIMB_INSPECTION", "FAILED");
      }
    },
    INSPECTION_ASKED_FOR(true, "limb inspection asked for: it fell on the floor.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.task(rig.limbs(), "LIMB_INSPECTION", "it fell on the floor", true, "ASKED");
      }
    },
    CHANGING_LIMB(true, "readings change by more than readers differ.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.task(
            rig.limbs(),
            "LIMB_INSPECTION",
            "Its readings change by more than readers differ.",
            true,
            "CHANGING");
      }
    },
    DANGEROUS_REPORT(true, "a bang or a crack was heard") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.report(rig, true, "BANG");
      }
    },
    STRING_BEYOND_BY_DAYS(true, "by more than the club lets pass") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.firstUsed(rig, 913);
      }
    },
    CHANGING(false, "readings change by more than readers differ.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.task(
            rig.string(),
            "STRING_REPLACEMENT",
            "Its readings change by more than readers differ.",
            false,
            "CHANGING");
      }
    },
    ANOTHER_REPORT(false, "it shoots, or draws, otherwise than before") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.report(rig, false, "SHOOTS_OTHERWISE");
      }
    },
    STRING_OVERDUE(false, "string replacement overdue, 730 days since") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.firstUsed(rig, 912);
      }
    },
    WORK_ASKED_FOR(false, "string replacement asked for: the serving looks thin.") {
      @Override
      void of(WhatStandsAgainstTest t, LaidBow rig) {
        t.task(rig.string(), "STRING_REPLACEMENT", "the serving looks thin", false, "ASKED");
      }
    };

    private final boolean blocks;
    private final String said;

    Known(boolean blocks, String said) {
      this.blocks = blocks;
      this.said = said;
    }

    abstract void of(WhatStandsAgainstTest t, LaidBow rig);
  }

  @ParameterizedTest
  @EnumSource(Known.class)
  void whatIsKnown_isSaidAtTheIssue_andKeepsInOrAsksForAReason(Known known) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    known.of(this, rig);
    Map<String, Object> body = body(rig);
    String field = known.blocks ? "rig" : "overrideWhy";
    issue(body)
        .statusCode(422)
        .body("errors.field", hasItem(field))
        .body("errors.find { it.field == '" + field + "' }.message", containsString(known.said));
    assertEquals(0, lines(rig));

    body.put("overrideWhy", "x");
    issue(body).statusCode(422);
    assertEquals(0, lines(rig), "one letter is no reason");

    body.put("overrideWhy", A_REASON);
    body.put("onceKey", UUID.randomUUID().toString());
    if (known.blocks) {
      issue(body).statusCode(422).body("errors.field", hasItem("rig"));
      assertEquals(0, lines(rig), "no reason lets it go");
      return;
    }
    int loan = issue(body).statusCode(201).extract().path("id");
    assertEquals(3, lines(rig));
    assertEquals(
        List.of(A_REASON), rows.texts("SELECT override_why FROM loan WHERE id = ?1", loan));
  }

  @ParameterizedTest
  @EnumSource(Known.class)
  void whatIsKnown_isSaidOnTheIssuesPage(Known known) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    known.of(this, rig);
    Visitor officer = Visitor.signedInAs("officer");
    String page =
        "/issue?hand=right&dominantEye=right&drawLength=27&ageBand=adult&experience=beginner&rig="
            + rig.id().value();
    officer
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString(known.said))
        .body(containsString(known.blocks ? "Choose another." : "name=\"overrideWhy\""));
  }

  @ParameterizedTest
  @EnumSource(Known.class)
  void whatIsKnown_isSaidAtTheSession_andKeepsInOrAsksForAReason(Known known) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    known.of(this, rig);
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("leader", "Quenby");
    body.put("rigIds", List.of(rig.id().value()));
    ValidatableResponse refused = sending("volunteer").body(body).post("/api/sessions").then();
    body.put("overrideWhy", A_REASON);
    ValidatableResponse withReason = sending("volunteer").body(body).post("/api/sessions").then();
    if (known.blocks) {
      refused.statusCode(409).body("detail", containsString(known.said));
      withReason.statusCode(409);
      assertEquals(0, lines(rig));
      return;
    }
    refused
        .statusCode(422)
        .body("errors[0].field", equalTo("overrideWhy"))
        .body("errors[0].message", containsString(known.said));
    int loan = withReason.statusCode(201).extract().path("id");
    assertEquals(3, lines(rig));
    assertEquals(
        List.of(A_REASON), rows.texts("SELECT override_why FROM loan WHERE id = ?1", loan));

    // The next session ticks last time's set, but not what something speaks against.
    sending("volunteer")
        .body("{}")
        .post("/api/sessions/" + loan + "/return")
        .then()
        .statusCode(422);
    rows.change("UPDATE loan_line SET back_at = out_at, outcome = 'BACK' WHERE loan_id = ?1", loan);
    String next = Visitor.signedInAs("volunteer").get("/sessions/new").asString();
    Matcher tick =
        Pattern.compile("<input[^>]*name=\"rig-" + rig.id().value() + "\"[^>]*>").matcher(next);
    assertFalse(tick.find() && tick.group().contains(" checked"), next);
  }

  @Test
  void aStringBeyondByShotsOrLoans_staysIn() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long rule = rows.number("SELECT id FROM upkeep_rule WHERE work = 'STRING_REPLACEMENT'");
    firstUsed(rig, 10);
    shoot(rig, 4000);
    assertEquals("SPEAKS", weight(rig), "at the count of the rule, a day later");
    shoot(rig, 1000);
    assertEquals("BLOCKS", weight(rig), "a quarter more");
    rows.change("UPDATE upkeep_rule SET beyond_percent = 50 WHERE id = ?1", rule);
    assertEquals("SPEAKS", weight(rig), "the club's rule");
    rows.change("UPDATE upkeep_rule SET beyond_percent = 25, every_loans = 2 WHERE id = ?1", rule);
    assertEquals("BLOCKS", weight(rig));
    rows.change("UPDATE upkeep_rule SET every_loans = NULL WHERE id = ?1", rule);
  }

  private String weight(LaidBow rig) {
    ValidatableResponse answer = issue(body(rig)).statusCode(422);
    List<String> fields = answer.extract().path("errors.field");
    return fields.contains("rig")
        ? "BLOCKS"
        : fields.contains("overrideWhy") ? "SPEAKS" : "NOTHING";
  }

  private void shoot(LaidBow rig, int shots) {
    rows.change(
        """
        INSERT INTO loan (kind, leader, issued_at, due_on, issued_by, recorded_at)
        VALUES ('SESSION', 'l', ?1, ?2, 1, ?1)""",
        Ago.days(time, 3),
        time.today().minusDays(3));
    rows.change(
        """
        INSERT INTO loan_line (loan_id, item_id, out_at, back_at, outcome, shots)
        VALUES ((SELECT max(id) FROM loan), ?1, ?2, ?3, 'BACK', ?4)""",
        rig.string().id(),
        Ago.days(time, 3),
        Ago.days(time, 2),
        shots);
  }

  @Test
  void theFileItself_refusesWhatIsBlocked() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Known.DANGEROUS_REPORT.of(this, rig);
    String today = Stored.day(time.today());
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class, () -> fixture.lend(rig, "Past The Door", today, "2099-01-01"));
    assertEquals(
        "Something keeps one of these in: look at what stands against it.", refusal.getMessage());
  }

  @Test
  void aLoanOfABlockedBow_doesNotGoOn() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long loan = fixture.lend(rig, "Hanna Lode", "2026-05-01", "2026-06-01");
    Known.DANGEROUS_REPORT.of(this, rig);
    sending("officer")
        .body(Map.of("dueOn", time.today().plusDays(20).toString()))
        .post("/api/loans/" + loan + "/extend")
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("Ask it back now"));
  }

  @ParameterizedTest
  @EnumSource(
      value = Known.class,
      names = {"CHANGING", "ANOTHER_REPORT", "STRING_OVERDUE", "WORK_ASKED_FOR"})
  void whatSpeaksAgainstALoan_asksForAReasonToLetItGoOn(Known known) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long loan = fixture.lend(rig, "Hanna Lode", "2026-05-01", "2026-06-01");
    known.of(this, rig);
    String page = "/loans/" + loan;
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page).then().body(containsString("id=\"overrideWhy\""));
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("dueOn", time.today().plusDays(20).toString());
    for (String no : new String[] {null, "x"}) {
      body.put("overrideWhy", no);
      sending("officer")
          .body(body)
          .post("/api" + page + "/extend")
          .then()
          .statusCode(422)
          .body("errors[0].field", equalTo("overrideWhy"));
    }
    officer
        .post(page + "/extend", Map.of("dueOn", time.today().plusDays(20).toString()))
        .then()
        .statusCode(422)
        .body(containsString("id=\"overrideWhy-error\""), containsString(known.said));
    assertEquals(List.of("2026-06-01"), rows.texts("SELECT due_on FROM loan WHERE id = ?1", loan));

    body.put("overrideWhy", A_REASON);
    sending("officer").body(body).post("/api" + page + "/extend").then().statusCode(200);
    assertEquals(
        List.of(A_REASON), rows.texts("SELECT override_why FROM loan WHERE id = ?1", loan));
  }

  @Test
  void aReasonThatTheLoanWasGivenWith_isNotAskedForAgain_untilSomethingNewSpeaks() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Known.WORK_ASKED_FOR.of(this, rig);
    Map<String, Object> body = body(rig);
    body.put("overrideWhy", A_REASON);
    int loan = issue(body).statusCode(201).extract().path("id");
    extend(loan, 40).statusCode(200);
    // Noticed before it was lent, and told only now.
    Known.ANOTHER_REPORT.of(this, rig);
    rows.change(
        "UPDATE report SET recorded_at = ?1 WHERE id = (SELECT max(id) FROM report)", time.now());
    extend(loan, 50)
        .statusCode(422)
        .body("errors.size()", equalTo(1))
        .body("errors[0].field", equalTo("overrideWhy"))
        .body("errors[0].message", containsString(Known.ANOTHER_REPORT.said));
  }

  private ValidatableResponse extend(long loan, int days) {
    return sending("officer")
        .body(Map.of("dueOn", time.today().plusDays(days).toString()))
        .post("/api/loans/" + loan + "/extend")
        .then();
  }

  @Test
  void aFile_letsNothingLeaveTodayThatIsBlocked_andWhatIsLongAgoIsJudgedFromThenOn() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Known.INSPECTION_ASKED_FOR.of(this, rig);
    long number = 1 + rows.number("SELECT max(id) FROM loan");
    String longAgo = "2026-01-04T19:00:00.000Z";
    take("number,kind,borrower,leader,issuedAt,dueOn,by,recordedAt,hand,drawLength,drawEstimated,"
            + "experience,overrideWhy,deposit,depositHow,depositBack,depositKeptWhy,termsAccepted,overrideCoach,briefedAt,briefedBy\n"
            + number
            + ",session,,Quenby,"
            + longAgo
            + ",2026-01-04,officer,"
            + longAgo
            + ",,,,,,,,,,,,,\n")
        .statusCode(200);
    take(linesOf(number, rig, Stored.moment(time.now()))).statusCode(422);
    assertEquals(0, lines(rig));

    take(linesOf(number, rig, longAgo)).statusCode(200);
    assertEquals(3, lines(rig), "history");
    assertTrue(concerns.of(new LoanId(number)).blocks(), "judged from then on");
  }

  private static String linesOf(long loan, LaidBow rig, String at) {
    StringBuilder lines =
        new StringBuilder(
            "number,loan,item,rig,outAt,arrowCount,backAt,receipt,outcome,backCount,shots,missingCount\n");
    for (Laid part : List.of(rig.body(), rig.limbs(), rig.string())) {
      lines.append(",%d,%s,%d,%s,,,,,,,\n".formatted(loan, part.code(), rig.id().value(), at));
    }
    return lines.toString();
  }

  private static ValidatableResponse take(String file) {
    return as("officer").contentType("text/csv").body(file).post("/api/import").then();
  }

  private long lines(LaidBow rig) {
    return rows.number(
        "SELECT count(*) FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL", rig.id());
  }

  private ValidatableResponse issue(Map<String, Object> body) {
    return sending("officer").body(body).post("/api/loans").then();
  }

  private Map<String, Object> body(LaidBow rig) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("hand", "right");
    body.put("drawLength", "27 in");
    body.put("ageBand", "adult");
    body.put("experience", "beginner");
    body.put("rig", rig.id().value());
    body.put("name", "Nell Harker");
    body.put("contact", "07700 900417");
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    return body;
  }

  private void record(Laid item, String work, String result) {
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)
        VALUES (?1, ?2, ?3, ?3, 1, ?4, 'a line across it')""",
        item.id(),
        work,
        Ago.days(time, 2),
        result);
  }

  private void task(Laid item, String work, String why, boolean blocks, String cause) {
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, ?2, ?3, 1, ?4, ?5, ?6)""",
        item.id(),
        work,
        Ago.days(time, 2),
        why,
        blocks,
        cause);
  }

  private void report(LaidBow rig, boolean dangerous, String sign) {
    rows.change(
        """
        INSERT INTO report (rig_id, told_at, happened_at, recorded_at, told_to, part_known, dangerous)
        VALUES (?1, 'BOW', ?2, ?2, 1, 0, ?3)""",
        rig.id(),
        Ago.days(time, 2),
        dangerous);
    rows.change(
        "INSERT INTO report_sign (report_id, sign) VALUES ((SELECT max(id) FROM report), ?1)",
        sign);
    for (Laid part : List.of(rig.body(), rig.limbs(), rig.string())) {
      rows.change(
          "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report), ?1)",
          part.id());
    }
  }

  private void firstUsed(LaidBow rig, int daysAgo) {
    rows.change(
        "UPDATE bowstring SET first_used = ?2 WHERE id = ?1",
        rig.string().id(),
        time.today().minusDays(daysAgo));
  }
}
