package club.ascham.concern;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whoever hands a bow out, takes it back or has it before them is told what is known of it. */
@QuarkusTest
class InHandShownTest {
  private static final String ISSUE =
      "/issue?hand=right&drawLength=28in&ageBand=adult&experience=beginner&rig=";

  @Inject Rack rack;
  @Inject Told told;
  @Inject Rows rows;
  @Inject ClubTime time;

  private Visitor officer;

  @BeforeEach
  void signIn() {
    officer = Visitor.signedInAs("officer");
  }

  private String watched(Rack.Hung rig) {
    LocalDate until = time.today().plusDays(30);
    told.watched(told.bang(rig, rig.limbs()), "no deeper than the lacquer", until);
    return rig.limbsCode()
        + ", watched to "
        + DateTimeFormatter.ofPattern("d MMM yyyy", Locale.US).format(until)
        + ": a bang or a crack was heard. Seen: no deeper than the lacquer.";
  }

  private void done(Rack.Hung... rigs) {
    told.forget(List.of(rigs));
    rack.clear(List.of(rigs));
  }

  private String part(String page, String from, String to) {
    String html = officer.get(page).then().statusCode(200).extract().asString();
    int at = html.indexOf(from);
    assertTrue(at >= 0, from + " is on " + page);
    return html.substring(at, html.indexOf(to, at));
  }

  @Test
  void whatIsWatched_isTold_whereItIsIssuedReceivedAndOutWithASession() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    String said = watched(rig);
    officer.get(ISSUE + rig.id().value()).then().body(containsString(said));
    LoanId loan = rack.lend(rig, "Wenda Marl", time.today().plusDays(20));
    officer.get("/receive/" + loan.value()).then().body(containsString(said));
    officer.get("/loans/" + loan.value() + "/slip").then().body(containsString(said));
    done(rig);

