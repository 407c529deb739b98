package club.ascham.check;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Map;

/** Bows that just came back, for the tests of checking: each call lays a new one on the bench. */
@ApplicationScoped
public class CheckBench {
  private static final String LONG_AGO = "2026-01-02T10:00:00.000Z";

  private final Rows rows;
  private final ClubTime time;

  CheckBench(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** An item on the bench. */
  public record Laid(ItemId id, String code) {}

  /** A rig with its parts; set up at brace 216, tiller 190 and 186 mm, from the throat. */
  public record Bow(RigId rig, Laid body, Laid limbs, Laid string) {
    String page() {
      return "/check/" + rig.value();
    }
  }

  /** The same form with another brace, and both distances changed by as much, as they do. */
  static Map<String, Object> braced(Map<String, Object> form, int mm) {
    form.put("brace", mm + " mm");
    form.put("tillerUpper", 190 + mm - 216 + " mm");
    form.put("tillerLower", 186 + mm - 216 + " mm");
    return form;
  }

  /** A 68 in adjustable rig, ready. */
  public Bow ready() {
    Laid riser = item('R', "RISER");
    rows.change(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting, max_turns_out)"
            + " VALUES (?1, 'ADJUSTABLE', 'RIGHT', 25, 'ILF', 4)",
        riser.id());
    Laid limbs = item('L', "LIMBS");
    rows.change(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?1, 'ADJUSTABLE', 'MEDIUM', 20, 'ILF')",
        limbs.id());
    Laid string = item('S', "STRING");
    rows.change(
        "INSERT INTO bowstring (id, for_bow_in, material, strands, first_used)"
            + " VALUES (?1, 68, 'POLYESTER', 12, ?2)",
        string.id(),
        time.today().minusDays(20));
    return setUp(riser, limbs, string);
  }

  private Bow setUp(Laid body, Laid limbs, Laid string) {
    for (Laid part : new Laid[] {body, limbs, string}) {
      for (String work : new String[] {"BOLT_INSPECTION", "RISER_INSPECTION", "LIMB_INSPECTION"}) {
        rows.change(
            """
            INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
            VALUES (?1, ?2, ?3, ?3, 1, 'PASSED')""",
            part.id(),
            work,
            Ago.days(time, 3));
      }
    }
    rows.change(
        "INSERT INTO rig (style, level, assembled_at) VALUES ('SPLIT_FINGER', 'BEGINNER', ?1)",
        LONG_AGO);
    RigId rig = new RigId(rows.number("SELECT max(id) FROM rig"));
    fit(rig, body, "BODY");
    fit(rig, limbs, "LIMBS");
    fit(rig, string, "STRING");
    rows.change(
        """
        INSERT INTO set_up (rig_id, begun_at, begun_by, finished_at, finished_by, brace, brace_from,
               tiller_upper, tiller_lower, nocking, screws_seen)
        VALUES (?1, ?2, 1, ?2, 1, 21600000, 'GRIP_THROAT', 19000000, 18600000, 400000, 1)""",
        rig,
        LONG_AGO);
    return new Bow(rig, body, limbs, string);
  }

  /** A rig that was lent and came back an hour ago, to be checked. */
  public Bow received() {
    return received(false, false);
  }

  Bow received(boolean dryLoose, boolean strung) {
    Bow bow = lent("Ann Fletcher");
    long loan = rows.number("SELECT max(id) FROM loan");
    rows.change(
        """
        INSERT INTO receipt (loan_id, happened_at, recorded_at, received_by, dry_loose_or_fall,
                             came_back_strung)
        VALUES (?1, ?2, ?2, 1, ?3, ?4)""",
        loan,
        time.now().minus(Duration.ofHours(1)),
        dryLoose,
        strung);
    rows.change(
        """
        UPDATE loan_line SET back_at = ?2, outcome = 'BACK',
               receipt_id = (SELECT max(id) FROM receipt) WHERE loan_id = ?1""",
        loan,
        time.now().minus(Duration.ofHours(1)));
    return bow;
  }

  public Bow lent(String borrower) {
    Bow bow = ready();
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES (?1, '07700 900001', 'ADULT')",
        borrower);
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', (SELECT max(id) FROM borrower), ?1, ?2, 1, ?1, 1)""",
        Ago.days(time, 14),
        time.today());
    for (Laid part : new Laid[] {bow.body(), bow.limbs(), bow.string()}) {
      rows.change(
          """
          INSERT INTO loan_line (loan_id, item_id, rig_id, out_at)
          VALUES ((SELECT max(id) FROM loan), ?1, ?2, ?3)""",
          part.id(),
          bow.rig(),
          Ago.days(time, 14));
    }
    return bow;
  }

  public void mayTurnBolts(String account, boolean may) {
    rows.change(
        "UPDATE account SET permit_until = ?2 WHERE name = ?1",
        account,
        may ? time.today().plusYears(1) : null);
  }

  public String state(Bow bow) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM rig_standing s WHERE s.rig_id = ?2",
            time.today(),
            bow.rig())
        .get(0);
  }

  public long number(String sql, Object... parameters) {
    return rows.number(sql, parameters);
  }

  long checks(Bow bow) {
    return number("SELECT count(*) FROM bow_check WHERE rig_id = ?1", bow.rig());
  }

  long lastCheck(Bow bow) {
    return number("SELECT coalesce(max(id), 0) FROM bow_check WHERE rig_id = ?1", bow.rig());
  }

  void fit(RigId rig, Laid part, String place) {
    rows.change(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (?1, ?2, ?3, ?4)",
        rig,
        part.id(),
        place,
        LONG_AGO);
  }

  private Laid item(char letter, String kind) {
    int number =
        ItemCode.nextIssuable(
                letter,
                (int)
                    rows.number(
                        "SELECT 1 + max(CAST(substr(code, 2, 4) AS INTEGER)) FROM item WHERE code LIKE ?1",
                        letter + "%"))
            .orElseThrow();
    ItemCode code = ItemCode.of(letter, number).orElseThrow();
    rows.change(
        "INSERT INTO item (code, kind, maker, model, registered_on) VALUES (?1, ?2, 'Alderfen', 'Fenlight', '2026-01-01')",
        code.bare(),
        kind);
    return new Laid(
        new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code.bare())),
        code.display());
  }
}
