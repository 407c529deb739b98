package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.concurrent.atomic.AtomicInteger;

/** Lays parts on the bench for the tests: each call registers a new item and answers it. */
@ApplicationScoped
class Bench {
  private static final AtomicInteger NEXT = new AtomicInteger(7000);

  private final Rows rows;

  Bench(Rows rows) {
    this.rows = rows;
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
        "INSERT INTO riser (id, build, hand, length_in, limb_model) VALUES (?1, 'SCREW_IN', 'RIGHT', 24, ?2)",
        item.id(),
        limbModel);
    return item;
  }

  Laid slotInLimbs(String size, double markedLb) {
    Laid item = item('L', "LIMBS", "Sedge");
    rows.change(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?1, 'ADJUSTABLE', ?2, ?3, 'ILF')",
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
        "INSERT INTO stringer (id, stringer_kind, bow_from_in, bow_to_in) VALUES (?1, 'TIP_TO_TIP', ?2, ?3)",
        item.id(),
        fromIn,
        toIn);
    return item;
  }

  /** A rig of the common sort as the file holds it: 25 in riser, medium limbs, 68 in string. */
  long assembled(Laid... parts) {
    rows.change(
        "INSERT INTO rig (style, level, assembled_at) VALUES ('SPLIT_FINGER', 'BEGINNER', '2026-01-02T10:00:00.000Z')");
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

  void withdraw(Laid item, String why) {
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)"
            + " VALUES (?1, '2026-05-03T10:00:00.000Z', '2026-05-03T10:00:00.000Z', 1, ?2)",
        item.id(),
        why);
  }

  long number(String sql, Object... parameters) {
    return rows.number(sql, parameters);
  }

  private Laid item(char letter, String kind, String model) {
    int number = ItemCode.nextIssuable(letter, NEXT.getAndAdd(5)).orElseThrow();
    ItemCode code = ItemCode.of(letter, number).orElseThrow();
    rows.change(
        "INSERT INTO item (code, kind, maker, model, registered_on) VALUES (?1, ?2, 'Alderfen', ?3, '2026-01-01')",
        code.bare(),
        kind,
        model);
    return new Laid(
        new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code.bare())),
        code.display());
  }
}
