package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Takes a string off its rig and fits another; the rig then waits for its set-up. */
@ApplicationScoped
class ReplaceString {
  private final Rows rows;
  private final Subjects subjects;
  private final Spares spares;
  private final WorkRecords records;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  ReplaceString(
      Rows rows,
      Subjects subjects,
      Spares spares,
      WorkRecords records,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.subjects = subjects;
    this.spares = spares;
    this.records = records;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How it went. */
  sealed interface Outcome {
    /** Done: the page that shows it. */
    record Replaced(String page) implements Outcome {}

    /**
     * Nothing was changed.
     *
     * @param field the field at fault; null: the thing as a whole
     */
    record Refused(String field, String message) implements Outcome {}
  }

  /** Why the string of this item can't be replaced now; empty where it can. */
  static Optional<String> refusal(Subject old) {
    if (old.isRetired()) {
      return Optional.of("This string is retired.");
    }
    if (old.rig() == null) {
      return Optional.of(
          "This string is fitted to no rig, so nothing takes its place: scrap it, or keep it.");
    }
    if (old.loan() != null) {
      return Optional.of(
          "This string is out on loan: receive it first, or change the part on its loan's page.");
    }
    return Optional.empty();
  }

  @Writes
  Outcome replace(ItemCode oldCode, Replacement replacement, String formKey) {
    var led = pressed.ledTo(formKey);
    if (led.isPresent()) {
      return new Outcome.Replaced(led.get());
    }
    Subject old = subjects.coded(oldCode).orElseThrow();
    Optional<String> refusal = refusal(old);
    if (refusal.isPresent()) {
      return new Outcome.Refused(null, refusal.get());
    }
    Optional<Spare> spare = spares.forRig(old.rig()).coded(replacement.newString().bare());
    if (spare.isEmpty()) {
      return new Outcome.Refused(
          "newString",
          replacement.newString().display()
              + " can't take its place: it is no ready string that fits this rig and hangs free."
              + " Choose one of those listed.");
    }
    Instant now = time.now();
    exchange(old, spare.get(), now);
    long record =
        records.keep(
            old.id(),
            Work.STRING_REPLACEMENT,
            now,
            new Inspected.Outcome(Result.REPLACED, replacement.words(), null),
            null,
            spare.get().id());
    boolean scrapped = replacement.oldString() == Replacement.OldString.SCRAPPED;
    if (scrapped) {
      retire(old.id());
    }
    tell(old, spare.get(), scrapped, replacement.words(), now);
    String page = "/upkeep/records/" + record;
    pressed.leads(formKey, page);
    return new Outcome.Replaced(page);
  }

  private void exchange(Subject old, Spare spare, Instant now) {
    RigId rig = old.rig();
    rows.change(
        "UPDATE fitting SET until_at = ?3 WHERE rig_id = ?1 AND item_id = ?2 AND until_at IS NULL",
        rig,
        old.id(),
        now);
    rows.change(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (?1, ?2, 'STRING', ?3)",
        rig,
        spare.id(),
        now);
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", spare.id());
    rows.change(
        "UPDATE bowstring SET first_used = ?2 WHERE id = ?1 AND first_used IS NULL",
        spare.id(),
        time.dayOf(now));
    // Whoever holds a page of this rig from before sees that someone changed it first; a set-up
    // begun with the old string holds for nothing any more.
    rows.change("UPDATE rig SET version = version + 1 WHERE id = ?1", rig);
    rows.change(
        """
        UPDATE set_up SET begun_at = ?2, begun_by = ?3, steps_done = '', brace = NULL, brace_typed = NULL,
               brace_from = NULL, tiller_upper = NULL, upper_typed = NULL, tiller_lower = NULL,
               lower_typed = NULL, nocking = NULL, nocking_typed = NULL, screws_seen = 0,
               turns_upper = NULL, turns_lower = NULL, twists = NULL, version = version + 1
         WHERE rig_id = ?1 AND finished_at IS NULL""",
        rig,
        now,
        actor.id());
  }

  private void retire(ItemId old) {
    rows.change(
        """
        UPDATE item SET retired_on = ?2, retired_why = 'SCRAPPED', retired_note = 'Replaced.',
               version = version + 1
         WHERE id = ?1""",
        old,
        time.today());
  }

  private void tell(Subject old, Spare spare, boolean scrapped, String words, Instant now) {
    story.tell(
        Story.Told.ofRig(
                now,
                actor.id(),
                old.rig(),
                List.of(old.id(), spare.id()),
                "String "
                    + old.code()
                    + " replaced by "
                    + spare.code()
                    + (scrapped ? "; the old one scrapped." : "; the old one kept as a spare."))
            .because(words));
  }
}
