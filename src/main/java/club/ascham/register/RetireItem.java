package club.ascham.register;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/** Takes an item off the register that the club no longer has; its record is kept. */
@ApplicationScoped
public class RetireItem {
  private static final String NOT_SOLD =
      " So it is not sold or given away: scrap it, or have that ended first.";

  private final ItemRecords records;
  private final LastSeen lastSeen;
  private final Concerns concerns;
  private final Rows rows;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  RetireItem(
      ItemRecords records,
      LastSeen lastSeen,
      Concerns concerns,
      Rows rows,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.lastSeen = lastSeen;
    this.concerns = concerns;
    this.rows = rows;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** What became of it. */
  public sealed interface Outcome {
    /** It is retired. */
    record Retired() implements Outcome {}

    /** It was before; nothing was changed. */
    record RetiredBefore(Retirement retirement) implements Outcome {}

    /** It is part of this rig. */
    record StillFitted(RigId rig) implements Outcome {}

    /** It is out with this loan. */
    record OnLoan(LoanId loan) implements Outcome {}

    /** Something keeps it in, and whoever it went to would know nothing of that. */
    record KeptIn(String message) implements Outcome {}

    /** The record knows of it on a later day than this one; says which and how. */
    record SeenSince(String message) implements Outcome {}
  }

  /** Empty where anything is wrong; then the faults stand at their fields. */
  public static Optional<Retirement> read(Typed typed, LocalDate today) {
    RetiredWhy why =
        typed.requiredWord(
            "why", RetiredWhy.class, "Say what became of it: scrapped, sold or lost.");
    LocalDate on = typed.day("on");
    if (on != null && on.isAfter(today)) {
      typed.fault("on", "That day is still to come.");
    }
    String note = typed.optional("note", ItemReader.LONGEST_NOTES);
    return typed.sound()
        ? Optional.of(new Retirement(on == null ? today : on, why, note))
        : Optional.empty();
  }

  /**
   * Retires an item that is neither fitted nor on loan.
   *
   * @param formKey null: none
   */
  @Writes
  public Outcome retire(ItemId id, Retirement retirement, String formKey) {
    if (pressed.ledTo(formKey).isPresent()) {
      return new Outcome.Retired();
    }
    Item item = records.findById(id.value());
    Optional<Retirement> before = item.retirement();
    if (before.isPresent()) {
      return new Outcome.RetiredBefore(before.get());
    }
    Optional<RigId> rig =
        rows.one(
                RigOf.class,
                "SELECT rig_id FROM fitting WHERE item_id = ?1 AND until_at IS NULL",
                id)
            .map(RigOf::rig);
    if (rig.isPresent()) {
      return new Outcome.StillFitted(rig.get());
    }
    Optional<LoanId> loan =
        rows.one(
                LoanOf.class,
                "SELECT min(loan_id) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL"
                    + " HAVING min(loan_id) IS NOT NULL",
                id)
            .map(LoanOf::loan);
    if (loan.isPresent()) {
      return new Outcome.OnLoan(loan.get());
    }
    if (retirement.why() == RetiredWhy.SOLD) {
      Against against = concerns.of(id);
      if (against.blocks()) {
        return new Outcome.KeptIn(against.keptIn() + NOT_SOLD);
      }
    }
    Optional<String> since = lastSeen.since(id, item.registeredOn(), retirement.on());
    if (since.isPresent()) {
      return new Outcome.SeenSince(since.get());
    }
    item.retire(retirement);
    records.flush();
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", id);
    story.tell(
        Story.Told.ofItem(
                happened(retirement.on()),
                actor.id(),
                id,
                "Retired: " + Words.said(retirement.why()) + ".")
            .because(retirement.note()));
    pressed.leads(formKey, "/items/" + item.code().display());
    return new Outcome.Retired();
  }

  record RigOf(RigId rig) {}

  record LoanOf(LoanId loan) {}

  private Instant happened(LocalDate on) {
    return on.equals(time.today()) ? time.now() : time.momentOf(on.atTime(LocalTime.NOON));
  }
}
