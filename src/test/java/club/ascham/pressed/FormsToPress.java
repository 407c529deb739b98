package club.ascham.pressed;

import static club.ascham.pressed.CallsToRepeat.ITEMS;
import static club.ascham.pressed.CallsToRepeat.done;
import static club.ascham.pressed.CallsToRepeat.item;
import static java.nio.charset.StandardCharsets.UTF_8;

import club.ascham.fixture.ClubFixture;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** One form of each kind that saves, on its page, each ready to be pressed now and once only. */
@ApplicationScoped
class FormsToPress {
  private final ClubFixture fixture;
  private final FormsAtTheBench bench;
  private final FormsOfTheClub club;
  private final ClubTime time;

  FormsToPress(ClubFixture fixture, FormsAtTheBench bench, FormsOfTheClub club, ClubTime time) {
    this.fixture = fixture;
    this.bench = bench;
    this.club = club;
    this.time = time;
  }

  /**
   * A form on its page, and what is typed into it.
   *
   * @param page as an officer gets it
   * @param field that may be typed otherwise; null: it has none, or its page is gone with what it
   *     did
   */
  record Form(
      Function<Visitor, String> page,
      String address,
      Map<String, String> typed,
      String field,
      String otherwise) {}

  static Form on(
      String page, String address, Map<String, String> typed, String field, String otherwise) {
    return new Form(officer -> officer.get(page).asString(), address, typed, field, otherwise);
  }

  static Form on(String page, String address, Map<String, String> typed) {
    return on(page, address, typed, null, null);
  }

  /** By the path that it is sent to. */
  Map<String, Supplier<Form>> all() {
    Map<String, Supplier<Form>> all = new LinkedHashMap<>();
    ofLoans(all);
    ofBorrowersAndSessions(all);
    ofTheRegister(all);
    all.putAll(club.all());
    all.put("/backups/make", () -> on("/backups", "/backups/make", Map.of()));
    all.put("/exchange/import", this::aFile);
    all.putAll(bench.all());
    return all;
  }

  private void ofLoans(Map<String, Supplier<Form>> all) {
    all.put(
        "/issue",
        () ->
            on(
                "/issue?hand=right&drawLength=27 in&ageBand=adult&experience=beginner&rig="
                    + fixture.aBowReadyToGoOut(20).id().value(),
                "/issue",
                Map.of(
                    "name", "Orla Wensum",
                    "contact", "07700 900333",
                    "termsAccepted", "on",
                    "briefingGiven", "on"),
                "name",
                "Wilhelmina Marram"));
    all.put(
        "/receive/{loan}",
        () -> {
          String page = "/receive/" + loan();
          return on(page, page, Map.of("allBack", "yes"), "words", "It creaked a little.");
        });
    all.put(
        "/loans/{loan}/extend",
        () -> {
          String page = "/loans/" + loan();
          return on(
              page,
              page + "/extend",
              Map.of("dueOn", time.today().plusDays(50).toString()),
              "dueOn",
              time.today().plusDays(60).toString());
        });
    all.put(
        "/loans/{loan}/items",
        () -> {
          String page = "/loans/" + loan();
          return on(
              page,
              page + "/items",
              Map.of("item", fixture.aKitItem("TAB", "RIGHT", "M").code()),
              "item",
              fixture.aKitItem("TAB", "RIGHT", "L").code());
        });
    all.put(
        "/loans/{loan}/lost",
        () -> {
          long loan = loan();
          done(
              "/api/loans/" + loan + "/items",
              Map.of("item", fixture.aKitItem("TAB", "RIGHT", "M").code()));
          long line = fixture.number("SELECT max(id) FROM loan_line WHERE loan_id = ?1", loan);
          return on(
              "/loans/" + loan,
              "/loans/" + loan + "/lost",
              Map.of("line-" + line, "on", "words", "left on a bus"),
              "words",
              "left on a train");
        });
    all.put(
        "/undo/{move}",
        () -> {
          done("/api/receipts", Map.of("loanId", loan()));
          String page = "/undo/" + fixture.number("SELECT max(id) FROM move");
          return on(page, page, Map.of());
        });
  }

