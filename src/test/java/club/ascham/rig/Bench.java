package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** Lays parts on the bench for the tests: each call registers a new item and answers it. */
@ApplicationScoped
class Bench {
  private final Rows rows;
  private final ClubTime time;

  Bench(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** An item on the bench. */
  record Laid(ItemId id, String code) {}

  Laid adjustableRiser(String hand, int lengthIn) {
    Laid item = item('R', "RISER", "Fenlight");
    rows.change(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting, max_turns_out)"
            + " VALUES (?1, 'ADJUSTABLE', ?2, ?3, 'ILF', 4)",
        item.id(),
        hand,
        lengthIn);
    return item;
  }

  Laid screwInRiser(String limbModel) {
    Laid item = item('R', "RISER", limbModel + " 24");
    rows.change(
        "INSERT INTO riser (id, build, hand, length_in, limb_model) VALUES (?1, 'SCREW_IN',"
            + " 'RIGHT', 24, ?2)",
        item.id(),
        limbModel);
    return item;
  }

  Laid slotInLimbs(String size, double markedLb) {
    Laid item = item('L', "LIMBS", "Sedge");
    rows.change(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?1, 'ADJUSTABLE', ?2,"
            + " ?3, 'ILF')",
        item.id(),
        size,
        markedLb);
    return item;
  }

  Laid screwInLimbs(String model, int bowLengthIn) {
    Laid item = item('L', "LIMBS", model);
    rows.change(
        "INSERT INTO limbs (id, build, bow_length_in, marked_lb, brace_low, brace_high)"
            + " VALUES (?1, 'SCREW_IN', ?2, 20, 19685000, 20955000)",
        item.id(),
        bowLengthIn);
    return item;
  }

  Laid onePieceBow(int bowLengthIn) {
    Laid item = item('B', "BOW", "Wren");
    rows.change(
        "INSERT INTO bow (id, bow_length_in, marked_lb, marked_at_in) VALUES (?1, ?2, 12, 24)",
        item.id(),
        bowLengthIn);
    return item;
  }

  Laid polyesterString(int forBowIn) {
    return string(forBowIn, "POLYESTER");
  }

  Laid string(int forBowIn, String material) {
    Laid item = item('S', "STRING", "Homespun");
    rows.change(
        "INSERT INTO bowstring (id, for_bow_in, material, strands) VALUES (?1, ?2, ?3, 12)",
        item.id(),
        forBowIn,
        material);
    return item;
  }

  Laid stringer(int fromIn, int toIn) {
    Laid item = item('T', "STRINGER", "Cord");
    rows.change(
        "INSERT INTO stringer (id, stringer_kind, bow_from_in, bow_to_in) VALUES (?1, 'TIP_TO_TIP',"
            + " ?2, ?3)",
        item.id(),
        fromIn,
        toIn);
    return item;
  }

  /** A rig of the common sort as the file holds it: 25 in riser, medium limbs, 68 in string. */
  long assembled(Laid... parts) {
    rows.change(
        "INSERT INTO rig (style, level, assembled_at) VALUES ('SPLIT_FINGER', 'BEGINNER',"
            + " '2026-01-02T10:00:00.000Z')");
    long rig = rows.number("SELECT max(id) FROM rig");
    for (Laid part : parts) {
      rows.change(
          "INSERT INTO fitting (rig_id, item_id, place, from_at) SELECT ?1, id,"
              + " CASE kind WHEN 'RISER' THEN 'BODY' WHEN 'BOW' THEN 'BODY' ELSE kind END,"
              + " '2026-01-02T10:00:00.000Z' FROM item WHERE id = ?2",
          rig,
          part.id());
    }
    return rig;
  }

  /** A finished set-up as the file holds it. */
  void setUp(long rig) {
    rows.change(
        """
        INSERT INTO set_up (rig_id, begun_at, begun_by, finished_at, finished_by, brace, brace_from,
               tiller_upper, tiller_lower, nocking, screws_seen)
        VALUES (?1, '2026-01-02T11:00:00.000Z', 1, '2026-01-02T12:00:00.000Z', 1, 21590000, 'GRIP_THROAT',
               19000000, 18600000, 400000, 1)\
        """,
        rig);
  }

  /** Lends the parts of a rig as the file holds it; answers the loan. */
  long lend(long rig) {
    Instant out = Ago.days(time, 28);
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES ('Ada Finch', '07700 900009',"
            + " 'ADULT')");
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', (SELECT max(id) FROM borrower), ?1, ?2, 1, ?1, 1)\
        """,
        out,
        time.today().plusDays(21));
    long loan = rows.number("SELECT max(id) FROM loan");
    rows.change(
        """
        INSERT INTO loan_line (loan_id, item_id, rig_id, out_at)
        SELECT ?1, item_id, rig_id, ?3 FROM fitting
         WHERE rig_id = ?2 AND until_at IS NULL\
        """,
        loan,
        rig,
        out);
    return loan;
  }

  void withdraw(Laid item, String why) {
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)"
            + " VALUES (?1, '2026-05-03T10:00:00.000Z', '2026-05-03T10:00:00.000Z', 1, ?2)",
        item.id(),
        why);
  }

  void change(String sql, Object... parameters) {
    rows.change(sql, parameters);
  }

  long number(String sql, Object... parameters) {
    return rows.number(sql, parameters);
  }

  private Laid item(char letter, String kind, String model) {
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
        "INSERT INTO item (code, kind, maker, model, registered_on) VALUES (?1, ?2, 'Alderfen', ?3,"
            + " ?4)",
        code.bare(),
        kind,
        model,
        time.today());
    return new Laid(
        new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code.bare())),
        code.display());
  }
}
