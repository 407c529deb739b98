package club.ascham.pressed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.pressed.FormsToPress.Form;
import club.ascham.store.Rows;
import club.ascham.web.FormOnPage;
import club.ascham.web.Visitor;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every form that saves carries a key on its page: pressed twice it leads to where the first press
 * led and does nothing more, and with another value it is told that it was another one.
 */
@QuarkusTest
@TestProfile(OwnClub.class)
class RepeatedFormTest {
  private static final String LOOKS = "it looks, and changes nothing";
  private static final String NOBODY =
      "it carries a password or a code, and nobody is signed in whose key it could be";
  private static final String SECRET =
      "it carries a password or a code, and pressed again it finds nothing left to do";

  private static final Map<String, String> WITHOUT_A_KEY =
      Map.ofEntries(
          Map.entry("/find", LOOKS),
          Map.entry("/loans", LOOKS),
          Map.entry("/borrowers", LOOKS),
          Map.entry("/record/verify", LOOKS),
          Map.entry("/exchange/try", LOOKS),
          Map.entry("/plan/stop", "it stops what is being reckoned, and keeps nothing"),
          Map.entry("/sign-out", "pressed again it finds nobody signed in"),
          Map.entry("/sign-in", NOBODY),
          Map.entry("/sign-in/code", NOBODY),
          Map.entry("/join/{secret}", NOBODY),
          Map.entry("/first-officer", NOBODY),
          Map.entry("/me/password", SECRET),
          Map.entry("/me/second-step", SECRET),
          Map.entry("/me/second-step/confirm", SECRET),
          Map.entry("/me/second-step/recovery-codes", SECRET),
          Map.entry("/me/second-step/off", SECRET));

  /** Their pages offer them in a club of another kind, where they are pressed twice as well. */
  private static final Map<String, String> PRESSED_IN =
      Map.of("/server/read/{about}", "WorriesTest", "/upkeep/life/{kind}/shorten", "LifePagesTest");

  private static final Pattern FORM =
      Pattern.compile("(?s)<form\\b[^>]*method=\"post\"[^>]*>.*?</form>");
  private static final Pattern ACTION = Pattern.compile("action=\"([^\"]*)\"");

  @Inject FormsToPress forms;
  @Inject Rows rows;

