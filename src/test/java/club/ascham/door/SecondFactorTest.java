package club.ascham.door;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.id.AccountId;
import club.ascham.people.FreshSecrets;
import club.ascham.people.OneTimeCode;
import club.ascham.people.RecoveryCode;
import club.ascham.people.SharedSecret;
import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.story.VerifyRecord;
import club.ascham.time.TestClock;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class SecondFactorTest {
  private static final Pattern LINK = Pattern.compile("http[^<]+?(/join/[^<]+)</span>");
  private static final Pattern SECRET = Pattern.compile("id=\"secret\">([A-Z2-7 ]+)<");
  private static final Pattern CODES = Pattern.compile("<span class=\"code\">([A-Z2-7-]{29})<");
  private static final Pattern KEY = Pattern.compile("<span class=\"code big\">([^<]+)<");
  private static final String PASSWORD = "marmot under 7 teacups";
  private static final String ANOTHER = "brisk violet ladders 41";
  private static final String NO_CODE = "x00000";
  private static final String WRONG = "not the code of this moment";

  @Inject Rows rows;
  @Inject VerifyRecord verifyRecord;
  @Inject Settings settings;

  private Instant now;

  /** The middle of a half-minute, so that a test never runs over its edge. */
  @BeforeEach
  void stopTheClock() {
    long step = OneTimeCode.stepOf(TestClock.running().instant());
    setClock(Instant.ofEpochSecond(step * OneTimeCode.STEP.toSeconds() + 15));
  }

  @AfterEach
  void putTheRuleBack() {
    rows.change(
        "UPDATE door_rule SET second_step_for = 'NOBODY' WHERE second_step_for <> 'NOBODY'");
  }

  private void setClock(Instant moment) {
    now = moment;
    QuarkusMock.installMockForType(Clock.fixed(moment, ZoneOffset.UTC), Clock.class);
  }

  private void later(Duration duration) {
    setClock(now.plus(duration));
  }

  /** Someone with an account, whose phone knows the secret once the second step is on. */
  private final class Holder {
    final String name;
    Visitor browser;
    byte[] secret;
    List<String> recoveryCodes;

    private Holder(String role) {
      name = role + "-" + System.nanoTime();
      Visitor officer = officer();
      String link = found(LINK, officer.led("/people", Map.of("name", name, "role", role)));
      choose(link, PASSWORD);
      browser = signedInByPassword();
    }

    Visitor signedInByPassword() {
      Visitor visitor = gavePassword();
      visitor.get("/me").then().statusCode(200);
      return visitor;
    }

    Visitor gavePassword() {
      Visitor visitor = Visitor.unknown();
      visitor.get("/sign-in");
      visitor.post("/sign-in", Map.of("name", name, "password", PASSWORD)).then().statusCode(303);
      return visitor;
    }

    Holder withSecondStep() {
      secret = begin();
      Response shown = browser.post("/me/second-step/confirm", Map.of("code", code(0)));
      shown.then().statusCode(200).body(containsString("The second step is on"));
      recoveryCodes = CODES.matcher(shown.asString()).results().map(r -> r.group(1)).toList();
      browser.get("/me").then().statusCode(200);
      later(OneTimeCode.STEP);
      return this;
    }

    byte[] begin() {
      browser.get("/me");
      Response shown = browser.post("/me/second-step", Map.of("stepPassword", PASSWORD));
      return new Base32().decode(found(SECRET, shown).replace(" ", ""));
    }

    String code(int stepsAhead) {
      return OneTimeCode.at(secret, OneTimeCode.stepOf(now) + stepsAhead);
    }

    Response gives(Visitor visitor, String code) {
      visitor.get("/sign-in/code");
      return visitor.post("/sign-in/code", Map.of("code", code));
    }

    AccountId id() {
      return new AccountId(rows.number("SELECT id FROM account WHERE name = ?1", name));
    }
  }

  @Test
  void turnedOnWithPasswordAndCode_itIsAskedForAtTheNextSignIn_andThenEverythingIsOpen() {
    Holder pia = new Holder("volunteer");
    Visitor elsewhere = pia.signedInByPassword();
    pia.browser.get("/me").then().body(containsString("the password alone opens this account"));
    pia.browser
        .post("/me/second-step", Map.of("stepPassword", "a guess"))
        .then()
        .statusCode(422)
        .body(containsString("not the password until now"), not(containsString("id=\"secret\"")));
    pia.secret = pia.begin();
    assertEquals(SharedSecret.BYTES, pia.secret.length);
    pia.browser
        .post("/me/second-step/confirm", Map.of("code", NO_CODE))
        .then()
        .statusCode(422)
        .body(containsString(WRONG), containsString("class=\"qr\""));
    assertEquals(
        0, rows.number("SELECT count(*) FROM second_step WHERE account_id = ?1", pia.id()));
    pia.withSecondStep();
    assertEquals(RecoveryCode.HANDED_OUT, pia.recoveryCodes.size());
    elsewhere.get("/me").then().statusCode(302);
    pia.browser
        .get("/me")
        .then()
        .statusCode(200)
        .body(containsString("8 recovery codes are left"))
        .body(not(containsString(pia.recoveryCodes.get(0))));
    Visitor phone = pia.gavePassword();
    phone.get("/me").then().statusCode(302).header("Location", endsWith("/sign-in"));
    phone.get("/sign-in/code").then().statusCode(200).body(containsString("one-time-code"));
    pia.gives(phone, NO_CODE).then().statusCode(422).body(containsString(WRONG));
    phone.get("/rigs").then().statusCode(302);
    pia.gives(phone, pia.code(0)).then().statusCode(303).header("Location", endsWith("/rigs"));
    phone.get("/me").then().statusCode(200);
    phone.get("/sign-in/code").then().statusCode(303).header("Location", endsWith("/sign-in"));
  }

  @Test
  void aWrongPassword_isAnsweredAsThatOfAnAccountWithoutASecondStep() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor guesser = Visitor.unknown();
    guesser.get("/sign-in");
    String without =
        guesser.post("/sign-in", Map.of("name", "officer", "password", "guess")).asString();
    String with =
        guesser.post("/sign-in", Map.of("name", pia.name, "password", "guess")).asString();
    assertEquals(without.replace("value=\"officer\"", "value=\"" + pia.name + "\""), with);
    guesser.get("/sign-in/code").then().statusCode(303).header("Location", endsWith("/sign-in"));
  }

  @Test
  void aCode_isTakenOnce_andNoneBeforeIt() {
    Holder pia = new Holder("volunteer").withSecondStep();
    String before = pia.code(0);
    String next = pia.code(1);
    pia.gives(pia.gavePassword(), next).then().statusCode(303).header("Location", endsWith("/"));
    Visitor thief = pia.gavePassword();
    pia.gives(thief, next).then().statusCode(422).body(containsString(WRONG));
    pia.gives(thief, before).then().statusCode(422);
    later(OneTimeCode.STEP.multipliedBy(2));
    pia.gives(thief, pia.code(0)).then().statusCode(303).header("Location", endsWith("/"));
  }

  @Test
  void theCodeThatTurnedItOn_doesNotSignIn() {
    Holder pia = new Holder("volunteer");
    pia.withSecondStep();
    String proof = pia.code(-1);
    pia.gives(pia.gavePassword(), proof).then().statusCode(422);
  }

  @ParameterizedTest(name = "a phone {0} steps ahead: answered {1}")
  @CsvSource({"-2, 422", "-1, 303", "0, 303", "1, 303", "2, 422"})
  void aPhonesClock_mayBeOneStepOff_andNotTwo(int ahead, int status) {
    Holder pia = new Holder("volunteer").withSecondStep();
    later(OneTimeCode.STEP.multipliedBy(10));
    pia.gives(pia.gavePassword(), pia.code(ahead)).then().statusCode(status);
  }

  @Test
  void aRecoveryCode_standsForACodeOnce_howeverItIsTyped() {
    Holder pia = new Holder("volunteer").withSecondStep();
    String code = pia.recoveryCodes.get(3);
    Visitor without = pia.gavePassword();
    without.get("/sign-in/code");
    without
        .post("/sign-in/code", Map.of("recovery", code.toLowerCase().replace("-", " ")))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/"));
    without.get("/me").then().body(containsString("7 recovery codes are left"));
    assertEquals(
        List.of("Used a recovery code in the place of the second step."),
        rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1"));
    pia.gives(pia.gavePassword(), code).then().statusCode(422);
    Holder other = new Holder("volunteer").withSecondStep();
    other.gives(other.gavePassword(), pia.recoveryCodes.get(4)).then().statusCode(422);
  }

  @Test
  void newRecoveryCodes_takeThePlaceOfTheOld_andEndOtherSessions() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor elsewhere = pia.gavePassword();
    pia.gives(elsewhere, pia.code(0));
    later(OneTimeCode.STEP);
    pia.browser.get("/me");
    pia.browser
        .post(
            "/me/second-step/recovery-codes",
            Map.of("codesPassword", "x", "codesCode", pia.code(0)))
        .then()
        .statusCode(422)
        .body(containsString("not the password until now"));
    Response shown =
        pia.browser.post(
            "/me/second-step/recovery-codes",
            Map.of("codesPassword", PASSWORD, "codesCode", pia.code(0)));
    shown.then().statusCode(200);
    String fresh = found(CODES, shown);
    elsewhere.get("/me").then().statusCode(302);
    pia.browser.get("/me").then().statusCode(200).body(containsString("8 recovery codes"));
    pia.gives(pia.gavePassword(), pia.recoveryCodes.get(0)).then().statusCode(422);
    pia.gives(pia.gavePassword(), fresh).then().statusCode(303).header("Location", endsWith("/"));
  }

  @Test
  void itIsTurnedOff_withPasswordAndCode_andThenThePasswordSuffices() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor elsewhere = pia.gavePassword();
    pia.gives(elsewhere, pia.code(0));
    later(OneTimeCode.STEP);
    pia.browser.get("/me");
    for (Map<String, String> wrong :
        List.of(
            Map.of("offPassword", "x", "offCode", pia.code(0)),
            Map.of("offPassword", PASSWORD, "offCode", NO_CODE),
            Map.of("offPassword", PASSWORD))) {
      pia.browser.post("/me/second-step/off", wrong).then().statusCode(422);
    }
    pia.browser
        .post("/me/second-step/off", Map.of("offPassword", PASSWORD, "offCode", pia.code(0)))
        .then()
        .statusCode(303);
    elsewhere.get("/me").then().statusCode(302);
    pia.browser.get("/me").then().statusCode(200).body(containsString("Off: the password alone"));
    pia.signedInByPassword();
    for (String table : new String[] {"second_step", "code_taken", "recovery_code"}) {
      assertEquals(0, count(table, pia.id()), table);
    }
    assertEquals(200, api(pia.name, PASSWORD));
  }

  @Test
  void theSecret_isKnownToItsSessionAlone_andForAQuarterOfAnHour() {
    Holder pia = new Holder("volunteer");
    Visitor elsewhere = pia.signedInByPassword();
    pia.secret = pia.begin();
    elsewhere.get("/me");
    elsewhere
        .post("/me/second-step/confirm", Map.of("code", pia.code(0)))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/me"));
    later(FreshSecrets.LASTS);
    pia.browser.post("/me/second-step/confirm", Map.of("code", pia.code(0))).then().statusCode(303);
    assertEquals(0, count("second_step", pia.id()));
  }

  @Test
  void halfTheWay_lastsFiveMinutes_andEndsWithAnotherPassword() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor slow = pia.gavePassword();
    later(HalfWay.LASTS);
    pia.gives(slow, pia.code(0)).then().statusCode(303).header("Location", endsWith("/sign-in"));
    slow.get("/me").then().statusCode(302);
    Visitor thief = pia.gavePassword();
    choose(link(pia), ANOTHER);
    pia.gives(thief, pia.code(0)).then().statusCode(303).header("Location", endsWith("/sign-in"));
    thief.get("/me").then().statusCode(302);
  }

  @Test
  void aCookieMadeUp_orOfASession_isNotHalfTheWay() {
    for (String made : new String[] {"half-way.1.0.0", "AAAA", ""}) {
      given()
          .redirects()
          .follow(false)
          .cookie("ascham-half-way", made)
          .get("/sign-in/code")
          .then()
          .statusCode(303)
          .header("Location", endsWith("/sign-in"));
    }
  }

  @Test
  void wrongCodes_mustWait_butNotInABrowserWhereTheNameSignedInBefore_norARecoveryCode() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor thief = pia.gavePassword();
    Response last = null;
    for (int i = 0; i <= SignInRateLimit.FREE; i++) {
      last = pia.gives(thief, NO_CODE);
    }
    last.then()
        .statusCode(429)
        .header("Retry-After", matchesPattern("[0-9]+"))
        .body(containsString("Too many wrong codes"));
    pia.gives(thief, pia.code(0)).then().statusCode(429);
    pia.browser.get("/me");
    pia.browser.post("/sign-out", Map.of());
    pia.browser.get("/sign-in");
    pia.browser.post("/sign-in", Map.of("name", pia.name, "password", PASSWORD));
    pia.gives(pia.browser, pia.code(0)).then().statusCode(303).header("Location", endsWith("/"));
    pia.gives(pia.gavePassword(), pia.recoveryCodes.get(0))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/"));
    later(Duration.ofDays(1));
    pia.gives(pia.gavePassword(), pia.code(0)).then().statusCode(303);
  }

  @Test
  void aStrangerWithoutThePassword_keepsNobodyOut() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor stranger = Visitor.unknown();
    for (int i = 0; i < 3 * SignInRateLimit.FREE; i++) {
      stranger.get("/sign-in/code").then().statusCode(303);
      stranger.get("/sign-in");
      stranger
          .post("/sign-in/code", Map.of("code", NO_CODE))
          .then()
          .statusCode(303)
          .header("Location", endsWith("/sign-in"));
    }
    pia.gives(pia.gavePassword(), pia.code(0))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/"));
  }

  @Test
  void overHttpBasic_thePasswordIsWrong_andTheAccessKeyGoesOn() {
    Holder pia = new Holder("volunteer").withSecondStep();
    pia.browser.get("/me");
    String key = found(KEY, pia.browser.led("/me/key", Map.of("x", "y")));
    String right = basic(pia.name, PASSWORD).statusCode(401).extract().asString();
    assertEquals(basic(pia.name, "guess").statusCode(401).extract().asString(), right);
    assertEquals(200, api(pia.name, key));
    pia.browser.post("/sign-out", Map.of());
    assertEquals(200, api(pia.name, key));
  }

  @Test
  void anAccessKey_opensNoSession() {
    Holder pia = new Holder("volunteer");
    pia.browser.get("/me");
    String key = found(KEY, pia.browser.led("/me/key", Map.of("x", "y")));
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    visitor.post("/sign-in", Map.of("name", pia.name, "password", key)).then().statusCode(422);
  }

  @Test
  void aPasswordLink_doesNotLeadPastIt() {
    Holder pia = new Holder("volunteer").withSecondStep();
    choose(link(pia), ANOTHER);
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    visitor
        .post("/sign-in", Map.of("name", pia.name, "password", ANOTHER))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/sign-in/code"));
    visitor.get("/me").then().statusCode(302);
    pia.gives(visitor, pia.code(0)).then().statusCode(303).header("Location", endsWith("/me"));
  }

  @Test
  void anOfficer_takesItOffForWhoLostBoth_withAReason_andNeverTheirOwn() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Visitor officer = officer();
    String page = "/people/" + pia.id().value();
    officer.get("/people").then().body(containsString("second step"));
    officer.get(page).then().body(containsString("Second step on since"));
    officer.post(page + "/second-step/off", Map.of()).then().statusCode(422);
    pia.browser.get("/me").then().statusCode(200);
    officer
        .post(page + "/second-step/off", Map.of("why", "Phone in the lake; I know her voice."))
        .then()
        .statusCode(303);
    long entry = rows.number("SELECT max(id) FROM story");
    officer
        .get("/record/" + entry)
        .then()
        .body(containsString("Took the second step off an account."))
        .body(containsString("I know her voice."));
    pia.browser.get("/me").then().statusCode(302);
    pia.signedInByPassword();
    Holder chief = new Holder("officer").withSecondStep();
    try {
      String own = "/people/" + chief.id().value();
      chief.browser.get(own).then().body(not(containsString("Take the second step off")));
      chief
          .browser
          .post(own + "/second-step/off", Map.of("why", "It is easier without."))
          .then()
          .statusCode(422)
          .body(containsString("turned off under My account"));
      assertEquals(1, count("second_step", chief.id()));
    } finally {
      close(chief);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"officers", "everyone"})
  void whereTheClubAsksForOne_whoHasNoneIsLedToItBeforeAnythingElse(String rule) {
    Holder chief = new Holder("officer");
    Holder pia = new Holder("volunteer");
    try {
      chief.browser.get("/people").then().statusCode(200);
      chief.browser.post("/people/second-step", Map.of()).then().statusCode(422);
      assertEquals(200, api(chief.name, PASSWORD));
      String key = found(KEY, chief.browser.led("/me/key", Map.of("x", "y")));
      chief
          .browser
          .post("/people/second-step", Map.of("secondStepFor", rule))
          .then()
          .statusCode(303);
      for (String path : new String[] {"/", "/people", "/rigs", "/me/data", "/rules/club"}) {
        chief.browser.get(path).then().statusCode(303).header("Location", endsWith("/me"));
      }
      chief
          .browser
          .get("/me")
          .then()
          .statusCode(200)
          .body(containsString("Your club asks for one"));
      long before = rows.number("SELECT max(id) FROM story");
      chief.browser.post("/me/key", Map.of("x", "y")).then().statusCode(303);
      chief
          .browser
          .post("/people", Map.of("name", "nobody", "role", "officer"))
          .then()
          .statusCode(303)
          .header("Location", endsWith("/me"));
      assertEquals(before, rows.number("SELECT max(id) FROM story"));
      assertEquals(401, api(chief.name, PASSWORD), "else the password alone would open the API");
      assertEquals(200, api(chief.name, key));
      pia.browser.get("/rigs").then().statusCode(rule.equals("everyone") ? 303 : 200);
      chief.withSecondStep();
      chief.browser.get("/people").then().statusCode(200);
      chief
          .browser
          .post("/people/second-step", Map.of("secondStepFor", "nobody"))
          .then()
          .statusCode(303);
      pia.browser.get("/rigs").then().statusCode(200);
    } finally {
      putTheRuleBack();
      close(chief);
    }
  }

  @Test
  void erasingAPerson_takesItAway_andClosingAloneDoesNotOpenAWayPastIt() {
    Holder pia = new Holder("volunteer").withSecondStep();
    AccountId id = pia.id();
    String page = "/people/" + id.value();
    Visitor officer = officer();
    officer.get(page);
    officer.post(page + "/close", Map.of()).then().statusCode(303);
    assertEquals(1, count("second_step", id));
    officer.get(page + "/erase");
    officer.post(page + "/erase", Map.of("why", "They asked for it.")).then().statusCode(303);
    for (String table : new String[] {"second_step", "code_taken", "recovery_code"}) {
      assertEquals(0, count(table, id), table);
    }
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void onesOwnData_saysSinceWhen_andNoMore() {
    Holder pia = new Holder("volunteer");
    pia.browser.get("/me/data").then().body("secondStepSince", nullValue());
    pia.withSecondStep();
    String kept =
        rows.texts("SELECT sealed_secret FROM second_step WHERE account_id = ?1", pia.id()).get(0);
    pia.browser
        .get("/me/data")
        .then()
        .body("secondStepSince", notNullValue())
        .body("name", equalTo(pia.name))
        .body(
            allOf(
                not(containsString(kept)),
                not(containsString(SharedSecret.base32(pia.secret))),
                not(containsString(pia.recoveryCodes.get(0)))));
  }

  @Test
  void noSecret_standsInTheFileOrTheRecordOrAnExport() throws Exception {
    Holder pia = new Holder("volunteer").withSecondStep();
    String sealed =
        rows.texts("SELECT sealed_secret FROM second_step WHERE account_id = ?1", pia.id()).get(0);
    assertEquals(0, rows.number("SELECT count(*) FROM change WHERE instr(what, ?1) > 0", sealed));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM change WHERE table_name = 'second_step' AND row_id = ?1 AND instr(what, '\"secret\"') > 0",
            pia.id()),
        "that there is one is recorded");
    Path keyFile = new DataFolder(settings.dataDir()).secondStepKey();
    byte[] key = Files.readAllBytes(keyFile);
    if (Files.getFileStore(keyFile).supportsFileAttributeView("posix")) {
      assertEquals(
          "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(keyFile)));
    }
    int files = 0;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(everything()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] bytes = zip.readAllBytes();
        String name = entry.getName();
        files++;
        assertFalse(holds(bytes, key), name);
        assertFalse(holds(bytes, pia.secret), name);
        assertFalse(holds(bytes, text(SharedSecret.base32(pia.secret))), name);
        for (String code : pia.recoveryCodes) {
          assertFalse(holds(bytes, text(code)), name);
          assertFalse(holds(bytes, text(code.replace("-", ""))), name);
        }
        assertTrue(name.endsWith(".db") || !holds(bytes, text(sealed)), name);
      }
    }
    assertTrue(files > 5, "the lists, the record and the file were looked through");
  }

  @Test
  void withoutItsKey_noCodeIsRight_andRecoveryCodesAre() throws Exception {
    Holder pia = new Holder("volunteer").withSecondStep();
    Path keyFile = new DataFolder(settings.dataDir()).secondStepKey();
    Path aside = keyFile.resolveSibling("aside");
    Files.move(keyFile, aside);
    try {
      Visitor visitor = pia.gavePassword();
      pia.gives(visitor, pia.code(0)).then().statusCode(422);
      pia.gives(visitor, pia.recoveryCodes.get(0))
          .then()
          .statusCode(303)
          .header("Location", endsWith("/"));
    } finally {
      Files.move(aside, keyFile);
    }
    pia.gives(pia.gavePassword(), pia.code(0))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/"));
  }

  @Test
  void aRowCopiedToAnotherAccount_opensNothingThere() {
    Holder pia = new Holder("volunteer").withSecondStep();
    Holder pat = new Holder("volunteer").withSecondStep();
    rows.change(
        "UPDATE second_step SET sealed_secret = (SELECT sealed_secret FROM second_step WHERE account_id = ?1) WHERE account_id = ?2",
        pia.id(),
        pat.id());
    later(OneTimeCode.STEP);
    pia.gives(pat.gavePassword(), pia.code(0)).then().statusCode(422);
  }

  private static byte[] everything() {
    return as("officer")
        .get("/api/export/everything.zip")
        .then()
        .statusCode(200)
        .extract()
        .asByteArray();
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static boolean holds(byte[] bytes, byte[] part) {
    return new String(bytes, StandardCharsets.ISO_8859_1)
        .contains(new String(part, StandardCharsets.ISO_8859_1));
  }

  private long count(String table, AccountId account) {
    return rows.number("SELECT count(*) FROM " + table + " WHERE account_id = ?1", account);
  }

  private static Visitor officer() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    return officer;
  }

  private static void close(Holder holder) {
    officer().post("/people/" + holder.id().value() + "/close", Map.of()).then().statusCode(303);
  }

  private static String link(Holder holder) {
    return found(LINK, officer().led("/people/" + holder.id().value() + "/link", Map.of()));
  }

  private static void choose(String link, String password) {
    Visitor person = Visitor.unknown();
    person.get(link);
    person.post(link, Map.of("password", password)).then().statusCode(303);
  }

  private static String found(Pattern pattern, Response shown) {
    shown.then().statusCode(200);
    Matcher found = pattern.matcher(shown.asString());
    assertTrue(found.find(), () -> pattern + " in " + shown.asString());
    return found.group(1);
  }

  private static int api(String name, String secret) {
    return basic(name, secret).extract().statusCode();
  }

  private static ValidatableResponse basic(String name, String secret) {
    return given().auth().preemptive().basic(name, secret).get("/api/upkeep?size=1").then();
  }
}
