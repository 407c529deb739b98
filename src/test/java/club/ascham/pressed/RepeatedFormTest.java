package club.ascham.pressed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.check.CheckBench;
import club.ascham.loan.KitRoom;
import club.ascham.loan.KitRoom.ReadyRig;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A form that is sent twice: led to what the first press did, or told that it was another one. */
@QuarkusTest
@TestProfile(OwnClub.class)
class RepeatedFormTest {
  @Inject KitRoom room;
  @Inject CheckBench bench;
  @Inject ClubTime time;
  @Inject Rows rows;

  private Visitor officer() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/me");
    return officer;
  }

  @Test
  void anIssue() {
    ReadyRig rig = room.aReadyRig(20);
    Map<String, String> form = new HashMap<>();
    form.put("name", "Orla Wensum");
    form.put("contact", "07700 900333");
    form.put("hand", "right");
    form.put("drawLength", "27 in");
    form.put("ageBand", "adult");
    form.put("experience", "beginner");
    form.put("rig", Long.toString(rig.id().value()));
    form.put("dueWeeks", "6");
    form.put("termsAccepted", "on");
    form.put("briefingGiven", "on");
    holds("/issue", form, "name", "Wilhelmina Marram");
  }

  @Test
  void aReceipt() {
    long loan = loan();
    holds("/receive/" + loan, Map.of("allBack", "yes"), "words", "It creaked a little.");
  }

  @Test
  void aNewItem() {
    holds(
        "/register/new",
        Map.of("kind", "string", "forBowIn", "68", "material", "polyester", "strands", "12"),
        "model",
        "Longline of our own");
  }

  @Test
  void aCheck() {
    CheckBench.Bow bow = bench.received();
    holds(
        "/check/" + bow.rig().value(),
        Map.of(
            "allAsListed", "on",
            "brace", "216 mm",
            "braceFrom", "grip-throat",
            "tillerUpper", "190 mm",
            "tillerLower", "186 mm",
            "string", "fine",
            "limbs", "fine",
            "bolts", "fine"),
        "tillerLower",
        "187.5 mm");
  }

  @Test
  void aWithdrawal() {
    String limbs = room.aReadyRig(20).limbs().code();
    holds(
        "/items/" + limbs + "/withdraw",
        Map.of("why", "Upper limb looks twisted."),
        "why",
        "Lower limb looks twisted instead.");
  }

  @Test
  void theFormThatComesBack_hasAKeyOfItsOwn_soThatBothMayBeMeant() {
    Visitor officer = officer();
    Map<String, String> form = new HashMap<>();
    form.put("kind", "stringer");
    form.put("stringerKind", "tip-to-tip");
    form.put("bowFromIn", "48");
    form.put("bowToIn", "60");
    form.put("once-key", "stringers");
    officer.post("/register/new", form).then().statusCode(303);
    form.put("bowToIn", "62");
    String back = officer.post("/register/new", form).then().statusCode(422).extract().asString();
    String key = back.replaceAll("(?s).*name=\"once-key\" value=\"([^\"]+)\".*", "$1");
    assertFalse(key.contains("stringers") || key.length() > 40, key);
    form.put("once-key", key);
    officer.post("/register/new", form).then().statusCode(303);
    assertEquals(
        2, rows.number("SELECT count(*) FROM idempotency_key WHERE key IN ('stringers', ?1)", key));
  }

  @Test
  void whatNobodyAnsweredYet_isNotKept_andTheAnswerGoesUnderTheSameKey() {
    Visitor officer = officer();
    long loan = loan();
    Map<String, String> form = new HashMap<>();
    form.put("allBack", "yes");
    form.put("words", "I heard a crack when I drew it.");
    form.put("once-key", "asked-first");
    officer.post("/receive/" + loan, form).then().statusCode(422);
    assertEquals(0, rows.number("SELECT count(*) FROM idempotency_key WHERE key = 'asked-first'"));
    form.put("notSo", "on");
    officer.post("/receive/" + loan, form).then().statusCode(303);
  }

  /** Pressed twice it leads where the first press led; with another value the form comes back. */
  private void holds(String page, Map<String, String> values, String field, String otherwise) {
    Visitor officer = officer();
    Map<String, String> form = new HashMap<>(values);
    form.put("once-key", "form of " + page);
    Response first = officer.post(page, form);
    assertEquals(303, first.statusCode(), first.asString());
    String done = newest();
    Response second = officer.post(page, form);
    assertEquals(303, second.statusCode());
    assertEquals(first.header("Location"), second.header("Location"));
    assertEquals(done, newest(), "nothing was made twice");

    form.put(field, otherwise);
    Response third = officer.post(page, form);
    assertEquals(422, third.statusCode());
    String back = third.asString();
    String where = first.header("Location").replaceFirst("^https?://[^/]+", "");
    assertTrue(back.contains("This form was sent before with other values"), back);
    assertTrue(back.contains("<a href=\"" + where.replace("&", "&amp;") + "\">"), where);
    assertTrue(back.contains(otherwise), "what was typed is still there");
    assertEquals(done, newest(), "another body changed nothing");

    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/me");
    form.putAll(values);
    String theirs = volunteer.post(page, form).asString();
    assertFalse(theirs.contains("This form was sent before"), "another person's key is their own");
  }

  private long loan() {
    return room.lent(
        room.aReadyRig(20),
        "Nell Harker",
        time.today().minusDays(14).toString(),
        time.today().plusDays(7).toString());
  }

  private String newest() {
    return rows.number("SELECT max(id) FROM change")
        + " "
        + rows.number("SELECT max(id) FROM story");
  }
}
