package club.ascham.weighing;

import club.ascham.bow.FingerWeight;
import club.ascham.bow.RigSpec;
import club.ascham.bow.ScaleReading;
import club.ascham.bow.WeightLost;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.WeighedAs;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Keeps what a bow scale showed, and asks for a look at limbs that lost weight. */
@ApplicationScoped
class WeighRig {
  /** A reading beyond these parts of what is reckoned is a slip, or of another bow: judged. */
  private static final double LEAST_PART = 0.6;

  private static final double MOST_PART = 1.6;

  private final RigSpecs specs;
  private final KeptAsItIs kept;
  private final Concerns concerns;
  private final Rows rows;
  private final AskForWork askForWork;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  WeighRig(
      RigSpecs specs,
      KeptAsItIs kept,
      Concerns concerns,
      Rows rows,
      AskForWork askForWork,
      Story story,
      Actor actor,
      ClubTime time) {
    this.specs = specs;
    this.kept = kept;
    this.concerns = concerns;
    this.rows = rows;
    this.askForWork = askForWork;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<RigId> weigh(RigId id, WeighedAs weighing) {
    RigCard card = specs.known(id);
    if (kept.keeps(id, time.now())) {
      return Obstacle.refused("", KeptAsItIs.SAID, "");
    }
    Optional<RigSpec> spec = card.spec();
    if (spec.isEmpty() || !card.isWhole()) {
      return Obstacle.refused(
          "", "A part of this rig is missing: it can't be drawn.", "Fit it first.");
    }
    Optional<Obstacle> unstrung = Obstacle.unstrung(concerns.of(id));
    if (unstrung.isPresent()) {
      return Obstacle.refused(unstrung.get());
    }
    double zeroIn = FingerWeight.zeroIn(FingerWeight.brace(spec.get(), card.setUp()));
    if (weighing.drawIn() <= zeroIn + 1) {
      return Obstacle.refused("drawIn", "That hardly goes beyond the braced string.", "");
    }
    WeightOnFingers reckoned = FingerWeight.of(spec.get(), card.setUp(), weighing.drawIn());
    double low = LEAST_PART * reckoned.lowLb();
    double high = MOST_PART * reckoned.highLb();
    if (weighing.forceLb() < low || weighing.forceLb() > high) {
      return Obstacle.refused(
          "forceLb",
          String.format(
              Locale.ROOT,
              "About %.0f lb is reckoned at that draw. Read scale and draw again; if it stays so,"
                  + " compare the label with the limbs’ entry.",
              reckoned.lb()),
          "");
    }
    Part weighed = card.weighed();
    Instant now = time.now();
    ScaleReading reading =
        new ScaleReading(
            weighing.drawIn(),
            weighing.forceLb(),
            card.body().riser() == null ? null : card.body().riser().lengthIn());
    Optional<WeightLost> lost =
        WeightLost.of(spec.get(), card.setUp(), before(weighed.id()), reading);
    rows.add(
        NewRow.of("scale_reading")
            .with("rig_id", id)
            .with("item_id", weighed.id())
            .with("happened_at", now)
            .with("recorded_at", now)
            .with("weighed_by", actor.id())
            .with("riser_in", reading.riserIn())
            .with("draw_in", reading.drawIn())
            .with("force_lb", reading.forceLb()));
    story.tell(Story.Told.ofRig(now, actor.id(), id, List.of(weighed.id()), weighing.said()));
    lost.ifPresent(
        loss ->
            askForWork.ask(
                weighed.id(),
                new Request(Work.LIMB_INSPECTION, loss.said(), false, Request.Cause.WEIGHED),
                now));
    return Outcome.done(
        id,
        weighing.said()
            + (lost.isEmpty()
                ? ""
                : " It lost 2 lb or more: a limb inspection is asked for, and until it is passed the"
                    + " bow goes out only with a reason."));
  }

  /** Readings since a look at the limbs last answered a loss: what they weighed then is theirs. */
  private List<ScaleReading> before(ItemId item) {
    return rows.list(
        ScaleReading.class,
        """
        SELECT s.draw_in, s.force_lb, s.riser_in FROM scale_reading s
         WHERE s.item_id = ?1 AND s.happened_at >= coalesce(
           (SELECT max(k.opened_at) FROM upkeep_task k JOIN upkeep_record d ON d.id = k.closed_by_record
             WHERE k.item_id = ?1 AND k.cause = 'WEIGHED' AND d.result = 'PASSED'), '')
         ORDER BY s.happened_at, s.id""",
        item);
  }
}
