package club.ascham.concern;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.time.ClubTime;
import club.ascham.worksheet.LooksOf;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A law: no way by program or file makes a bow leave, now, while something blocks. Random sequences
 * of what people can do to one bow, against a model that reads the plain facts and knows none of
 * the views. The pages call the same use cases, and their own tests hold that.
 */
@QuarkusTest
class NothingBlockedLeavesTest {
  private static final int DEEDS = 70;
  private static final String WHOLE_WORDS = "Looked over at the bench by the coach tonight.";

  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;

  private Random chance;
  private LaidBow bow;
  private boolean cameIn;
  private Set<String> inWith = Set.of();

  private enum Deed {
    ISSUE,
    LEND_FOR_A_SESSION,
    LEND_BY_A_FILE,
    LEND_BY_A_FILE_WITH_A_REASON,
    RECEIVE,
    RECEIVE_WITH_A_BANG,
    RECEIVE_WITH_DAMAGED_LIMBS,
    RETURN_LOOKED_OVER,
    RETURN_WITH_SOMETHING_SEEN,
    CHECK_FINE,
    CHECK_A_CRACK,
    PUT_BACK,
    WITHDRAW_THE_STRING,
    RELEASE,
    DECIDE,
    PASS_AN_INSPECTION,
    FAIL_AN_INSPECTION,
    ASK_FOR_AN_INSPECTION,
    KEEP_THE_STRING,
    REPORT_A_CREAK,
    REPORT_A_SERVING,
    ANSWER,
    BEGIN_A_SET_UP,
    UNDO
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noSequence_letsABlockedBowLeave(long seed) {
    chance = new Random(seed);
    bow = fixture.aBowReadyToGoOut();
    fixture.mayTurnBolts("officer", true);
    Map<Deed, Integer> done = new EnumMap<>(Deed.class);
    int left = 0;
    int refusedThoughBlocked = 0;
    try {
      for (int i = 0; i < DEEDS; i++) {
        if (!isOut() && chance.nextInt(4) == 0) {
          putRight();
        }
        Deed deed = cameIn && chance.nextBoolean() ? Deed.UNDO : some(List.of(Deed.values()));
        List<String> blocked = blockedBy();
        boolean spoken = somethingSpeaks();
        boolean outBefore = isOut();
        Response answer = tryTo(deed);
        int status = answer == null ? 0 : answer.statusCode();
        assertTrue(status < 500, deed + ": " + (answer == null ? "" : answer.asString()));
        boolean leaves = !outBefore && isOut() && deed != Deed.UNDO;
        String told = "seed " + seed + ", deed " + i + " " + deed + ": " + blocked;
        if (leaves) {
          assertEquals(List.of(), blocked, told);
          assertTrue(!spoken || deed != Deed.LEND_BY_A_FILE, told + ": without a reason");
          left++;
        } else if (isALeaving(deed) && !outBefore && !blocked.isEmpty()) {
          refusedThoughBlocked++;
        }
        cameIn = outBefore && !isOut();
        if (cameIn) {
          inWith = keepers();
        } else if (deed == Deed.UNDO && !outBefore && isOut()) {
          assertNothingKeepsItInSince(told);
        }
        if (status / 100 == 2) {
          done.merge(deed, 1, Integer::sum);
        }
      }
      tryTo(Deed.RECEIVE);
      tryTo(Deed.RETURN_LOOKED_OVER);
      backByItself();
      undoAsItCameIn();
      for (Deed byFile : List.of(Deed.LEND_BY_A_FILE, Deed.LEND_BY_A_FILE_WITH_A_REASON)) {
        putRight();
        tryTo(Deed.BEGIN_A_SET_UP);
        assertTrue(blockedBy().contains("its set-up is begun"));
        assertEquals(422, tryTo(byFile).statusCode(), "seed " + seed);
        finishTheSetUp();
        tryTo(Deed.CHECK_FINE);
        assertTrue(blockedBy().contains("to be checked"), () -> "seed " + seed + blockedBy());
        assertEquals(422, tryTo(byFile).statusCode(), "seed " + seed);
      }
      putRight();
      assertEquals(List.of(), blockedBy(), "seed " + seed);
      assertEquals(200, tryTo(Deed.LEND_BY_A_FILE_WITH_A_REASON).statusCode(), "seed " + seed);
    } finally {
      fixture.mayTurnBolts("officer", false);
      rows.change(
          "UPDATE loan_line SET back_at = out_at, outcome = 'BACK' WHERE back_at IS NULL AND rig_id = ?1",
          bow.id());
    }
    assertTrue(left > 0, "it never left: " + done);
    assertTrue(refusedThoughBlocked > 0, "it was never blocked: " + done);
    assertTrue(done.size() > 8, "too little could be done: " + done);
  }

