package club.ascham.recall;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.StatementCount;
import club.ascham.upkeep.Shelf;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RecallPagesTest {
  @Inject Shelf shelf;

  @Test
  void aBatch_isTracedToRoomRigAndBorrower_andWithdrawnInOnePress() {
    Shelf.ReadyRig lent = shelf.aReadyRig();
    Shelf.Put spare = shelf.aString(68);
    Shelf.Put other = shelf.aString(68);
    String batch = "QX-" + System.nanoTime();
    shelf.name(lent.string(), "Twinerow", batch + "-a");
    shelf.name(spare, "twinerow", batch + "-b");
    shelf.name(other, "Twinerow", "other");
    shelf.lend(lent, "Odette Farrow");

    Visitor officer = Visitor.signedInAs("officer");
    String page = "/recall?maker=TWINEROW&batch=" + batch.toLowerCase();
    officer
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("2 items"))
        .body(containsString("with Odette Farrow"))
        .body(containsString(spare.code()))
        .body(containsString(lent.riser().code()))
        .body(not(containsString(other.code())));

    Map<String, String> form =
        Map.of(
            "maker",
            "Twinerow",
            "batch",
            batch,
            "why",
            "Maker's notice: serving slips.",
            "once-key",
            "recall-" + batch);
    officer.post("/recall", form).then().statusCode(303);
    assertEquals("WITHDRAWN", shelf.state(spare));
    assertEquals("WITHDRAWN", shelf.rigState(lent.id()), "withdrawn wherever it is");
    assertEquals("READY", shelf.state(other));
    officer.post("/recall", form).then().statusCode(303);
    assertEquals(1, shelf.number("SELECT count(*) FROM withdrawal WHERE item_id = ?1", spare.id()));
    officer
        .get(page)
        .then()
        .body(containsString("serving slips"), not(containsString("Withdraw all")));
  }

  @Test
  void theSerialOfOneLimb_findsThePair() {
    Shelf.ReadyRig rig = shelf.aReadyRig();
    shelf.change("UPDATE limbs SET serial_lower = 'ZZ771-L' WHERE id = ?1", rig.limbs().id());
    Visitor.signedInAs("volunteer")
        .get("/recall?serial=zz771")
        .then()
        .statusCode(200)
        .body(containsString("One item"), containsString(rig.limbs().code()));
  }

  @Test
  void onlyAnOfficerWithdraws_andTheCommitteeSeesNoNames() {
    Shelf.ReadyRig rig = shelf.aReadyRig();
    String batch = "NN-" + System.nanoTime();
    shelf.name(rig.string(), "Twinerow", batch);
    shelf.lend(rig, "Percival Quill");
    Map<String, String> form = Map.of("batch", batch, "why", "notice");

    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/recall?batch=" + batch).then().body(containsString("Percival Quill"));
    volunteer.post("/recall", form).then().statusCode(403);
    Visitor committee = Visitor.signedInAs("committee");
    committee
        .get("/recall?batch=" + batch)
        .then()
        .statusCode(200)
        .body(containsString("1 borrower"), not(containsString("Percival Quill")));
    committee.post("/recall", form).then().statusCode(403);
    assertEquals("ON_LOAN", shelf.state(rig.string()));
  }

  @Test
  void withoutAReason_orWithoutAnythingNamed_nothingIsWithdrawn() {
    String batch = "WR-" + System.nanoTime();
    shelf.name(shelf.aString(68), "Twinerow", batch);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/recall").then().statusCode(200).body(containsString("Give at least one"));
    officer.post("/recall", Map.of("why", "all of it")).then().statusCode(422);
    officer
        .post("/recall", Map.of("batch", batch))
        .then()
        .statusCode(422)
        .body(containsString("It stands on every one of them"));
  }

  @Test
  void aTrace_needsTheSameFewStatements_howeverMuchItFinds() {
    String batch = "SC-" + System.nanoTime();
    shelf.name(shelf.aString(68), "Twinerow", batch);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/recall?batch=" + batch);
    long few = statements(officer, "/recall?batch=" + batch);
    for (int i = 0; i < 5; i++) {
      shelf.name(shelf.aString(68), "Twinerow", batch);
    }
    assertEquals(few, statements(officer, "/recall?batch=" + batch));
  }

  private static long statements(Visitor visitor, String page) {
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
