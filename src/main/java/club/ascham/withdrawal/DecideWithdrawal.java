package club.ascham.withdrawal;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Actor;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

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
  private final Actor actor;
  private final ClubTime time;

  DecideWithdrawal(
      WithdrawalRecords records,
      AskForWork askForWork,
      KeptAsItIs kept,
      Story story,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.askForWork = askForWork;
    this.kept = kept;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<WithdrawalId> decide(long id, Decision decision) {
    if (!actor.holdsPermit(time.today())) {
      return Outcome.refused(Refusal.notYours("decide", NOT_YOURS));
    }
    Withdrawal withdrawal = records.findById(id);
    if (withdrawal == null || !withdrawal.isOpen()) {
      return notNow(ReleaseItem.ALREADY);
    }
    if (kept.keeps(withdrawal.item(), time.now())) {
      return notNow(KeptAsItIs.SAID);
    }
    if (withdrawal.isDecided()) {
      return notNow(BEFORE);
    }
    Instant now = time.now();
    withdrawal.decide(actor.id(), now, decision);
    if (decision.work() == null) {
      story.tell(
          Story.Told.ofItem(now, actor.id(), withdrawal.item(), "Decided: no inspection fits.")
              .because(decision.noWorkWhy()));
    } else {
      askForWork.ask(withdrawal.item(), new Request(decision.work(), withdrawal.why(), true), now);
    }
    return Outcome.done(new WithdrawalId(id));
  }

  private static Outcome<WithdrawalId> notNow(String why) {
    return Outcome.refused(Refusal.now("Not decided", "decide", why));
  }
}