  private static Visitor officer() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/me");
    return officer;
  }

  @Test
  void everyFormThatIsTaken_isAmongThem_orStandsInTheListWithItsReason() {
    Set<String> told = new TreeSet<>(forms.all().keySet());
    told.addAll(WITHOUT_A_KEY.keySet());
    told.addAll(PRESSED_IN.keySet());
    assertEquals(told, taken());
  }

  /** From the classes themselves, so that a new one is found. */
  private static Set<String> taken() {
    Set<String> taken = new TreeSet<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("club.ascham")) {
      String at =
          type.isAnnotatedWith(Path.class) ? type.getAnnotationOfType(Path.class).value() : "/api";
      if (!at.startsWith("/api")) {
        for (Method method : type.reflect().getDeclaredMethods()) {
          Path below = method.getAnnotation(Path.class);
          if (method.isAnnotationPresent(POST.class)) {
            taken.add((at + (below == null ? "" : below.value())).replaceAll(":[^}]*}", "}"));
          }
        }
      }
    }
    return taken;
  }

  @Test
  void everyFormThatIsShown_hasItsKeyFromTheOneTag_andNoneThatCarriesASecret() throws IOException {
    List<String> wrong = new ArrayList<>();
    Set<String> unkeyed = new TreeSet<>();
    int seen = 0;
    for (java.nio.file.Path template : templates()) {
      Matcher form = FORM.matcher(Files.readString(template));
      while (form.find()) {
        seen++;
        String html = form.group();
        Matcher action = ACTION.matcher(html);
        assertTrue(action.find(), html);
        boolean secret = html.contains("type=\"password\"") || html.contains("one-time-code");
        if (html.contains("{#form-top unkeyed=true /}")) {
          unkeyed.add(action.group(1));
        } else if (secret || !html.contains("{#form-top")) {
          wrong.add(template.getFileName() + " " + action.group(1));
        }
      }
    }
    assertTrue(seen > 70, "all were read: " + seen);
    // It hands on what another form sent, key and all.
    assertEquals(List.of("stale-form-page.html {address}"), wrong);
    assertEquals(new TreeSet<>(WITHOUT_A_KEY.keySet()), unkeyed);
  }

  private static List<java.nio.file.Path> templates() throws IOException {
    try (Stream<java.nio.file.Path> all =
        Files.walk(java.nio.file.Path.of("src/main/resources/templates"))) {
      return all.filter(file -> file.toString().endsWith(".html")).toList();
    }
  }

  @TestFactory
  Stream<DynamicTest> eachForm_pressedTwice_changesTheRecordOnce_andLeadsToTheSamePlace() {
    return forms.all().entrySet().stream()
        .map(
            form ->
                DynamicTest.dynamicTest(form.getKey(), () -> pressTwice(form.getValue().get())));
  }

  private void pressTwice(Form it) {
    Visitor officer = Visitor.signedInAs("officer");
    String page = it.page().apply(officer);
    Map<String, String> form =
        FormOnPage.on(page, it.address()).orElseThrow(() -> new AssertionError(page));
    String key = form.getOrDefault("once-key", "");
    assertTrue(key.length() >= 30, "it carries a key: " + form);
    form.putAll(it.typed());
    String before = newest();
    Response first = officer.post(it.address(), form);
    assertEquals(303, first.statusCode(), first.asString());
    String done = newest();
    assertNotEquals(before, done, "it did something");

    Response second = officer.post(it.address(), form);
    assertEquals(303, second.statusCode(), second.asString());
    assertEquals(first.header("Location"), second.header("Location"));
    assertEquals(done, newest(), "nothing was done twice");
    assertEquals(1, rows.number("SELECT count(*) FROM idempotency_key WHERE key = ?1", key));

    if (it.field() != null) {
      form.put(it.field(), it.otherwise());
      Response third = officer.post(it.address(), form);
      assertEquals(422, third.statusCode(), third.asString());
      String back = third.asString();
      String where = first.header("Location").replaceFirst("^https?://[^/]+", "");
      assertTrue(back.contains("This form was sent before with other values"), back);
      assertTrue(back.contains("<a href=\"" + where.replace("&", "&amp;") + "\">"), where);
      assertTrue(back.contains(it.otherwise()), "what was typed is still there");
      assertEquals(done, newest(), "another body changed nothing");
    }
  }

  @Test
  void anothersKey_isTheirOwn() {
    Form form = forms.all().get("/items/{code}/withdraw").get();
    Map<String, String> sent = new HashMap<>(form.typed());
    sent.put("once-key", "shared");
    officer().post(form.address(), sent).then().statusCode(303);
    sent.put(form.field(), form.otherwise());
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/me");
    volunteer.post(form.address(), sent).then().statusCode(303);
    assertEquals(2, rows.number("SELECT count(*) FROM idempotency_key WHERE key = 'shared'"));
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
    String page = forms.all().get("/receive/{loan}").get().address();
    Map<String, String> form = new HashMap<>();
    form.put("allBack", "yes");
    form.put("words", "I heard a crack when I drew it.");
    form.put("once-key", "asked-first");
    officer.post(page, form).then().statusCode(422);
    assertEquals(0, rows.number("SELECT count(*) FROM idempotency_key WHERE key = 'asked-first'"));
    form.put("notSo", "on");
    officer.post(page, form).then().statusCode(303);
  }

  /** How far the record goes, and which sessions ended, which it does not tell. */
  private String newest() {
    return rows.number("SELECT max(id) FROM change")
        + " "
        + rows.number("SELECT max(id) FROM story")
        + " "
        + rows.number("SELECT count(*) FROM session WHERE ended_at IS NOT NULL");
  }
}