  private void ofBorrowersAndSessions(Map<String, Supplier<Form>> all) {
    all.put(
        "/borrowers/{borrower}",
        () -> {
          String page = "/borrowers/" + borrower();
          return on(page, page, Map.of("contact", "07700 900779"), "contact", "07700 900780");
        });
    all.put(
        "/borrowers/{borrower}/erase",
        () -> {
          String page = "/borrowers/" + borrower() + "/erase";
          return on(page, page, Map.of());
        });
    all.put(
        "/sessions/new",
        () ->
            on(
                "/sessions/new?anew=yes",
                "/sessions/new",
                Map.of(
                    "leader", "Quenby", "rig-" + fixture.aBowReadyToGoOut(20).id().value(), "on"),
                "leader",
                "Otto"));
    all.put(
        "/sessions/{id}",
        () -> {
          long rig = fixture.aBowReadyToGoOut(20).id().value();
          String page = "/sessions/" + session(rig);
          return on(page, page, Map.of(), "words-" + rig, "serving loose at the top");
        });
    all.put(
        "/sessions/{id}/archers",
        () -> {
          long rig = fixture.aBowReadyToGoOut(14).id().value();
          String page = "/sessions/" + session(rig);
          return on(
              page,
              page + "/archers",
              Map.of("rig", "" + rig, "ageBand", "adult", "draw", "26 in"),
              "draw",
              "27 in");
        });
  }

  private void ofTheRegister(Map<String, Supplier<Form>> all) {
    all.put(
        "/register/new",
        () ->
            on(
                "/register/new?kind=string",
                "/register/new",
                Map.of("forBowIn", "68", "material", "polyester", "strands", "12"),
                "model",
                "Longline of our own"));
    all.put(
        "/items/{code}/edit",
        () -> ofItem(item("strings"), "edit", Map.of("maker", "Kestrow"), "maker", "Thornsea"));
    all.put(
        "/items/{code}/retire",
        () -> ofItem(item("strings"), "retire", Map.of("why", "lost"), "note", "On the range."));
    all.put(
        "/items/{code}/found",
        () -> {
          String code = item("strings");
          done("/api/strings/" + code + "/retire", Map.of("why", "lost"));
          return ofItem(
              code,
              "found",
              Map.of("why", "It lay behind the nets in the shed."),
              "why",
              "It hung on the wrong hook all the time.");
        });
    all.put(
        "/items/{code}/withdraw",
        () ->
            ofItem(
                item("limbs"),
                "withdraw",
                Map.of("why", "Upper limb looks twisted."),
                "why",
                "Lower limb looks twisted instead."));
    all.put(
        "/recall",
        () -> {
          Map<String, Object> string = new HashMap<>(ITEMS.get("strings"));
          String batch = "B" + System.nanoTime();
          string.put("batch", batch);
          done("/api/strings", string);
          return on(
              "/recall?batch=" + batch,
              "/recall",
              Map.of("why", "The notice of 3 May: the serving may slip."),
              "why",
              "The notice of 4 May: the serving may slip.");
        });
  }

  private static Form ofItem(
      String code, String what, Map<String, String> typed, String field, String otherwise) {
    String page = "/items/" + code + "/" + what;
    return on(page, page, typed, field, otherwise);
  }

  private Form aFile() {
    String line = "number,name,contact,memberNo,ageBand,guardian\n,Bryony Reed,%d,,adult,\n";
    byte[] file = line.formatted(System.nanoTime()).getBytes(UTF_8);
    return new Form(
        officer -> {
          officer.get("/exchange");
          return officer.postFile("/exchange/try", "files", "borrowers.csv", file).asString();
        },
        "/exchange/import",
        Map.of(),
        null,
        null);
  }

  // ---- what they need

  static void post(String address, Map<String, String> form) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/me");
    officer.post(address, form).then().statusCode(303);
  }

  private long borrower() {
    return done(
            "/api/borrowers",
            Map.of("name", "Ivy Marram", "contact", "" + System.nanoTime(), "ageBand", "adult"))
        .jsonPath()
        .getLong("id");
  }

  private static int session(long rig) {
    return done("/api/sessions", Map.of("leader", "Otto", "rigIds", List.of(rig))).path("id");
  }

  private long loan() {
    return fixture.lend(
        fixture.aBowReadyToGoOut(20),
        "Nell Harker",
        time.today().minusDays(14).toString(),
        time.today().plusDays(7).toString());
  }
}
