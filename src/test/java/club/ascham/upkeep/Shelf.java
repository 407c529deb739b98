package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;

/** Puts things on the shelf for the tests: each call adds something new and answers it. */
@ApplicationScoped
public class Shelf {
  private final Rows rows;
  private final ClubTime time;

  Shelf(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** An item on the shelf. */
  public record Put(ItemId id, String code) {
    /** Its field in a form that ticks items. */
    public String field() {
      return "item-" + id.value();
    }
  }

  /** A rig that is set up and ready. */
  public record ReadyRig(RigId id, Put riser, Put limbs, Put string) {}

  public Put aRiser() {
    Put riser = item('R', "RISER");
    rows.change(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting, max_turns_out)"
            + " VALUES (?1, 'ADJUSTABLE', 'RIGHT', 25, 'ILF', 4)",
        riser.id());
    passAll(riser, 20);
    return riser;
  }

  public Put aString(int forBowIn) {
    Put string = item('S', "STRING");
    rows.change(
        "INSERT INTO bowstring (id, for_bow_in, material, strands) VALUES (?1, ?2, 'POLYESTER', 12)",
        string.id(),
        forBowIn);
    return string;
  }

  public Put aStringer() {
    Put stringer = item('T', "STRINGER");
    rows.change(
        "INSERT INTO stringer (id, stringer_kind, bow_from_in, bow_to_in) VALUES (?1, 'TIP_TO_TIP', 62, 70)",
        stringer.id());
    passAll(stringer, 20);
    return stringer;
  }

  /** A 68 in rig, everything inspected twenty days ago. */
  public ReadyRig aReadyRig() {
    Put riser = aRiser();
    Put limbs = item('L', "LIMBS");
    rows.change(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?1, 'ADJUSTABLE', 'MEDIUM', 20, 'ILF')",
        limbs.id());
    passAll(limbs, 20);
    Put string = aString(68);
    Instant ago = daysAgo(15);
    rows.change(
        "INSERT INTO rig (style, level, assembled_at) VALUES ('SPLIT_FINGER', 'BEGINNER', ?1)",
        ago);
    RigId rig = new RigId(rows.number("SELECT max(id) FROM rig"));
    List.of(riser, limbs, string)
        .forEach(
            part ->
                rows.change(
                    "INSERT INTO fitting (rig_id, item_id, place, from_at) SELECT ?1, id,"
                        + " CASE kind WHEN 'RISER' THEN 'BODY' ELSE kind END, ?3 FROM item WHERE id = ?2",
                    rig,
                    part.id(),
                    ago));
    rows.change(
        """
        INSERT INTO set_up (rig_id, begun_at, begun_by, finished_at, finished_by, brace, brace_from,
               tiller_upper, tiller_lower, nocking, screws_seen)
        VALUES (?1, ?2, 1, ?2, 1, 21590000, 'GRIP_THROAT', 19000000, 18600000, 400000, 1)""",
        rig,
        ago);
    return new ReadyRig(rig, riser, limbs, string);
  }

  /** Its inspections were all passed so many days ago. */
  public void passAll(Put item, int days) {
    rows.change("DELETE FROM upkeep_record WHERE item_id = ?1", item.id());
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        SELECT DISTINCT ?1, work, ?2, ?2, 1, 'PASSED'
          FROM upkeep_rule WHERE item_kind = (SELECT kind FROM item WHERE id = ?1)
           AND work <> 'STRING_REPLACEMENT'""",
        item.id(),
        daysAgo(days));
  }

  public long lend(ReadyRig rig, String borrower) {
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES (?1, '07700 900002', 'ADULT')",
        borrower);
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', (SELECT max(id) FROM borrower), ?1, ?2, 1, ?1, 1)""",
        daysAgo(1),
        time.today().plusDays(20));
    long loan = rows.number("SELECT max(id) FROM loan");
    for (Put part : List.of(rig.riser(), rig.limbs(), rig.string())) {
      rows.change(
          "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?1, ?2, ?3, ?4)",
          loan,
          part.id(),
          rig.id(),
          daysAgo(1));
    }
    return loan;
  }

  public void name(Put item, String maker, String batch) {
    rows.change("UPDATE item SET maker = ?2, batch = ?3 WHERE id = ?1", item.id(), maker, batch);
  }

  public String state(Put item) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM item_standing s WHERE s.item_id = ?2",
            time.today(),
            item.id())
        .get(0);
  }

  public String rigState(RigId rig) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM rig_standing s WHERE s.rig_id = ?2",
            time.today(),
            rig)
        .get(0);
  }

  public long number(String sql, Object... parameters) {
    return rows.number(sql, parameters);
  }

  public String text(String sql, Object... parameters) {
    return rows.texts(sql, parameters).get(0);
  }

  public void change(String sql, Object... parameters) {
    rows.change(sql, parameters);
  }

  private Instant daysAgo(int days) {
    return Ago.days(time, days);
  }

  private Put item(char letter, String kind) {
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
        "INSERT INTO item (code, kind, maker, model, registered_on) VALUES (?1, ?2, 'Alderfen', 'Heron', ?3)",
        code.bare(),
        kind,
        time.today().minusDays(30));
    return new Put(
        new ItemId(rows.number("SELECT id FROM item WHERE code = ?1", code.bare())),
        code.display());
  }
}
