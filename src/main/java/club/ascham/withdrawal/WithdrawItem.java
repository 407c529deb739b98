package club.ascham.withdrawal;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** Takes a part out of use; anyone who may change things may do that, at once. */
@ApplicationScoped
public class WithdrawItem {
  private final WithdrawalRecords records;
  private final AskForWork askForWork;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  WithdrawItem(
      WithdrawalRecords records, AskForWork askForWork, Story story, Actor actor, ClubTime time) {
    this.records = records;
    this.askForWork = askForWork;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** May be called inside another use case. */
  @Writes
  public Outcome<WithdrawalId> withdraw(ItemId item, Reason reason, Instant happened) {
    Optional<Withdrawal> open = records.openOf(item);
    if (open.isPresent()) {
      return Outcome.refused(
          Refusal.now("Withdrawn already", "It was withdrawn before; that withdrawal stands."));
    }
    Withdrawal withdrawal = new Withdrawal(item, reason, actor.id(), happened, time.now());
    records.persistAndFlush(withdrawal);
    story.tell(
        Story.Told.ofItem(
                happened,
                actor.id(),
                item,
                reason.work() == null
                    ? "Withdrawn."
                    : "Withdrawn; needs a " + reason.work().said() + ".")
            .because(reason.why()));
    if (reason.work() != null) {
      askForWork.ask(
          item, new Request(reason.work(), reason.why(), true, Request.Cause.WITHDRAWN), happened);
    }
    return Outcome.done(
        new WithdrawalId(withdrawal.id()),
        "It is withdrawn until someone with the permit releases it.");
  }

  /** Withdraws it unless it is out of use already, and names the withdrawal that stands. */
  @Writes
  public WithdrawalId standing(ItemId item, Reason reason, Instant happened) {
    return withdraw(item, reason, happened) instanceof Outcome.Done<WithdrawalId> done
        ? done.made()
        : new WithdrawalId(records.openOf(item).orElseThrow().id());
  }
}