  /**
   * An undo is no leaving: it was out with all that was known as it came in. What was told as it
   * came in is no hindrance to an officer, who asks it back; what keeps it in since is one.
   */
  private void undoAsItCameIn() {
    for (Deed comesBack : List.of(Deed.RECEIVE_WITH_A_BANG, Deed.RECEIVE_WITH_DAMAGED_LIMBS)) {
      putRight();
      assertEquals(201, tryTo(Deed.ISSUE).statusCode());
      assertEquals(201, tryTo(comesBack).statusCode());
      inWith = keepers();
      assertEquals(409, undo("volunteer").statusCode(), comesBack.name());
      assertEquals(200, undo("officer").statusCode(), comesBack.name());
      assertTrue(isOut());
      assertNothingKeepsItInSince(comesBack.name());
      assertEquals(201, tryTo(Deed.RECEIVE).statusCode());
    }
    putRight();
    assertEquals(201, tryTo(Deed.ISSUE).statusCode());
    assertEquals(201, tryTo(Deed.RECEIVE).statusCode());
    tryTo(Deed.WITHDRAW_THE_STRING);
    assertEquals(409, undo("officer").statusCode(), "withdrawn since it came in");
    assertFalse(isOut());
  }

  private Response undo(String who) {
    return ofNewest(newestPress(), id -> post(who, "/api/moves/" + id + "/undo", Map.of()));
  }

  private void assertNothingKeepsItInSince(String told) {
    Set<String> since = new TreeSet<>(keepers());
    since.removeAll(inWith);
    assertEquals(Set.of(), since, told);
  }

  /** What keeps it in, by the rows that say so. */
  private Set<String> keepers() {
    return new TreeSet<>(
        rows.texts(
            """
            SELECT 'withdrawal ' || id FROM withdrawal WHERE released_at IS NULL AND item_id IN (%1$s)
            UNION SELECT 'asked for ' || id FROM upkeep_task
             WHERE blocks = 1 AND closed_by_record IS NULL AND item_id IN (%1$s)
            UNION SELECT 'told ' || r.id FROM report r JOIN report_part p ON p.report_id = r.id
             WHERE r.answer IS NULL AND r.dangerous = 1 AND p.item_id IN (%1$s)
            UNION SELECT 'failed ' || f.id FROM upkeep_record f WHERE f.result = 'FAILED' AND f.item_id IN (%1$s)
               AND NOT EXISTS (SELECT 1 FROM upkeep_record n WHERE n.item_id = f.item_id AND n.work = f.work
                                  AND n.result IN ('PASSED', 'FAILED') AND (n.happened_at, n.id) > (f.happened_at, f.id))
            UNION SELECT 'set-up ' || id FROM set_up WHERE finished_at IS NULL AND rig_id = %2$d"""
                .formatted(ids(), bow.id().value())));
  }

  /** All that a club does until its bow may leave again, as far as it gets. */
  private void putRight() {
    for (int report = 0; report < 6; report++) {
      ofNewest(
          "SELECT max(id) FROM report WHERE answer IS NULL AND rig_id = " + bow.id().value(),
          id ->
              post(
                  "officer",
                  "/api/reports/" + id + "/answer",
                  Map.of("answer", "nothing-there", "words", WHOLE_WORDS)));
    }
    tryTo(Deed.KEEP_THE_STRING);
    finishTheSetUp();
    for (String work : List.of("limb-inspection", "riser-inspection", "bolt-inspection")) {
      inspect(work.startsWith("limb") ? bow.limbs() : bow.body(), work, "fine");
    }
    for (int part = 0; part < 3; part++) {
      tryTo(Deed.DECIDE);
      tryTo(Deed.RELEASE);
    }
    tryTo(Deed.CHECK_FINE);
    tryTo(Deed.PUT_BACK);
  }

  private static boolean isALeaving(Deed deed) {
    return deed == Deed.ISSUE
        || deed == Deed.LEND_FOR_A_SESSION
        || deed == Deed.LEND_BY_A_FILE
        || deed == Deed.LEND_BY_A_FILE_WITH_A_REASON;
  }

  // ---- what is done

