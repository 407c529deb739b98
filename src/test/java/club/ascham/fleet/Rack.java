package club.ascham.fleet;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Hangs rigs on the rack for the tests, sets them up, lends them and takes them back. */
@ApplicationScoped
public class Rack {
  private final Rows rows;
  private final ClubTime time;
  private final ClubFixture fixture;

  Rack(Rows rows, ClubTime time, ClubFixture fixture) {
    this.rows = rows;
    this.time = time;
    this.fixture = fixture;
  }

  /** A rig on the rack, with what its labels say. */
  public record Hung(
      RigId id,
      ItemId riser,
      ItemId limbs,
      ItemId string,
      String riserCode,
      String limbsCode,
      String stringCode) {
    private static Hung of(LaidBow bow) {
      return new Hung(
          bow.id(),
          bow.body().id(),
          bow.limbs().id(),
          bow.string().id(),
          bow.body().code(),
          bow.limbs().code(),
          bow.string().code());
    }

    public List<ItemId> parts() {
      return List.of(riser, limbs, string);
    }
  }

  /** A rig of a 25 in riser and medium limbs (68 in), set up a month ago and ready. */
  @Transactional
  public Hung readyRig(String hand, double markedLb) {
    return Hung.of(fixture.aNewBow(hand, markedLb));
  }

  /** The same before its set-up. */
  @Transactional
  public Hung rigWithoutSetUp() {
    return Hung.of(fixture.aNewBowNotSetUp());
  }

  @Transactional
  public List<Hung> readyRigs(int many) {
    return fixture.newBows(many).stream().map(Hung::of).toList();
  }

  @Transactional
  public LoanId lend(Hung rig, String borrower, LocalDate dueOn) {
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES (?1, 'by post', 'ADULT')", borrower);
    return lendAgain(rig, rows.number("SELECT max(id) FROM borrower"), dueOn);
  }

  @Transactional
  public LoanId lendAgain(Hung rig, long borrower, LocalDate dueOn) {
    LocalDate day = dueOn.minusDays(7);
    Instant out = day.isBefore(time.today()) ? Ago.morningOf(time, day) : Ago.days(time, 20);
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', ?1, ?2, ?3, 1, ?2, 1)\
        """,
        borrower,
        out,
        dueOn);
    return lines(rig, out);
  }

  @Transactional
  public LoanId lendToSession(Hung rig, String leader) {
    Instant out = time.now().minus(Duration.ofHours(1));
    rows.change(
        """
        INSERT INTO loan (kind, leader, issued_at, due_on, issued_by, recorded_at)
        VALUES ('SESSION', ?1, ?2, ?3, 1, ?2)\
        """,
        leader,
        out,
        time.today());
    return lines(rig, out);
  }

  private LoanId lines(Hung rig, Instant out) {
    LoanId loan = new LoanId(rows.number("SELECT max(id) FROM loan"));
    for (ItemId part : rig.parts()) {
      rows.change(
          "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?1, ?2, ?3, ?4)",
          loan,
          part,
          rig.id(),
          out);
    }
    return loan;
  }

  /** Everything of the loan is back; nobody has looked at it. */
  @Transactional
  public void takeBack(LoanId loan) {
    rows.change(
        "UPDATE loan_line SET back_at = ?2, outcome = 'BACK' WHERE loan_id = ?1", loan, time.now());
  }

  /** All that is due on a day is back: lists show the first few alone, and others left some. */
  @Transactional
  public void takeBackWhatIsDue(LocalDate day) {
    rows.change(
        """
        UPDATE loan_line SET back_at = max(?2, out_at), outcome = 'BACK'
         WHERE back_at IS NULL AND loan_id IN (SELECT id FROM loan WHERE due_on = ?1)""",
        day,
        time.now());
  }

  /** A check with this verdict, not put back. */
  @Transactional
  public void check(Hung rig, String verdict) {
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (?1, 'LOOK', ?2, ?2, 1, 1, ?3)\
        """,
        rig.id(),
        time.now(),
        verdict);
  }

  /** Somebody asked for an inspection that keeps it in. */
  public void asked(ItemId item, String work, String why) {
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, ?2, ?3, 1, ?4, 1, 'REPORTED')""",
        item,
        work,
        time.now(),
        why);
  }

  @Transactional
  public void withdraw(ItemId item, String why) {
    rows.change(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)
        VALUES (?1, ?2, ?2, 1, ?3)\
        """,
        item,
        time.now(),
        why);
  }

  /** Its yearly inspection is overdue: it was bought, and never looked at, two years ago. */
  @Transactional
  public void neverInspected(ItemId riser) {
    rows.change("UPDATE item SET bought_on = ?2 WHERE id = ?1", riser, time.today().minusYears(2));
  }

  @Transactional
  public void firstUsed(ItemId string, LocalDate day) {
    rows.change("UPDATE bowstring SET first_used = ?2 WHERE id = ?1", string, day);
  }

  @Transactional
  public void called(ItemId item, String maker, String model, String serial) {
    rows.change(
        "UPDATE item SET maker = ?2, model = ?3, serial = ?4 WHERE id = ?1",
        item,
        maker,
        model,
        serial);
  }

  /**
   * Whatever was lent is back, and nothing is kept: others' lists of what is out stay as they were.
   */
  @Transactional
  public void putAway(List<Hung> rigs) {
    for (Hung rig : rigs) {
      rows.change(
          """
          UPDATE loan_line SET back_at = max(out_at, ?2), outcome = 'BACK'
           WHERE back_at IS NULL AND loan_id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1)""",
          rig.id(),
          time.now());
      for (ItemId part : rig.parts()) {
        rows.change(
            """
            UPDATE accident SET ended_at = max(recorded_at, ?2), ended_by = 1, end_why = 'The test is over.'
             WHERE ended_at IS NULL AND id IN (SELECT accident_id FROM accident_item WHERE item_id = ?1)""",
            part,
            time.now());
      }
    }
  }

  /** Takes rigs off the rack again with all that was done, so that others find it as it was. */
  @Transactional
  public void clear(List<Hung> rigs) {
    for (Hung rig : rigs) {
      rows.change("DELETE FROM bow_check WHERE rig_id = ?1", rig.id());
      List<String> loans =
          rows.texts("SELECT DISTINCT loan_id FROM loan_line WHERE rig_id = ?1", rig.id());
      rows.change("DELETE FROM loan_line WHERE rig_id = ?1", rig.id());
      loans.forEach(loan -> rows.change("DELETE FROM loan WHERE id = ?1", Long.valueOf(loan)));
      rig.parts().forEach(part -> rows.change("DELETE FROM withdrawal WHERE item_id = ?1", part));
      rig.parts().forEach(part -> rows.change("DELETE FROM upkeep_task WHERE item_id = ?1", part));
      rows.change("DELETE FROM set_up WHERE rig_id = ?1", rig.id());
      rows.change("DELETE FROM fitting WHERE rig_id = ?1", rig.id());
      rows.change("DELETE FROM rig WHERE id = ?1", rig.id());
      rows.change("DELETE FROM riser WHERE id = ?1", rig.riser());
      rows.change("DELETE FROM limbs WHERE id = ?1", rig.limbs());
      rows.change("DELETE FROM bowstring WHERE id = ?1", rig.string());
      rig.parts().forEach(part -> rows.change("DELETE FROM upkeep_plan WHERE item_id = ?1", part));
      rig.parts().forEach(part -> rows.change("DELETE FROM item WHERE id = ?1", part));
    }
  }
}
