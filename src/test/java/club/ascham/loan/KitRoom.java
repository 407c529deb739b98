package club.ascham.loan;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import jakarta.enterprise.context.ApplicationScoped;

/** Stocks the kit room for the tests: each call adds something new and answers it. */
@ApplicationScoped
public class KitRoom {
  private static final String LONG_AGO = "2026-01-02T10:00:00.000Z";

  private final Rows rows;
  private final ClubTime time;

  KitRoom(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** An item on its hook. */
  public record Stocked(ItemId id, String code) {}

  /** A rig that is set up and ready. */
  public record ReadyRig(RigId id, Stocked body, Stocked limbs, Stocked string) {}

  /** A right-handed 68 in adjustable rig. */
  public ReadyRig aReadyRig(double markedLb) {
    return aReadyRig("RIGHT", markedLb);
  }

  public ReadyRig aReadyRig(String hand, double markedLb) {
    Stocked riser = item('R', "RISER");
    rows.change(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting, max_turns_out)"
            + " VALUES (?1, 'ADJUSTABLE', ?2, 25, 'ILF', 4)",
        riser.id(),
        hand);
    Stocked limbs = item('L', "LIMBS");
    rows.change(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?1, 'ADJUSTABLE',"
            + " 'MEDIUM', ?2, 'ILF')",
        limbs.id(),
        markedLb);
    Stocked string = item('S', "STRING");
    rows.change(
        "INSERT INTO bowstring (id, for_bow_in, material, strands, first_used)"
            + " VALUES (?1, 68, 'POLYESTER', 12, ?2)",
        string.id(),
        time.today().minusDays(20));
    passAllInspections(riser, limbs, string);
    rows.change(
        "INSERT INTO rig (style, level, assembled_at) VALUES ('SPLIT_FINGER', 'BEGINNER', ?1)",
        LONG_AGO);
    RigId rig = new RigId(rows.number("SELECT max(id) FROM rig"));
    fit(rig, riser, "BODY");
    fit(rig, limbs, "LIMBS");
    fit(rig, string, "STRING");
    rows.change(
"""
INSERT INTO set_up (rig_id, begun_at, begun_by, finished_at, finished_by, brace, brace_from,
       tiller_upper, tiller_lower, nocking, screws_seen)
VALUES (?1, ?2, 1, ?2, 1, 21590000, 'GRIP_THROAT', 19000000, 18600000, 400000, 1)\
""",
        rig,
        LONG_AGO);
    return new ReadyRig(rig, riser, limbs, string);
  }

  public Stocked anArrowSet(double inches) {
    Stocked arrows = item('A', "ARROWS");
    rows.change(
        "INSERT INTO kit_item (id, arrow_length, spine, arrow_count) VALUES (?1, ?2, 1000, 6)",
        arrows.id(),
        Length.ofInches(inches));
    passAllInspections(arrows);
    return arrows;
  }

  public void weigh(Stocked arrows, double grains) {
    rows.change("UPDATE kit_item SET arrow_mass_gr = ?2 WHERE id = ?1", arrows.id(), grains);
  }

  public Stocked anArrowPool(double inches, int count) {
    Stocked arrows = item('A', "ARROWS");
    rows.change(
        "INSERT INTO kit_item (id, arrow_length, spine, arrow_count, pool) VALUES (?1, ?2, 1000,"
            + " ?3, 1)",
        arrows.id(),
        Length.ofInches(inches),
        count);
    passAllInspections(arrows);
    return arrows;
  }

  /** A tab, bracer, chestguard, quiver or case. */
  public Stocked aKitItem(String kind, String hand, String size) {
    Stocked item = item('K', kind);
    rows.change("INSERT INTO kit_item (id, hand, size) VALUES (?1, ?2, ?3)", item.id(), hand, size);
    return item;
  }

  public Stocked aStringer(int fromIn, int toIn) {
    Stocked stringer = item('T', "STRINGER");
    rows.change(
        "INSERT INTO stringer (id, stringer_kind, bow_from_in, bow_to_in) VALUES (?1, 'TIP_TO_TIP',"
            + " ?2, ?3)",
        stringer.id(),
        fromIn,
        toIn);
    passAllInspections(stringer);
    return stringer;
  }

  public void withdraw(Stocked item) {
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)"
            + " VALUES (?1, ?2, ?2, 1, 'crack in the lower limb')",
        item.id(),
        LONG_AGO);
  }

  /** An open loan of a rig as the file holds it. */
  public long lent(ReadyRig rig, String borrower, String issuedOn, String dueOn) {
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES (?1, '07700 900001', 'ADULT')",
        borrower);
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, hand,
               draw_length, experience, terms_accepted)
        VALUES ('KIT', (SELECT max(id) FROM borrower), ?1 || 'T19:00:00.000Z', ?2, 1,
                ?1 || 'T19:00:00.000Z', 'RIGHT', 71120000, 'BEGINNER', 1)\
        """,
        issuedOn,
        dueOn);
    long loan = rows.number("SELECT max(id) FROM loan");
    for (Stocked part : new Stocked[] {rig.body(), rig.limbs(), rig.string()}) {
      rows.change(
          "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?1, ?2, ?3, ?4 ||"
              + " 'T19:00:00.000Z')",
          loan,
          part.id(),
          rig.id(),
          issuedOn);
    }
    return loan;
  }

  void allBack(long loan, String day) {
    rows.change(
        "UPDATE loan_line SET back_at = ?2 || 'T20:00:00.000Z', outcome = 'BACK' WHERE loan_id ="
            + " ?1",
        loan,
        day);
  }

  void keepWith(Stocked item, RigId rig) {
    rows.change("INSERT INTO kept_with (item_id, rig_id) VALUES (?1, ?2)", item.id(), rig);
  }

  public void change(String sql, Object... parameters) {
    rows.change(sql, parameters);
  }

  public long number(String sql, Object... parameters) {
    return rows.number(sql, parameters);
  }

  private void fit(RigId rig, Stocked part, String place) {
    rows.change(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (?1, ?2, ?3, ?4)",
        rig,
        part.id(),
        place,
        LONG_AGO);
  }

  private void passAllInspections(Stocked... items) {
    for (Stocked item : items) {
      rows.change(
          """
          INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
          SELECT DISTINCT ?1, work, ?2, ?2, 1, 'PASSED'
            FROM upkeep_rule WHERE item_kind = (SELECT kind FROM item WHERE id = ?1)
             AND work <> 'STRING_REPLACEMENT'\
          """,
          item.id(),
          Ago.days(time, 20));
    }
  }

  private Stocked item(char letter, String kind) {
    int number =
        ItemCode.nextIssuable(
                letter,
                (int)
                    rows.number(
                        "SELECT 1 + max(CAST(substr(code, 2, 4) AS INTEGER)) FROM item WHERE code"
                            + " LIKE ?1",
                        letter + "%"))
            .orElseThrow();
    ItemCode code = ItemCode.of(letter, number).orElseThrow();
    rows.change(
        "INSERT INTO item (code, kind, maker, model, registered_on) VALUES (?1, ?2, 'Alderfen',"
            + " 'Heron', '2026-01-01')",
        code.bare(),
        kind);
    return new Stocked(
        new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code.bare())),
        code.display());
  }
}