    Rack.Hung shared = rack.readyRig("RIGHT", 20);
    String noted = watched(shared);
    LoanId session = rack.lendToSession(shared, "Wulf");
    officer.get("/sessions/" + session.value()).then().body(containsString(noted));
    rack.takeBack(session);
    officer.get("/sessions/" + session.value()).then().body(containsString(noted));
    done(shared);
  }

  @Test
  void whatSpeaksAgainstIt_isTold_whereItComesBack_andInTheListsOfIt() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.takeBackWhatIsDue(time.today());
    LoanId loan = rack.lend(rig, "Quilla Wether", time.today());
    told.furred(rig, rig.string());
    told.furred(rig, rig.limbs());
    String said = rig.stringCode() + ", told and not answered yet: the string is furred";
    officer.get("/receive/" + loan.value()).then().body(containsString(said));
    long borrower = rows.number("SELECT borrower_id FROM loan WHERE id = ?1", loan);
    String brief = "something told of it and 1 more";
    officer.get("/borrowers/" + borrower).then().body(containsString(brief));
    String home = part("/", ">Quilla Wether", "</li>");
    assertTrue(home.contains(brief), home);
    done(rig);
  }

  @Test
  void whatComesBackWithADangerOpen_isLaidAsideUnstrung_andTheMessageSaysSo() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lend(rig, "Ulla Fenn", time.today());
    told.bang(rig, rig.limbs());
    officer.get("/receive/" + loan.value());
    Map<String, String> form = new HashMap<>();
    for (String line : rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1", loan)) {
      form.put("back-" + line, "on");
    }
    form.put("once-key", "aside-" + loan.value());
    String next =
        officer
            .post("/receive/" + loan.value(), form)
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    officer
        .get(next.substring(next.indexOf("/receive")))
        .then()
        .body(containsString("Lay " + rig.riserCode() + " aside, unstrung"));
    told.forget(List.of(rig));
  }

  @Test
  void aBowWithoutASetUp_saysSoAtItsLoan_itsSlipAndItsReceipt() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lend(rig, "Nell Orme", time.today().plusDays(20));
    QuarkusTransaction.requiringNew()
        .run(() -> rows.change("DELETE FROM set_up WHERE rig_id = ?1", rig.id()));
    String said = rig.riserCode() + ": it has no complete set-up figures for these parts.";
    for (String page : List.of("/loans/{}", "/loans/{}/slip", "/receive/{}")) {
      officer
          .get(page.replace("{}", Long.toString(loan.value())))
          .then()
          .statusCode(200)
          .body(containsString(said));
    }
    officer.get("/loans/" + loan.value()).then().body(containsString("Stands against it"));
    done(rig);
  }

  @Test
  void whatIsWithdrawnWhileLent_saysThatAPersonHasIt_andItsSoundPartsSayWhatStandsAgainstTheRig() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lend(rig, "Hob Carr", time.today().plusDays(20));
    rack.withdraw(rig.limbs(), "crack at the butt");
    String limbs = part("/register?words=" + rig.limbsCode(), ">" + rig.limbsCode() + "<", "</tr>");
    assertTrue(limbs.contains("with a borrower") && limbs.contains("to be asked back"), limbs);
    assertTrue(limbs.contains("crack at the butt"), limbs);
    String riser = part("/register?words=" + rig.riserCode(), ">" + rig.riserCode() + "<", "</tr>");
    assertTrue(riser.contains("its rig") && riser.contains("crack at the butt"), riser);
    officer
        .get("/items/" + rig.riserCode())
        .then()
        .body(containsString("Its rig"))
        .body(containsString(rig.limbsCode() + " is withdrawn: crack at the butt."));
    officer
        .get("/rigs/" + rig.id().value())
        .then()
        .body(containsString("href=\"/receive/" + loan.value() + "\">Receive it"))
        .body(containsString("Stands against it"))
        .body(not(containsString("Keeps it in")));
    assertTrue(
        officer
            .look("/loans", Map.of("q", "Hob Carr", "show", "open"))
            .asString()
            .contains("to be asked back"));
    done(rig);
  }

  @Test
  void whatSomebodyToldAndNobodyAnswered_isOnTheFirstPage_dangerousOrNot() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    long report = told.furred(rig, rig.string());
    for (String who : List.of("officer", "volunteer")) {
      String home = Visitor.signedInAs(who).get("/").asString();
      assertTrue(home.contains("Told, to be answered"), home);
      assertTrue(
          home.contains("href=\"/reports/" + report + "\"")
              || home.contains("href=\"/reports\">and"));
    }
    String row = part("/fleet/rows?list=rigs", ">" + rig.riserCode() + "<", "</tr>");
    assertTrue(row.contains("something told of it, to be answered first"), row);
    assertTrue(!row.contains("ready and staying so"), row);
    done(rig);
  }

  @Test
  void aRelease_showsTheNewestRecordOfItsWork_andALaterFailureItsOwnWords() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              rows.change(
                  """
                  INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, work, decided_at, decided_by)
                  VALUES (?1, ?2, ?2, 1, 'a line at the butt', 'LIMB_INSPECTION', ?2, 1)""",
                  rig.limbs(),
                  time.now().minus(Duration.ofDays(3)));
              record(rig, 3, "FAILED", "a line at the butt");
              record(rig, 2, "PASSED", "only the lacquer");
              record(rig, 1, "FAILED", "the tip has parted");
            });
    long withdrawal = rows.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", rig.limbs());
    officer
        .get("/withdrawals/" + withdrawal + "/release")
        .then()
        .body(containsString("not passed"))
        .body(containsString("the tip has parted"));
    officer
        .get("/rigs/" + rig.id().value())
        .then()
        .body(containsString(rig.limbsCode() + " is withdrawn: a line at the butt."))
        .body(
            containsString(
                rig.limbsCode() + " did not pass its limb inspection: the tip has parted."));
    QuarkusTransaction.requiringNew()
        .run(() -> rows.change("DELETE FROM upkeep_record WHERE item_id = ?1", rig.limbs()));
    done(rig);
  }

  private void record(Rack.Hung rig, int daysAgo, String result, String found) {
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)
        VALUES (?1, 'LIMB_INSPECTION', ?2, ?2, 1, ?3, ?4)""",
        rig.limbs(),
        time.now().minus(Duration.ofDays(daysAgo)),
        result,
        found);
  }
}
