package club.ascham.accident;

import club.ascham.form.Outcome;
import club.ascham.id.AccidentId;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.withdrawal.Reason;
import club.ascham.withdrawal.WithdrawItem;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Withdraws all that was in somebody's hands when it happened, wherever it is now, and keeps it as
 * it is.
 */
@ApplicationScoped
class TellAccident {
  static final String WHICH_BOW = "Several people have bows of a session in hand: say which bow.";
  static final String NOTHING =
      "The record knows of nothing that was in hand then: look at day and time.";

  private final Rows rows;
  private final InHand inHand;
  private final WithdrawItem withdrawItem;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  TellAccident(
      Rows rows,
      InHand inHand,
      WithdrawItem withdrawItem,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.inHand = inHand;
    this.withdrawItem = withdrawItem;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<AccidentId> tell(InHand.Subject subject, AccidentDetails details) {
    List<Held> held = inHand.of(subject, details.happened());
    if (held.isEmpty()) {
      return Outcome.refused("happenedTime", NOTHING);
    }
    Instant now = time.now();
    long id = 1 + rows.number("SELECT coalesce(max(id), 0) FROM accident");
    String why =
        "Kept as it is after accident %d of %s."
            .formatted(id, ClubTime.said(time.dayOf(details.happened())));
    Map<ItemId, Long> withdrawals = new LinkedHashMap<>();
    held.stream()
        .filter(Held::isKept)
        .forEach(thing -> withdrawals.put(thing.item(), withdrawn(thing, why, now)));
    keep(id, subject, details, now);
    held.forEach(thing -> keep(id, thing, withdrawals.get(thing.item())));
    story.tell(
        new Story.Told(
            details.happened(),
            actor.id(),
            "Accident " + id + ": what was in hand is kept as it is.",
            // What happened stands at the accident, for officers: a story is read by everyone.
            null,
            subject.loan(),
            held.stream().map(Held::item).toList(),
            rigs(subject, held)));
    return Outcome.done(new AccidentId(id), said(withdrawals.size()));
  }

  private static String said(int kept) {
    return (kept == 1 ? "One thing is" : kept + " things are")
        + " withdrawn and kept as "
        + (kept == 1 ? "it is." : "they are.");
  }

  /** The withdrawal that it is kept by: a new one, or the one that stands already. */
  private Long withdrawn(Held thing, String why, Instant now) {
    return withdrawItem.standing(thing.item(), new Reason(why, null, null), now).value();
  }

  private void keep(long id, InHand.Subject subject, AccidentDetails details, Instant now) {
    rows.add(
        NewRow.of("accident")
            .with("id", id)
            .with("loan_id", subject.loan())
            .with("rig_id", subject.rig())
            .with("happened_at", details.happened())
            .with("recorded_at", now)
            .with("told_by", actor.id())
            .with("words", details.words()));
  }

  private void keep(long id, Held thing, Long withdrawal) {
    rows.add(
        NewRow.of("accident_item")
            .with("accident_id", id)
            .with("item_id", thing.item())
            .with("rig_id", thing.rig())
            .with("arrow_count", thing.arrows())
            .with("withdrawal_id", withdrawal));
  }

  private static List<RigId> rigs(InHand.Subject subject, List<Held> held) {
    List<RigId> rigs = held.stream().map(Held::rig).filter(Objects::nonNull).distinct().toList();
    return rigs.isEmpty() && subject.rig() != null ? List.of(subject.rig()) : rigs;
  }
}
