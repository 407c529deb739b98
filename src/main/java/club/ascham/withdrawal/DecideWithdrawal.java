package club.ascham.withdrawal;

import club.ascham.people.Actor;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** Decides what a withdrawn part needs: the act of a person with the permit. */
@ApplicationScoped
class DecideWithdrawal {
  static final String NOT_YOURS =
      "What a withdrawn part needs is decided by someone who holds the club's permit for limb"
          + " bolts. Ask the officer.";
  static final String BEFORE = "What it needs was decided already.";

  private final WithdrawalRecords records;
  private final AskForWork askForWork;
  private final KeptAsItIs kept;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  DecideWithdrawal(
      WithdrawalRecords records,
      AskForWork askForWork,
      KeptAsItIs kept,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.askForWork = askForWork;
    this.kept = kept;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How it ended. */
  sealed interface Outcome {
    /** It is decided; the page goes on from there. */
    record Decided(String page) implements Outcome {}

    /** Nothing was changed. */
    record Refused(String message, boolean notYours) implements Outcome {}
  }

  @Writes
  Outcome decide(long id, Decision decision, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.Decided(before.get());
    }
    if (!actor.holdsPermit(time.today())) {
      return new Outcome.Refused(NOT_YOURS, true);
    }
    Withdrawal withdrawal = records.findById(id);
    if (withdrawal == null || !withdrawal.isOpen()) {
      return new Outcome.Refused(ReleaseItem.ALREADY, false);
    }
    if (kept.keeps(withdrawal.item(), time.now())) {
      return new Outcome.Refused(KeptAsItIs.SAID, false);
    }
    if (withdrawal.isDecided()) {
      return new Outcome.Refused(BEFORE, false);
    }
    Instant now = time.now();
    withdrawal.decide(actor.id(), now, decision);
    records.flush();
    if (decision.work() == null) {
      story.tell(
          Story.Told.ofItem(now, actor.id(), withdrawal.item(), "Decided: no inspection fits.")
              .because(decision.noWorkWhy()));
    } else {
      askForWork.ask(
          withdrawal.item(), new Request(decision.work(), withdrawal.why(), true), now, null);
    }
    String page = "/withdrawals/" + id + "/release";
    pressed.leads(formKey, page);
    return new Outcome.Decided(page);
  }
}
