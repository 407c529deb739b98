package club.ascham.register;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * Takes an item off the register that the club no longer has; its record is kept.
 *
 * <p>What something keeps in is scrapped or lost, and never sold; of what is withdrawn the database
 * says so too.
 */
@ApplicationScoped
public class RetireItem {
  private static final String NOT_SOLD =
      " So it is not sold or given away: scrap it, or have that ended first.";

  private final ItemRecords records;
  private final LastSeen lastSeen;
  private final Concerns concerns;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  RetireItem(
      ItemRecords records,
      LastSeen lastSeen,
      Concerns concerns,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.lastSeen = lastSeen;
    this.concerns = concerns;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
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
    String note = typed.text("note", ItemFields.LONGEST_NOTES);
    return typed.sound()
        ? Optional.of(new Retirement(on == null ? today : on, why, note))
        : Optional.empty();
  }

  /** Retires an item that is neither fitted nor on loan. */
  @Writes
  public Outcome<ItemId> retire(ItemId id, Retirement retirement) {
    Item item = records.findById(id.value());
    Optional<Retirement> before = item.retirement();
    if (before.isPresent()) {
      return notNow(
          "Retired before", "It was retired before: " + Words.said(before.get().why()) + ".");
    }
    Optional<RigId> rig =
        rows.one(
                RigOf.class,
                "SELECT rig_id FROM fitting WHERE item_id = ?1 AND until_at IS NULL",
                id)
            .map(RigOf::rig);
    if (rig.isPresent()) {
      return notNow(
          "Still fitted",
          "It is still fitted to a rig, number %d. Take it off there first; then retire it."
              .formatted(rig.get().value()));
    }
    Optional<LoanId> loan =
        rows.one(
                LoanOf.class,
                "SELECT min(loan_id) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL"
                    + " HAVING min(loan_id) IS NOT NULL",
                id)
            .map(LoanOf::loan);
    if (loan.isPresent()) {
      return notNow(
          "On loan",
          "It is out on loan %d. Receive it first, or report it lost with its loan."
              .formatted(loan.get().value()));
    }
    if (retirement.why() == RetiredWhy.SOLD) {
      Against against = concerns.of(id);
      if (against.blocks()) {
        return Outcome.refused("why", against.keptIn() + NOT_SOLD);
      }
    }
    Optional<String> since = lastSeen.since(id, item.registeredOn(), retirement.on());
    if (since.isPresent()) {
      return Outcome.refused("on", since.get());
    }
    item.retire(retirement);
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", id);
    story.tell(
        Story.Told.ofItem(
                happened(retirement.on()),
                actor.id(),
                id,
                "Retired: " + Words.said(retirement.why()) + ".")
            .because(retirement.note()));
    return Outcome.done(
        id,
        "Retired: "
            + Words.said(retirement.why())
            + ". Its story is kept; its code is not given again.");
  }

  private static Outcome<ItemId> notNow(String title, String why) {
    return Outcome.refused(Refusal.now(title, "item", why));
  }

  record RigOf(RigId rig) {}

  record LoanOf(LoanId loan) {}

  private Instant happened(LocalDate on) {
    return on.equals(time.today()) ? time.now() : time.momentOf(on.atTime(LocalTime.NOON));
  }
}
