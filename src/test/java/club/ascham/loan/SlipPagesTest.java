package club.ascham.loan;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What somebody at home reads, who was not there when the bow was handed over. */
@QuarkusTest
class SlipPagesTest {
  private static final Club.OnTheSlip OURS =
      new Club.OnTheSlip(
          "01632 960142",
          "bows@fen.example",
          "Back by the day on the slip.\nNobody else shoots it.",
          Length.ofMm(6),
          "Our own eye, over ten years.");

  @Inject ClubFixture fixture;
  @Inject Club club;
  @Inject ClubTime time;
  @Inject Rows rows;

  private Club.OnTheSlip before;

  @BeforeEach
  void ourOwnSlip() {
    var rules = club.rules();
    before =
        new Club.OnTheSlip(
            rules.telephone(),
            rules.mail(),
            rules.terms(),
            rules.braceMayMove(),
            rules.braceMayMoveSource());
    says(OURS);
  }

  @AfterEach
  void asItWas() {
    says(before);
  }

  private void says(Club.OnTheSlip slip) {
    club.introduce(slip);
    club.forget();
  }

  @Test
  void theClubIsReached_theTermsAreSigned_andItIsPrintedAtOnePress() {
    slip(issued(Map.of()))
        .body(
            containsString("01632 960142, bows@fen.example"),
            containsString("Back by the day on the slip."),
            containsString("Nobody else shoots it."),
            containsString("Accepted, borrower"),
            containsString("data-print"),
            containsString("more than 1/4 in · 6 mm off"),
            not(containsString("wooden bows")));
  }

  @Test
  void aClubThatNamesNoFigureAndNoNumber_standsBehindNone() {
    says(new Club.OnTheSlip(null, null, null, null, null));
    slip(issued(Map.of()))
        .body(
            containsString("If the brace height is not what stands here,"),
            containsString("Back by the day agreed."),
            not(containsString("Anything wrong, lost or late")));
  }

  @Test
  void whatWasShown_standsWithWhoAndWhen_andSoItDoesOnTheLoan() {
    long loan = issued(Map.of());
    assertEquals(
        1,
        rows.number(
            """
            SELECT count(*) FROM loan l JOIN account a ON a.id = l.briefed_by
             WHERE l.id = ?1 AND a.name = 'officer' AND l.briefed_at = l.issued_at""",
            loan));
    slip(loan)
        .body(containsString("Shown by officer, "), containsString("how long the arrows must be."));
    Visitor.signedInAs("officer")
        .get("/loans/" + loan)
        .then()
        .body(containsString("Handling shown"), not(containsString("not recorded")));
    long old = fixture.lend(fixture.aBowReadyToGoOut(20), "Old Loan", "2026-02-01", "2099-03-01");
    slip(old).body(containsString("not recorded: ask the club to show how"));
  }

  @Test
  void aParent_readsWhoAnswers_andThatTheDrawIsAnEstimate() {
    slip(issued(
            Map.of(
                "ageBand", "from-15-to-16",
                "drawLength", "",
                "armSpan", "67 in",
                "contact", "",
                "guardian", "Tess Thurne, 07700 900417")))
        .body(
            containsString("Tess Thurne, 07700 900417"),
            containsString("<strong>estimated</strong>: have it measured"),
            containsString("Accepted, parent or guardian"));
  }

  @Test
  void aParent_readsWhatItWeighsOnTheseFingers_andTheShortestArrow() {
    slip(issued(Map.of("drawLength", "26 in")))
        .body(
            containsString("On your fingers at your draw"),
            containsString("No arrow shorter than"),
            containsString("28 in · 711 mm"));
  }

  @Test
  void whatWasLentAgainstAdvice_saysWhy_andWhoAgreed() {
    long loan = issued(Map.of());
    rows.change(
        "UPDATE loan SET override_why = 'The lighter bows are all out.', override_coach = 'Pam Coates' WHERE id = ?1",
        loan);
    slip(loan).body(containsString("The lighter bows are all out."), containsString("Pam Coates"));
  }

  @Test
  void onlyWhatWasLent_isSpokenOf() {
    Laid arrows = fixture.arrows(29);
    Laid stringer = fixture.aStringer(66, 68);
    slip(issued(Map.of("items.arrows", arrows.code(), "items.stringer", stringer.code())))
        .body(
            containsString("set of 6 arrows, 29 in"),
            containsString("Shoot only these arrows."),
            containsString("String and unstring with the stringer"),
            not(containsString("went out with it")));
    slip(issued(Map.of()))
        .body(
            containsString("No arrows went out with it"),
            containsString("No stringer went out with it"),
            not(containsString("these arrows")));
  }

  @Test
  void threeSixteenths_areTheSameMillimetresOnTheSlipAsAtTheBench() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    rows.change(
        "UPDATE set_up SET nocking = ?2 WHERE rig_id = ?1", rig.id(), Length.ofInches(3 / 16.0));
    slip(issued(rig, Map.of()))
        .body(
            containsString("3/16 in · 4.8 mm"),
            containsString("whether both limbs still bend alike"));
    Visitor.signedInAs("officer")
        .get("/rigs/" + rig.id().value())
        .then()
        .body(containsString("3/16 in · 4.8 mm"));
  }

  private ValidatableResponse slip(long loan) {
    return Visitor.signedInAs("volunteer").get("/loans/" + loan + "/slip").then().statusCode(200);
  }

  private long issued(Map<String, String> more) {
    return issued(fixture.aBowReadyToGoOut(more.containsKey("guardian") ? 14 : 20), more);
  }

  private long issued(LaidBow rig, Map<String, String> more) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("hand", "right");
    form.put("drawLength", "27 in");
    form.put("ageBand", "adult");
    form.put("experience", "beginner");
    form.put("rig", Long.toString(rig.id().value()));
    form.put("name", "Nell Harker");
    form.put("contact", "07700 900417");
    form.put("termsAccepted", "on");
    form.put("briefingGiven", "on");
    form.put("once-key", UUID.randomUUID().toString());
    form.putAll(more);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/issue");
    Response issued = officer.post("/issue", form);
    assertEquals(303, issued.statusCode(), issued.asString());
    String path = issued.header("Location");
    return Long.parseLong(path.substring(path.lastIndexOf('/') + 1));
  }
}