  private Response tryTo(Deed deed) {
    return switch (deed) {
      case ISSUE -> issue();
      case LEND_FOR_A_SESSION ->
          post(
              "volunteer",
              "/api/sessions",
              Map.of(
                  "leader",
                  "Quenby",
                  "rigIds",
                  List.of(bow.id().value()),
                  "overrideWhy",
                  WHOLE_WORDS));
      case LEND_BY_A_FILE -> lendByAFile("");
      case LEND_BY_A_FILE_WITH_A_REASON -> lendByAFile(WHOLE_WORDS);
      case BEGIN_A_SET_UP -> {
        beginASetUp();
        yield null;
      }
      case UNDO -> undo(chance.nextBoolean() ? "officer" : "volunteer");
      case RECEIVE -> receive(Map.of());
      case RECEIVE_WITH_A_BANG -> receive(Map.of("signs", List.of("bang"), "part", "not-known"));
      case RECEIVE_WITH_DAMAGED_LIMBS ->
          receive(
              Map.of(
                  "lines",
                  parts().stream()
                      .map(
                          part ->
                              part.equals(bow.limbs())
                                  ? Map.of("code", part.code(), "back", true, "damage", "a dent")
                                  : Map.of("code", part.code(), "back", true))
                      .toList()));
      case RETURN_LOOKED_OVER -> comeBack(Map.of());
      case RETURN_WITH_SOMETHING_SEEN ->
          comeBack(Map.of("signs", List.of("serving"), "part", "string"));
      case CHECK_FINE -> check("fine", List.of());
      case CHECK_A_CRACK -> check("stop", List.of("limbs-crack-across"));
      case PUT_BACK ->
          ofNewest(
              "SELECT max(id) FROM bow_check WHERE rig_id = " + bow.id().value(),
              id -> post("volunteer", "/api/checks/" + id + "/release", Map.of()));
      case WITHDRAW_THE_STRING ->
          post(
              "volunteer",
              "/api/withdrawals",
              chance.nextBoolean()
                  ? Map.of("item", bow.string().code(), "why", WHOLE_WORDS)
                  : Map.of(
                      "item",
                      bow.string().code(),
                      "why",
                      WHOLE_WORDS,
                      "work",
                      "string-replacement"));
      case RELEASE ->
          ofNewest(
              openWithdrawal(),
              id ->
                  post(
                      "officer",
                      "/api/withdrawals/" + id + "/release",
                      Map.of("lookedAt", WHOLE_WORDS, "why", WHOLE_WORDS)));
      case DECIDE ->
          ofNewest(
              openWithdrawal(),
              id ->
                  post(
                      "officer",
                      "/api/withdrawals/" + id + "/decide",
                      Map.of("work", "none", "why", WHOLE_WORDS)));
      case PASS_AN_INSPECTION -> inspect("fine");
      case FAIL_AN_INSPECTION -> inspect("stop");
      case ASK_FOR_AN_INSPECTION -> {
        askForLimbInspection();
        yield null;
      }
      case KEEP_THE_STRING ->
          post(
              "officer",
              "/api/replacements/kept",
              Map.of("item", bow.string().code(), "found", WHOLE_WORDS));
      case REPORT_A_CREAK ->
          post(
              "volunteer",
              "/api/reports",
              Map.of("rig", bow.body().code(), "signs", List.of("creak"), "part", "limbs"));
      case REPORT_A_SERVING ->
          post(
              "volunteer",
              "/api/reports",
              Map.of("rig", bow.body().code(), "signs", List.of("serving"), "part", "string"));
      case ANSWER ->
          ofNewest(
              "SELECT max(id) FROM report WHERE answer IS NULL AND rig_id = " + bow.id().value(),
              id ->
                  post(
                      chance.nextBoolean() ? "officer" : "volunteer",
                      "/api/reports/" + id + "/answer",
                      some(
                          List.of(
                              Map.of("answer", "nothing-there", "words", WHOLE_WORDS),
                              Map.of("answer", "stop", "words", WHOLE_WORDS, "part", "string"),
                              Map.of(
                                  "answer",
                                  "watch",
                                  "words",
                                  WHOLE_WORDS,
                                  "until",
                                  time.today().plusDays(20).toString())))));
    };
  }

  private Response issue() {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("hand", "right");
    body.put("drawLength", "27 in");
    body.put("ageBand", "adult");
    body.put("experience", "beginner");
    body.put("rig", bow.id().value());
    body.put("name", "Nell Harker");
    body.put("contact", "07700 900417");
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    body.put("overrideWhy", WHOLE_WORDS);
    body.put("overrideCoach", "Bo Tarn");
    return post("officer", "/api/loans", body);
  }

