package club.ascham.withdrawal;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Words;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Actor;
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
  private final Actor actor;
  private final ClubTime time;

  ReleaseItem(
      WithdrawalRecords records, Withdrawals withdrawals, Story story, Actor actor, ClubTime time) {
    this.records = records;
    this.withdrawals = withdrawals;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<WithdrawalId> release(long id, Release release) {
    if (!actor.holdsPermit(time.today())) {
      return Outcome.refused(Refusal.notYours("release", NOT_YOURS));
    }
    Withdrawal withdrawal = records.findById(id);
    if (withdrawal == null || !withdrawal.isOpen()) {
      return notNow(ALREADY);
    }
    Optional<Hindrance> hindrance = withdrawals.hindrance(id);
    if (hindrance.isPresent()) {
      return notNow(hindrance.get().message() + " See " + hindrance.get().page() + ".");
    }
    Instant now = time.now();
    withdrawal.release(actor.id(), now, release);
    String looker = withdrawals.one(id).orElseThrow().lookedBy();
    story.tell(
        Story.Told.ofItem(now, actor.id(), withdrawal.item(), "Released.")
            .because(
                Words.sentences(
                    List.of(release.why(), "Looked at by " + looker + ": " + release.lookedAt()))));
    return Outcome.done(new WithdrawalId(id));
  }

  private static Outcome<WithdrawalId> notNow(String why) {
    return Outcome.refused(Refusal.now("Not released", "release", why));
  }
}
