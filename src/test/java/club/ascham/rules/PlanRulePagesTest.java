package club.ascham.rules;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.plan.Kind;
import club.ascham.store.Rows;
import club.ascham.upkeep.Work;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class PlanRulePagesTest {
  @Inject PlanRules rules;
  @Inject Rows rows;

  private Map<String, String> basisForm() {
    PlanRules.Basis basis = rules.basis();
    Map<String, String> form = new HashMap<>(basis.typed().all());
    rules.minutes().forEach((work, minutes) -> form.put(work.word(), String.valueOf(minutes)));
    form.put("version", String.valueOf(basis.version()));
    return form;
  }

  private Map<String, String> termsForm(Kind kind) {
    PlanRules.Terms terms = of(kind);
    return new HashMap<>(
        Map.of(
            "price", "12.50",
            "leadDays", String.valueOf(terms.leadDays()),
            "minutes", String.valueOf(terms.minutes()),
            "years", String.valueOf(terms.years()),
            "failureTimes", String.valueOf(terms.failureTimes()),
            "source", "The dealer's list.",
            "version", String.valueOf(terms.version())));
  }

  private PlanRules.Terms of(Kind kind) {
    return rules.terms().stream().filter(t -> t.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void hoursAndTimes_areChanged_told_andShownWithWhoDid() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/plan").then().statusCode(200);
    Map<String, String> form = basisForm();
    form.put("hoursAWeek", "4.5");
    form.put("bolt-inspection", "20");
    form.put("source", "Counted in May.");
    officer.post("/rules/plan", form).then().statusCode(303);
    assertEquals(4.5, rules.basis().hoursAWeek());
    assertEquals(20, rules.minutes().get(Work.BOLT_INSPECTION));
    officer.get("/rules").then().body(containsString("4.5 hours a week"));
    assertEquals(
        "Changed what the plan takes for granted.",
        rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1").get(0));
  }

  @Test
  void aPrice_isChanged_andLeftEmptyMeansWhatWasPaid() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/plan/stringer").then().statusCode(200);
    Map<String, String> form = termsForm(Kind.STRINGER);
    officer.post("/rules/plan/stringer", form).then().statusCode(303);
    assertEquals(1250, of(Kind.STRINGER).priceMinor());
    Map<String, String> without = termsForm(Kind.STRINGER);
    without.remove("price");
    officer.post("/rules/plan/stringer", without).then().statusCode(303);
    assertTrue(of(Kind.STRINGER).priceMinor() == null);
  }

  @ParameterizedTest
  @CsvSource({
    "hoursAWeek, -1", "hoursAWeek, ''", "termsAYear, 0", "archersACourse, 1.5",
    "earlyFailurePercent, 95", "bolt-inspection, 0", "source, ''", "version, x"
  })
  void whatCannotBe_isRefusedAtItsField_andNothingIsChanged(String field, String text) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/plan");
    PlanRules.Basis before = rules.basis();
    Map<String, String> form = basisForm();
    form.put("eveningsACourse", "9");
    form.put(field, text);
    officer
        .post("/rules/plan", form)
        .then()
        .statusCode(422)
        .body(containsString(field.equals("version") ? "form-error" : field + "-error"));
    assertEquals(before, rules.basis());
  }

  @Test
  void whoeverSavesSecond_isTold_andNothingIsLost() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/plan/riser");
    Map<String, String> first = termsForm(Kind.RISER);
    Map<String, String> second = termsForm(Kind.RISER);
    second.put("price", "99");
    officer.post("/rules/plan/riser", first).then().statusCode(303);
    officer
        .post("/rules/plan/riser", second)
        .then()
        .statusCode(422)
        .body(containsString("Someone changed this"));
    assertEquals(1250, of(Kind.RISER).priceMinor());
  }

  @Test
  void aKindThatThePlanDoesNotKnow_isNotFound() {
    Visitor.signedInAs("officer").get("/rules/plan/sword").then().statusCode(404);
  }
}