  private void beginASetUp() {
    if (isOut()) {
      return;
    }
    rows.change(
        """
        INSERT INTO set_up (rig_id, begun_at, begun_by)
        SELECT ?1, ?2, 1 WHERE NOT EXISTS (SELECT 1 FROM set_up WHERE rig_id = ?1 AND finished_at IS NULL)""",
        bow.id(),
        time.now());
  }

  private void finishTheSetUp() {
    rows.change(
        """
        UPDATE set_up SET finished_at = ?2, finished_by = 1, brace = 21600000, brace_from = 'GRIP_THROAT',
               tiller_upper = 19000000, tiller_lower = 18600000, nocking = 400000, screws_seen = 1
         WHERE rig_id = ?1 AND finished_at IS NULL""",
        bow.id(),
        time.now());
  }

  private void backByItself() {
    rows.change(
        "UPDATE loan_line SET back_at = max(out_at, ?2), outcome = 'BACK' WHERE back_at IS NULL AND rig_id = ?1",
        bow.id(),
        time.now());
  }

  private Response lendByAFile(String why) {
    long loan = 1 + rows.number("SELECT max(id) FROM loan");
    String now = Stored.moment(time.now());
    Response loans =
        file(
            "number,kind,borrower,leader,issuedAt,dueOn,by,recordedAt,hand,drawLength,drawEstimated,"
                + "experience,overrideWhy,deposit,depositHow,depositBack,depositKeptWhy,termsAccepted,overrideCoach,briefedAt,briefedBy\n"
                + "%d,session,,Quenby,%s,%s,officer,%s,,,,,%s,,,,,,,,\n"
                    .formatted(loan, now, time.today(), now, why));
    assertEquals(200, loans.statusCode(), loans.asString());
    StringBuilder lines =
        new StringBuilder(
            "number,loan,item,rig,outAt,arrowCount,backAt,receipt,outcome,backCount,shots,missingCount\n");
    for (Laid part : parts()) {
      lines.append(",%d,%s,%d,%s,,,,,,,\n".formatted(loan, part.code(), bow.id().value(), now));
    }
    return file(lines.toString());
  }

  private static Response file(String csv) {
    return as("officer").contentType("text/csv").body(csv).post("/api/import");
  }

  private Response receive(Map<String, Object> more) {
    return ofNewest(
        openLoan(),
        id -> {
          Map<String, Object> body = new LinkedHashMap<>(more);
          body.put("loanId", id);
          return post("volunteer", "/api/receipts", body);
        });
  }

  private Response comeBack(Map<String, Object> more) {
    return ofNewest(
        openLoan(),
        id -> {
          Map<String, Object> rig = new LinkedHashMap<>(more);
          rig.put("rigId", bow.id().value());
          return post("volunteer", "/api/sessions/" + id + "/return", Map.of("rigs", List.of(rig)));
        });
  }

  private Response check(String limbs, List<String> signs) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("rig", Long.toString(bow.id().value()));
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", limbs, "bolts", "fine"));
    body.put("signs", signs);
    return post("volunteer", "/api/checks", body);
  }

  private Response inspect(String answer) {
    return chance.nextBoolean()
        ? inspect(bow.limbs(), "limb-inspection", answer)
        : inspect(bow.body(), "riser-inspection", answer);
  }

  private Response inspect(Laid item, String work, String answer) {
    Map<String, String> seen = new LinkedHashMap<>();
    LooksOf.keys(work).forEach(key -> seen.put(key, "fine"));
    if (answer.equals("stop")) {
      seen.put(seen.keySet().iterator().next(), "stop");
    }
    return post(
        "officer",
        "/api/inspections",
        Map.of("item", item.code(), "work", work, "seen", seen, "words", WHOLE_WORDS));
  }

