package club.ascham.register;

import static club.ascham.web.Program.sending;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.form.Words;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Failed, passed, released, retired and found again, in whatever order: a pair of limbs may go out
 * only where its newest inspection was passed, one since it was found, and where someone with the
 * permit released it after what put it out of use was passed.
 */
@QuarkusTest
class FoundAgainOrdersTest {
  private enum Deed {
    FAILED,
    PASSED,
    RELEASED,
    RETIRED,
    FOUND
  }

  private enum Way {
    PAGE,
    API
  }

  private static final String WHY = "It lay behind the nets in the shed.";

  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject ClubFixture fixture;

  private final List<Long> made = new ArrayList<>();
  private Visitor officer;

  @BeforeEach
  void anOfficerWithThePermit() {
    fixture.mayTurnBolts("officer", true);
    officer = Visitor.signedInAs("officer");
    officer.get("/me");
  }

  /** Hundreds of limbs that wait would stand in every other test's lists. */
  @AfterEach
  void putAway() {
    for (long item : made) {
      rows.change("DELETE FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL", item);
      rows.change("DELETE FROM upkeep_task WHERE item_id = ?1 AND closed_by_record IS NULL", item);
      rows.change(
          "UPDATE item SET retired_on = ?2, retired_why = 'SOLD' WHERE id = ?1 AND retired_on IS NULL",
          item,
          time.today());
    }
  }

  /** Each order by page and by API, in turns: the reasons to retire share them out. */
  @ParameterizedTest
  @EnumSource(RetiredWhy.class)
  void inEveryOrder(RetiredWhy why) {
    List<List<Deed>> orders = orders(List.of(Deed.values()));
    assertEquals(120, orders.size());
    for (int i = 0; i < orders.size(); i++) {
      follow(orders.get(i), why, Way.values()[(i + why.ordinal()) % 2]);
    }
  }

  @Test
  void againAndAgain_inAnyOrder() {
    Random chance = new Random(20261129);
    int out = 0;
    for (int round = 0; round < 60; round++) {
      List<Deed> order = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        order.add(Deed.values()[chance.nextInt(Deed.values().length)]);
      }
      RetiredWhy why = RetiredWhy.values()[chance.nextInt(3)];
      out += follow(order, why, Way.values()[chance.nextInt(2)]) ? 1 : 0;
    }
    assertTrue(out > 5 && out < 55, out + " of them may go out");
  }

  /** Does one thing after the other, and answers whether the limbs may go out then. */
  private boolean follow(List<Deed> order, RetiredWhy why, Way way) {
    Item limbs = registered();
    List<Deed> done = new ArrayList<>();
    for (Deed deed : order) {
      long before = rows.number("SELECT max(id) FROM story");
      boolean accepted = act(limbs, deed, why, way);
      assertEquals(
          accepted,
          rows.number("SELECT max(id) FROM story") > before,
          () -> deed + " after " + done + ": what is refused changes nothing");
      if (accepted) {
        done.add(deed);
      }
      String state = state(limbs);
      assertEquals(
          mayGoOut(done, why), state.equals("READY"), () -> way + " " + why + " " + done + state);
    }
    return mayGoOut(done, why);
  }

  /** The rule, told by what was done and nothing else. */
  private static boolean mayGoOut(List<Deed> done, RetiredWhy why) {
    int found = done.lastIndexOf(Deed.FOUND);
    int passed = done.lastIndexOf(Deed.PASSED);
    if (done.lastIndexOf(Deed.RETIRED) > found
        || done.lastIndexOf(Deed.FAILED) > passed
        || found > passed) {
      return false;
    }
    for (int i = 0; i < done.size(); i++) {
      boolean outOfUse =
          done.get(i) == Deed.FAILED || done.get(i) == Deed.FOUND && why == RetiredWhy.SCRAPPED;
      if (outOfUse && !releasedAfterAPass(done.subList(i + 1, done.size()))) {
        return false;
      }
    }
    return true;
  }

  private static boolean releasedAfterAPass(List<Deed> since) {
    int passed = since.indexOf(Deed.PASSED);
    return passed >= 0 && since.lastIndexOf(Deed.RELEASED) > passed;
  }

  private record Item(long id, String code) {}

  private Item registered() {
    String code =
        sending("officer")
            .body(
                """
                {"build": "adjustable", "size": "medium", "markedLb": 22, "limbFitting": "ILF"}""")
            .post("/api/limbs")
            .then()
            .statusCode(201)
            .extract()
            .path("code");
    long id = rows.number("SELECT id FROM item WHERE code = ?1", code.replace("-", ""));
    made.add(id);
    return new Item(id, code);
  }

  private boolean act(Item limbs, Deed deed, RetiredWhy why, Way way) {
    Map<String, Object> said = new HashMap<>();
    String page;
    String api;
    switch (deed) {
      case FAILED, PASSED -> {
        page = "/upkeep/" + limbs.code() + "/limb-inspection";
        api = "/api/inspections";
        Map<String, String> seen = new HashMap<>();
        for (String look : List.of("surface", "lines", "tips", "twist", "track", "butts", "pair")) {
          seen.put(look, "fine");
        }
        if (deed == Deed.FAILED) {
          seen.put("surface", "stop");
          said.put("words", "A crack across the lower limb.");
        }
        if (way == Way.PAGE) {
          said.putAll(seen);
        } else {
          said.putAll(Map.of("item", limbs.code(), "work", "limb-inspection", "seen", seen));
        }
      }
      case RELEASED -> {
        long id =
            rows.number(
                "SELECT coalesce(max(id), 0) FROM withdrawal WHERE item_id = ?1", limbs.id());
        page = "/withdrawals/" + id + "/release";
        api = "/api" + page;
        said.put("lookedAt", "Both limbs from butt to tip.");
        said.put("why", "It was a scratch in the lacquer.");
      }
      case RETIRED -> {
        page = "/items/" + limbs.code() + "/retire";
        api = "/api/limbs/" + limbs.code() + "/retire";
        said.put("why", Words.of(why));
      }
      default -> {
        page = "/items/" + limbs.code() + "/found";
        api = "/api/limbs/" + limbs.code() + "/found";
        said.put("why", WHY);
      }
    }
    long before = rows.number("SELECT max(id) FROM story");
    Response answer =
        way == Way.PAGE ? officer.post(page, said) : sending("officer").body(said).post(api);
    int status = answer.statusCode();
    assertTrue(
        List.of(200, 201, 303, 404, 409, 422).contains(status), deed + " was answered " + status);
    // A page answers "retired before" and "not retired" with a sentence and not with a refusal.
    return way == Way.API
        ? status < 300
        : status == 303 && rows.number("SELECT max(id) FROM story") > before;
  }

  private String state(Item limbs) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM item_standing s WHERE s.item_id = ?2",
            time.today(),
            limbs.id())
        .get(0);
  }

  private static List<List<Deed>> orders(List<Deed> of) {
    if (of.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Deed>> all = new ArrayList<>();
    for (Deed first : of) {
      List<Deed> rest = new ArrayList<>(of);
      rest.remove(first);
      for (List<Deed> after : orders(rest)) {
        List<Deed> order = new ArrayList<>(List.of(first));
        order.addAll(after);
        all.add(Collections.unmodifiableList(order));
      }
    }
    return all;
  }
}
