package club.ascham.withdrawal;

import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
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
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  WithdrawItem(
      WithdrawalRecords records,
      AskForWork askForWork,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.askForWork = askForWork;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How asking for it ended. */
  public sealed interface Outcome {
    record Withdrawn(long id) implements Outcome {}

    /** It was out of use before: that withdrawal stands, and nothing was changed. */
    record AlreadyOut(long id) implements Outcome {}

    /** The same form was sent before; this is the page it led to. */
    record PressedBefore(String page) implements Outcome {}
  }

  /**
   * May be called inside another use case, without a form key.
   *
   * @param formKey null: none
   */
  @Writes
  public Outcome withdraw(ItemId item, Reason reason, Instant happened, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.PressedBefore(before.get());
    }
    Optional<Withdrawal> open = records.openOf(item);
    if (open.isPresent()) {
      return new Outcome.AlreadyOut(open.get().id());
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
          item,
          new Request(reason.work(), reason.why(), true, Request.Cause.WITHDRAWN),
          happened,
          null);
    }
    pressed.leads(formKey, "/withdrawals");
    return new Outcome.Withdrawn(withdrawal.id());
  }
}
