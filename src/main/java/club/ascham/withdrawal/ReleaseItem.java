package club.ascham.withdrawal;

import club.ascham.form.Words;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Releases a withdrawn part: the act of a person with the permit, who says what was looked at, by
 * whom, and why it may be used again.
 */
@ApplicationScoped
class ReleaseItem {
  static final String NOT_YOURS =
      "A withdrawal is released by someone who holds the club's permit for limb bolts. Ask the"
          + " officer.";
  static final String ALREADY = "It was released already.";

  private final WithdrawalRecords records;
  private final Withdrawals withdrawals;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  ReleaseItem(
      WithdrawalRecords records,
      Withdrawals withdrawals,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.withdrawals = withdrawals;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How asking for it ended. */
  sealed interface Outcome {
    record Released(String page) implements Outcome {}

    /** Nothing was changed. */
    record Refused(String message, boolean notYours) implements Outcome {}

    /** Nothing was changed: something is to be done first. */
    record NotYet(Hindrance hindrance) implements Outcome {}
  }

  @Writes
  Outcome release(long id, Release release, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.Released(before.get());
    }
    if (!actor.holdsPermit(time.today())) {
      return new Outcome.Refused(NOT_YOURS, true);
    }
    Withdrawal withdrawal = records.findById(id);
    if (withdrawal == null || !withdrawal.isOpen()) {
      return new Outcome.Refused(ALREADY, false);
    }
    Optional<Hindrance> hindrance = withdrawals.hindrance(id);
    if (hindrance.isPresent()) {
      return new Outcome.NotYet(hindrance.get());
    }
    Instant now = time.now();
    withdrawal.release(actor.id(), now, release);
    records.flush();
    String looker = withdrawals.one(id).orElseThrow().lookedBy();
    story.tell(
        Story.Told.ofItem(now, actor.id(), withdrawal.item(), "Released.")
            .because(
                Words.sentences(
                    List.of(release.why(), "Looked at by " + looker + ": " + release.lookedAt()))));
    pressed.leads(formKey, "/withdrawals");
    return new Outcome.Released("/withdrawals");
  }
}
