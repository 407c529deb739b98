package club.ascham.worksheet;

import club.ascham.bow.Who;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** Signs an inspection: keeps what was found, plans the next, and withdraws what failed. */
@ApplicationScoped
class InspectItem {
  static final String NOT_YOURS =
      "The limb-bolt inspection is signed by someone who holds the club's permit for limb bolts."
          + " Send it to the officer.";

  private final WorkRecords records;
  private final WithdrawItem withdrawItem;
  private final AskForWork askForWork;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  InspectItem(
      WorkRecords records,
      WithdrawItem withdrawItem,
      AskForWork askForWork,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.withdrawItem = withdrawItem;
    this.askForWork = askForWork;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How signing went. */
  sealed interface Outcome {
    /** Kept: the page that shows it. */
    record Signed(String page) implements Outcome {}

    /** Nothing was kept: this person may not sign it. */
    record NotYours(String message) implements Outcome {}

    /** Nothing was kept: the item is not the club's to inspect any more. */
    record Retired(String message) implements Outcome {}
  }

  /** Whether the person at this request may sign this work. */
  boolean maySign(Work work) {
    return work.signedBy() != Who.PERMIT_HOLDER || actor.holdsPermit(time.today());
  }

  @Writes
  Outcome inspect(Subject subject, InspectionList list, Inspection inspection, String formKey) {
    var led = pressed.ledTo(formKey);
    if (led.isPresent()) {
      return new Outcome.Signed(led.get());
    }
    if (records.isRetired(subject.id())) {
      return new Outcome.Retired(subject.code() + " is retired: there is nothing to inspect.");
    }
    Work work = list.work();
    if (!maySign(work)) {
      return new Outcome.NotYours(NOT_YOURS);
    }
    Inspected.Outcome outcome = inspection.found().outcome(list);
    long record =
        records.keep(
            subject.id(),
            work,
            inspection.happened(),
            outcome,
            inspection.found().partsUsed(),
            null);
    boolean failed = outcome.result() == Result.FAILED;
    if (failed) {
      withdraw(subject, work, outcome.found(), inspection.happened());
    }
    story.tell(
        Story.Told.ofItem(
                inspection.happened(),
                actor.id(),
                subject.id(),
                work.capital() + (failed ? ": not passed." : ": passed."))
            .because(outcome.found()));
    String page = "/upkeep/records/" + record;
    pressed.leads(formKey, page);
    return new Outcome.Signed(page);
  }

  /** What failed waits for the same inspection again, even where it was out of use before. */
  private void withdraw(Subject subject, Work work, String found, Instant happened) {
    if (withdrawItem.withdraw(subject.id(), new Reason(found, work, null), happened, null)
        instanceof WithdrawItem.Outcome.AlreadyOut) {
      askForWork.ask(subject.id(), new Request(work, found, true), happened, null);
    }
  }
}