  private void askForLimbInspection() {
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks)
        SELECT ?1, 'LIMB_INSPECTION', ?2, 1, 'it was dropped', 1
         WHERE NOT EXISTS (SELECT 1 FROM upkeep_task WHERE item_id = ?1 AND work = 'LIMB_INSPECTION'
                              AND closed_by_record IS NULL)""",
        bow.limbs().id(),
        time.now());
  }

  private static Response post(String who, String path, Object body) {
    return sending(who).body(body).post(path);
  }

  private interface OfId {
    Response send(long id);
  }

  /** Null where there is none. */
  private Response ofNewest(String sql, OfId deed) {
    long id = rows.number(sql);
    return id == 0 ? null : deed.send(id);
  }

  private String newestPress() {
    return "SELECT coalesce(max(m.id), 0) FROM move m LEFT JOIN bow_check c ON c.id = m.check_id"
        + " WHERE m.undone_at IS NULL AND (c.rig_id = %1$d OR m.id IN (SELECT d.move_id FROM moved d"
            .formatted(bow.id().value())
        + " JOIN loan_line x ON x.id = d.line_id WHERE x.rig_id = %1$d))"
            .formatted(bow.id().value());
  }

  private String openLoan() {
    return "SELECT max(loan_id) FROM loan_line WHERE back_at IS NULL AND rig_id = "
        + bow.id().value();
  }

  private String openWithdrawal() {
    return "SELECT max(id) FROM withdrawal WHERE released_at IS NULL AND item_id IN ("
        + ids()
        + ")";
  }

  // ---- what is so, by the plain facts alone

  private List<Laid> parts() {
    return List.of(bow.body(), bow.limbs(), bow.string());
  }

  private String ids() {
    return bow.body().id().value()
        + ", "
        + bow.limbs().id().value()
        + ", "
        + bow.string().id().value();
  }

  private boolean isOut() {
    return rows.number(
            "SELECT count(*) FROM loan_line WHERE back_at IS NULL AND rig_id = " + bow.id().value())
        > 0;
  }

  private record Inspected(String work, String result) {}

  /** Why it may not leave, in plain words; empty: nothing blocks. */
  private List<String> blockedBy() {
    List<String> why = new ArrayList<>();
    if (rows.number(
            "SELECT count(*) FROM withdrawal WHERE released_at IS NULL AND item_id IN ("
                + ids()
                + ")")
        > 0) {
      why.add("withdrawn");
    }
    if (rows.number(
            "SELECT count(*) FROM upkeep_task WHERE blocks = 1 AND closed_by_record IS NULL AND item_id IN ("
                + ids()
                + ")")
        > 0) {
      why.add("an inspection is asked for");
    }
    if (rows.number(
            "SELECT count(*) FROM report r JOIN report_part p ON p.report_id = r.id WHERE r.answer IS NULL"
                + " AND r.dangerous = 1 AND p.item_id IN ("
                + ids()
                + ")")
        > 0) {
      why.add("something dangerous was told");
    }
    for (Laid part : parts()) {
      Map<String, String> newest = new LinkedHashMap<>();
      rows.list(
              Inspected.class,
              "SELECT work, result FROM upkeep_record WHERE item_id = ?1 ORDER BY happened_at, id",
              part.id())
          .forEach(one -> newest.put(one.work(), one.result()));
      if (newest.containsValue("FAILED")) {
        why.add(part.code() + " failed");
      }
    }
    if (rows.number(
            "SELECT count(*) FROM set_up WHERE finished_at IS NULL AND rig_id = ?1", bow.id())
        > 0) {
      why.add("its set-up is begun");
    }
    if (waitsForACheck()) {
      why.add("to be checked");
    }
    return why;
  }

  private record Moment(String at, boolean clears) {}

  /** Whether something asks for a reason: told and not answered, or asked for. */
  private boolean somethingSpeaks() {
    return rows.number(
            "SELECT (SELECT count(*) FROM report r JOIN report_part p ON p.report_id = r.id"
                + " WHERE r.answer IS NULL AND p.item_id IN (%1$s))".formatted(ids())
                + " + (SELECT count(*) FROM upkeep_task WHERE closed_by_record IS NULL AND item_id IN (%1$s))"
                    .formatted(ids()))
        > 0;
  }

  /** Back, or checked, and not put back or set up since. */
  private boolean waitsForACheck() {
    List<Moment> moments =
        rows.list(
            Moment.class,
            """
            SELECT back_at AS at, 0 AS clears FROM loan_line WHERE rig_id = ?1 AND back_at IS NOT NULL
            UNION ALL SELECT happened_at, released_at IS NOT NULL FROM bow_check WHERE rig_id = ?1
               AND id NOT IN (SELECT d.check_id FROM moved d JOIN move m ON m.id = d.move_id
                               WHERE d.check_id IS NOT NULL AND m.undone_at IS NOT NULL)
            UNION ALL SELECT finished_at, 1 FROM set_up WHERE rig_id = ?1 AND finished_at IS NOT NULL
            ORDER BY 1, 2""",
            bow.id());
    return !moments.isEmpty() && !moments.get(moments.size() - 1).clears();
  }

  private <T> T some(List<T> of) {
    return of.get(chance.nextInt(of.size()));
  }
}
