package club.ascham.register;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.AnswerId;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.KeptAnswers;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.FailedWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Puts a retired item back on the register: it was found, or was never gone. What stands against it
 * from then on is written in the same transaction.
 */
@ApplicationScoped
public class FindAgain {
  private static final int LONGEST_WHY = 500;

  private final ItemRecords records;
  private final FailedWork failedWork;
  private final WithdrawItem withdrawItem;
  private final AskForWork askForWork;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;
  private final KeptAnswers answers;

  FindAgain(
      ItemRecords records,
      FailedWork failedWork,
      WithdrawItem withdrawItem,
      AskForWork askForWork,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time,
      KeptAnswers answers) {
    this.records = records;
    this.failedWork = failedWork;
    this.withdrawItem = withdrawItem;
    this.askForWork = askForWork;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
    this.answers = answers;
  }

  /** Reads {@code why}; empty where it is missing, which then stands at its field. */
  static Optional<String> read(Typed typed) {
    return Optional.ofNullable(
        typed.reason(
            "why",
            LONGEST_WHY,
            "How did it come back? Where it was found, or why it was never gone."));
  }

  /** What would stand against a retired item, for the page that asks. */
  FoundAgain wouldStand(ItemId id, ItemKind kind, RetiredWhy was) {
    boolean withdrawn =
        rows.number(
                "SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL", id)
            > 0;
    return FoundAgain.of(kind, was, failedWork.of(id), withdrawn);
  }

  /**
   * @param why in whole words
   */
  @Writes
  public Outcome<AnswerId> found(ItemId id, String why) {
    Item item = records.findById(id.value());
    Optional<Retirement> was = item.retirement();
    if (was.isEmpty()) {
      return Outcome.refused(
          Refusal.now("Not retired", "It is not retired, so it can't be found again."));
    }
    RetiredWhy retired = was.get().why();
    FoundAgain again = wouldStand(id, item.kind(), retired);
    item.findAgain();
    Instant now = time.now();
    story.tell(
        Story.Told.ofItem(
                now,
                actor.id(),
                id,
                retired == RetiredWhy.LOST
                    ? "Found again."
                    : "Back on the register: not " + Words.said(retired) + " after all.")
            .because(why));
    String because = "Found again: " + why;
    again
        .withdrawnBecause()
        .ifPresent(
            cause ->
                withdrawItem.withdraw(
                    id,
                    new Reason(Words.sentences(List.of(because, cause)), again.work(), null),
                    now));
    for (Work work : again.inspections()) {
      askForWork.ask(id, new Request(work, because, true, Request.Cause.FOUND_AGAIN), now);
    }
    return Outcome.done(answers.keep(again), again.said());
  }
}
