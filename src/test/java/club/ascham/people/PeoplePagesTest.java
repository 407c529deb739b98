package club.ascham.people;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Sent;
import club.ascham.store.Rows;
import club.ascham.story.VerifyRecord;
import club.ascham.time.TestClock;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PeoplePagesTest {
  private static final Pattern SECRET = Pattern.compile("<span class=\"code big\">([^<]+)</span>");

  private static final Pattern LINK =
      Pattern.compile("<span class=\"code\">http[^<]+?(/join/[^<]+)</span>");
  private static final String PASSWORD = "marmot under 7 teacups";
  private static final String ANOTHER = "brisk violet ladders 41";

  @Inject Rows rows;
  @Inject VerifyRecord verifyRecord;

  @Test
  void anAccountIsMade_itsLinkShownOnce_andWhoeverHoldsItChoosesThePassword() {
    String name = "petra-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people").then().statusCode(200);
    String link = invited(officer, name, "volunteer");
    officer.get("/people").then().body(containsString(name), not(containsString(link)));
    assertEquals(401, api(name, ""));
    Visitor petra = Visitor.unknown();
    petra.get(link).then().statusCode(200).body(containsString(name));
    petra.get(link).then().statusCode(200);
    petra.post(link, Map.of("password", PASSWORD)).then().statusCode(303);
    assertEquals(200, api(name, PASSWORD));
    invite(officer, name.toUpperCase(), "volunteer").then().statusCode(422);
    assertEquals(
        1, rows.number("SELECT count(*) FROM account WHERE lower(name) = ?1", name), "once only");
  }

  @Test
  void aLink_worksOnce_andSaysSoAfterwards() {
    String name = "pola-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String link = invited(officer, name, "committee");
    Visitor pola = Visitor.unknown();
    pola.get(link);
    pola.post(link, Map.of("password", PASSWORD)).then().statusCode(303);
    pola.post(link, Map.of("password", "another " + PASSWORD))
        .then()
        .statusCode(410)
        .body(containsString("It was used"), containsString("works only once"));
    pola.get(link).then().statusCode(410);
    assertEquals(200, api(name, PASSWORD));
  }

  @Test
  void aLink_endsAfterSevenDays_orWithANewerOne_orWithTheAccount() {
    String name = "pan-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String first = invited(officer, name, "committee");
    long id = id(name);
    String second = link(officer.led("/people/" + id + "/link", Map.of()));
    Visitor visitor = Visitor.unknown();
    visitor.get(first).then().statusCode(410).body(containsString("Ask an officer for a new one"));
    visitor.get(second).then().statusCode(200);
    QuarkusMock.installMockForType(
        Clock.offset(TestClock.running(), PasswordLinks.LASTS), Clock.class);
    visitor.get(second).then().statusCode(410);
    visitor.post(second, Map.of("password", PASSWORD)).then().statusCode(410);
    String third = link(Visitor.signedInAs("officer"), id);
    visitor.get(third).then().statusCode(200);
    officer = Visitor.signedInAs("officer");
    officer.get("/people");
    officer.post("/people/" + id + "/close", Map.of()).then().statusCode(303);
    visitor.get(third).then().statusCode(410);
  }

  @Test
  void aLinkPressedTwice_isOne_shownAgainToThatBrowserAlone_forSomeMinutes() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    Map<String, String> form =
        Map.of("name", "paz-" + System.nanoTime(), "role", "committee", "once-key", "paz");
    String link = link(officer.led("/people", form));
    long links = rows.number("SELECT count(*) FROM password_link");
    assertEquals(link, link(officer.led("/people", form)));
    assertEquals(links, rows.number("SELECT count(*) FROM password_link"));
    String page = "/people/" + id(form.get("name")) + "/link";
    assertEquals(link, link(officer.get(page)));
    Visitor.signedInAs("officer").get(page).then().statusCode(303);
    officer.get("/people/" + id("committee") + "/link").then().statusCode(303);
    QuarkusMock.installMockForType(
        Clock.offset(TestClock.running(), FreshSecrets.LASTS), Clock.class);
    officer.get(page).then().statusCode(303);
    Visitor.unknown().get(link).then().statusCode(200);
  }

  @Test
  void noKeyIsKept_ofAFormThatCarriesAPassword_orOfWhatIsSecret() {
    String name = "pixie-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "committee");
    Visitor pixie = signedIn(name, PASSWORD);
    pixie.get("/me");
    String secret = secret(pixie.led("/me/key", Map.of("once-key", "pixie")));
    pixie
        .post(
            "/me/password",
            Map.of("oldPassword", PASSWORD, "newPassword", ANOTHER, "once-key", "pixie"))
        .then()
        .statusCode(303);
    assertEquals(
        List.of(
            "POST /me/key pixie account " + id(name) + " " + Sent.of(Map.of()).digest(Set.of())),
        rows.texts(
            """
            SELECT call || ' ' || key || ' ' || made_kind || ' ' || made_id || ' ' || digest
              FROM idempotency_key WHERE account_id = ?1""",
            id(name)));
    assertEquals(200, api(name, secret));
  }

  @Test
  void aLinkThatWasNeverMade_tellsNothing() {
    Visitor.unknown()
        .get("/join/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")
        .then()
        .statusCode(404)
        .body(containsString("No such link"));
  }

  @Test
  void onlyTheDigestOfALink_isKept() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String link = invited(officer, "pepa-" + System.nanoTime(), "committee");
    String secret = link.substring("/join/".length());
    assertEquals(32, secret.length());
    assertEquals(0, rows.number("SELECT count(*) FROM password_link WHERE digest = ?1", secret));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM password_link WHERE digest = ?1", Passwords.digest(secret)));
  }

  @Test
  void aPasswordThatManyChoose_isRefusedAtItsField() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String link = invited(officer, "pip-" + System.nanoTime(), "committee");
    Visitor pip = Visitor.unknown();
    pip.get(link);
    for (String common : new String[] {"short", "password1234", "111111111111"}) {
      pip.post(link, Map.of("password", common))
          .then()
          .statusCode(422)
          .body(containsString("field-error"));
    }
    pip.get(link).then().statusCode(200);
  }

  @Test
  void thePermit_isGivenUntilADay() {
    String name = "pim-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    invite(officer, name, "volunteer");
    long id = id(name);
    officer.get("/people/" + id).then().statusCode(200);
    officer
        .post(
            "/people/" + id,
            Map.of("role", "volunteer", "permitUntil", "31/12/2099", "version", "0"))
        .then()
        .statusCode(422)
        .body(containsString("At most five years"));
    officer
        .post(
            "/people/" + id,
            Map.of("role", "committee", "permitUntil", "2027-03-01", "version", "0"))
        .then()
        .statusCode(422);
    officer
        .post(
            "/people/" + id,
            Map.of("role", "volunteer", "permitUntil", "2027-03-01", "version", "0"))
        .then()
        .statusCode(303);
    officer
        .post("/people/" + id, Map.of("role", "committee", "version", "0"))
        .then()
        .statusCode(422)
        .body(containsString("Someone changed this account"));
    assertEquals(
        List.of("2027-03-01"), rows.texts("SELECT permit_until FROM account WHERE id = ?1", id));
  }

  @Test
  void aPasswordChosenByANewLink_shutsTheOldOneAndEverySession() {
    String name = "paul-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "committee");
    Visitor paul = signedIn(name, PASSWORD);
    String link = link(officer.led("/people/" + id(name) + "/link", Map.of()));
    assertEquals(200, api(name, PASSWORD), "until the link is used the old one works");
    paul.get("/me").then().statusCode(200);
    Visitor elsewhere = Visitor.unknown();
    elsewhere.get(link);
    elsewhere.post(link, Map.of("password", ANOTHER)).then().statusCode(303);
    assertEquals(401, api(name, PASSWORD));
    assertEquals(200, api(name, ANOTHER));
    paul.get("/me").then().statusCode(302);
  }

  @Test
  void aClosedAccount_opensNothing_andOpenAgainNeedsANewPassword() {
    String name = "pat-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "volunteer");
    long id = id(name);
    Visitor pat = signedIn(name, PASSWORD);
    pat.get("/me");
    String key = secret(pat.led("/me/key", Map.of()));
    officer.post("/people/" + id + "/close", Map.of()).then().statusCode(303);
    pat.get("/me").then().statusCode(302);
    assertEquals(401, api(name, PASSWORD));
    officer.post("/people/" + id + "/link", Map.of()).then().statusCode(422);
    officer.post("/people/" + id + "/reopen", Map.of()).then().statusCode(303);
    pat.get("/me").then().statusCode(302);
    assertEquals(401, api(name, PASSWORD));
    assertEquals(401, api(name, key));
    assertEquals(401, api(name, ""), "no password is no empty password");
    String link = link(officer.led("/people/" + id + "/link", Map.of()));
    pat.get(link);
    pat.post(link, Map.of("password", ANOTHER)).then().statusCode(303);
    assertEquals(200, api(name, ANOTHER));
  }

  @Test
  void aClosedAccount_isErased_andItsDeedsStayUnderANumber() {
    String name = "Quilla-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "volunteer");
    long id = id(name);
    officer.get("/people/" + id + "/erase").then().statusCode(404);
    officer
        .post("/people/" + id + "/erase", Map.of("why", "They asked for it."))
        .then()
        .statusCode(404);
    officer.post("/people/" + id + "/close", Map.of()).then().statusCode(303);
    officer.get("/people/" + id + "/erase").then().statusCode(200).body(containsString(name));
    officer
        .post("/people/" + id + "/erase", Map.of())
        .then()
        .statusCode(422)
        .body(containsString("Why is it erased?"));
    officer
        .post("/people/" + id + "/erase", Map.of("why", "They asked for it."))
        .then()
        .statusCode(303);
    officer
        .get("/people/" + id)
        .then()
        .body(containsString("Closed account " + id), not(containsString(name)));
    officer.post("/people/" + id + "/reopen", Map.of()).then().statusCode(422);
    officer.get("/people/" + id + "/erase").then().statusCode(404);
    assertEquals(0, rows.number("SELECT count(*) FROM personal WHERE value LIKE ?1", "%Quilla-%"));
    assertEquals(0, rows.number("SELECT count(*) FROM session WHERE account_id = ?1", id));
    assertTrue(
        rows.number("SELECT count(*) FROM story WHERE account_id = ?1", id) > 0, "its deeds stay");
    long entry = rows.number("SELECT max(id) FROM story");
    officer
        .get("/record/" + entry)
        .then()
        .body(containsString("Erased what was kept of an account."))
        .body(containsString("They asked for it."), containsString("<td data-label=\"To\">erased"));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void onesOwnData_isHandedOut_andAnothersOnlyToOfficers() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/me/data")
        .then()
        .statusCode(200)
        .header("Content-Disposition", containsString("attachment"))
        .body("name", Matchers.equalTo("volunteer"))
        .body("role", Matchers.equalTo("volunteer"))
        .body("signedInSince.size()", Matchers.greaterThan(0))
        .body(not(containsString("$2")));
    volunteer.get("/people/" + id("committee") + "/data").then().statusCode(403);
    Visitor.signedInAs("officer")
        .get("/people/" + id("committee") + "/data")
        .then()
        .statusCode(200)
        .body("name", Matchers.equalTo("committee"));
  }

  @Test
  void theLastOfficer_staysOne() {
    Visitor officer = Visitor.signedInAs("officer");
    long id = id("officer");
    officer.get("/people/" + id);
    long others =
        rows.number(
            "SELECT count(*) FROM account WHERE role = 'OFFICER' AND closed_on IS NULL AND id <> ?1",
            id);
    assertEquals(0, others, "the demo club has one officer");
    officer
        .post("/people/" + id + "/close", Map.of())
        .then()
        .statusCode(422)
        .body(containsString("last officer"));
    long version = rows.number("SELECT version FROM account WHERE id = ?1", id);
    officer
        .post("/people/" + id, Map.of("role", "volunteer", "version", Long.toString(version)))
        .then()
        .statusCode(422)
        .body(containsString("last officer"));
  }

  @Test
  void onesOwnPassword_isChangedOnlyByWhoKnowsIt_andEndsEverySession() {
    String name = "pia-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "committee");
    Visitor pia = signedIn(name, PASSWORD);
    Visitor piaElsewhere = signedIn(name, PASSWORD);
    pia.get("/me").then().statusCode(200);
    pia.post("/me/password", Map.of("oldPassword", "wrong", "newPassword", ANOTHER))
        .then()
        .statusCode(422)
        .body(containsString("not the password until now"));
    pia.post("/me/password", Map.of("oldPassword", PASSWORD, "newPassword", "short"))
        .then()
        .statusCode(422)
        .body(containsString("At least 12"));
    piaElsewhere.get("/me").then().statusCode(200);
    pia.post("/me/unit", Map.of("unit", "millimetre")).then().statusCode(303);
    pia.post("/me/password", Map.of("oldPassword", PASSWORD, "newPassword", ANOTHER))
        .then()
        .statusCode(303);
    pia.get("/me").then().statusCode(302);
    piaElsewhere.get("/me").then().statusCode(302);
    assertEquals(401, api(name, PASSWORD));
    assertEquals(200, api(name, ANOTHER));
    assertEquals(
        List.of("MILLIMETRE"), rows.texts("SELECT length_unit FROM account WHERE name = ?1", name));
  }

  @Test
  void aPassword_isTakenToTheLetter_blanksAtItsEndsAndAll() {
    String name = "pam-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String link = invited(officer, name, "committee");
    Visitor pam = Visitor.unknown();
    pam.get(link);
    pam.post(link, Map.of("password", " " + PASSWORD + " ")).then().statusCode(303);
    assertEquals(401, api(name, PASSWORD));
    assertEquals(200, api(name, " " + PASSWORD + " "));
    signedIn(name, " " + PASSWORD + " ").get("/me").then().statusCode(200);
  }

  @Test
  void anAccessKey_opensTheApi_untilItIsRevoked() {
    String name = "prue-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "committee");
    Visitor prue = signedIn(name, PASSWORD);
    prue.get("/me");
    String key = secret(prue.led("/me/key", Map.of()));
    assertTrue(key.length() >= 32);
    assertEquals(200, api(name, key));
    prue.get("/me").then().body(not(containsString(key)), containsString("There is a key"));
    prue.post("/me/key/revoke", Map.of()).then().statusCode(303);
    assertEquals(401, api(name, key));
  }

  private static final Pattern NUMBER =
      Pattern.compile("name=\"session\" value=\"(\\d+)\"><button class=\"button quiet\">End it");

  @Test
  void onesSessions_areListed_andEachIsEndedAlone() {
    String name = "polly-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "volunteer");
    Visitor phone = signedIn(name, PASSWORD);
    phone.get("/me").then().body(containsString("this browser"), not(containsString(">End it<")));
    Visitor tablet = signedIn(name, PASSWORD);
    String page = tablet.get("/me").asString();
    String other = found(NUMBER, tablet.get("/me"));
    assertTrue(page.contains("last used"), page);
    Visitor stranger = Visitor.signedInAs("volunteer");
    stranger.get("/me");
    stranger.post("/me/sessions/end", Map.of("session", other)).then().statusCode(303);
    phone.get("/me").then().statusCode(200);
    tablet.post("/me/sessions/end", Map.of("session", other)).then().statusCode(303);
    phone.get("/me").then().statusCode(302);
    tablet.get("/me").then().statusCode(200).body(not(containsString(">End it<")));
    tablet.post("/me/sessions/end", Map.of("session", "x")).then().statusCode(303);
    tablet.get("/me").then().statusCode(200);
  }

  @Test
  void oneSession_canBeSignedOut_whileTheOthersGoOn() {
    String name = "posy-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "volunteer");
    Visitor phone = signedIn(name, PASSWORD);
    long number = rows.number("SELECT max(id) FROM session");
    Visitor tablet = signedIn(name, PASSWORD);
    phone.get("/me");
    phone
        .post("/me/sessions/end", Map.of("session", Long.toString(number)))
        .then()
        .statusCode(303)
        .header("Location", containsString("/sign-in"));
    phone.get("/me").then().statusCode(302);
    tablet.get("/me").then().statusCode(200);
  }

  @Test
  void anOfficer_signsSomeoneOutEverywhere_andIsToldOf() {
    String name = "prim-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    join(officer, name, "volunteer");
    Visitor phone = signedIn(name, PASSWORD);
    Visitor tablet = signedIn(name, PASSWORD);
    officer.get("/people/" + id(name));
    officer.post("/people/" + id(name) + "/end-sessions", Map.of()).then().statusCode(303);
    phone.get("/me").then().statusCode(302);
    tablet.get("/me").then().statusCode(302);
    assertEquals(
        List.of("Ended every session of an account."),
        rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1"));
    signedIn(name, PASSWORD).get("/me").then().statusCode(200);
  }

  @Test
  void onlyOfficers_lookAfterPeople() {
    for (String name : new String[] {"volunteer", "committee"}) {
      Visitor visitor = Visitor.signedInAs(name);
      visitor.get("/me").then().statusCode(200);
      visitor.get("/people").then().statusCode(403);
      visitor.post("/people", Map.of("name", "x", "role", "officer")).then().statusCode(403);
    }
  }

  private static Response invite(Visitor officer, String name, String role) {
    return officer.post("/people", Map.of("name", name, "role", role));
  }

  private static String invited(Visitor officer, String name, String role) {
    return link(officer.led("/people", Map.of("name", name, "role", role)));
  }

  private static void join(Visitor officer, String name, String role) {
    String link = invited(officer, name, role);
    Visitor person = Visitor.unknown();
    person.get(link);
    person.post(link, Map.of("password", PASSWORD)).then().statusCode(303);
  }

  private static Visitor signedIn(String name, String password) {
    Visitor person = Visitor.unknown();
    person.get("/sign-in");
    person.post("/sign-in", Map.of("name", name, "password", password)).then().statusCode(303);
    return person;
  }

  private static String link(Visitor officer, long id) {
    officer.get("/people/" + id);
    return link(officer.led("/people/" + id + "/link", Map.of()));
  }

  private static String link(Response shown) {
    return found(LINK, shown);
  }

  private static String secret(Response shown) {
    return found(SECRET, shown);
  }

  private static String found(Pattern pattern, Response shown) {
    shown.then().statusCode(200);
    Matcher secret = pattern.matcher(shown.asString());
    assertTrue(secret.find(), "a secret is shown");
    return secret.group(1);
  }

  private long id(String name) {
    return rows.number("SELECT id FROM account WHERE name = ?1", name);
  }

  private static int api(String name, String secret) {
    return given().auth().preemptive().basic(name, secret).get("/api/upkeep?size=1").statusCode();
  }
}
