package club.ascham.check;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AdjustmentId;
import club.ascham.id.CheckId;
import club.ascham.id.Made;
import club.ascham.people.Actor;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.verdict.Given;
import club.ascham.verdict.Verdict;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** Keeps what was done at the bench after a check, so that the second measurement pairs with it. */
@ApplicationScoped
class RecordAdjustment {
  private final Checks checks;
  private final Verdicts verdicts;
  private final RigSpecs specs;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  RecordAdjustment(
      Checks checks,
      Verdicts verdicts,
      RigSpecs specs,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.checks = checks;
    this.verdicts = verdicts;
    this.specs = specs;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * Makes an adjustment, which the second measurement names; or names the check again, where the
   * bow was only looked at and is the same: its next readings go on from those before.
   */
  @Writes
  Outcome<Made> record(long checkId, AdjustmentDone done) {
    Checks.Row check =
        checks
            .one(checkId)
            .orElseThrow(() -> new NoSuchThing("There is no check " + checkId + "."));
    RigCard card =
        specs.of(check.rig()).orElseThrow(() -> new NoSuchThing("That bow was taken apart."));
    if (check.verdict() != Verdict.Kind.ADJUST || checks.newest(check.rig()) != checkId) {
      return Outcome.refused(
          Refusal.now(
              "Not possible now",
              "check",
              "Another check came after this one, or it asked for no adjustment. Measure anew."));
    }
    if (done.turnedBolts()) {
      if (!card.spec().map(spec -> spec.tillerAdjusts()).orElse(false)) {
        return Outcome.refused("upperIn", "No bolt sets the tiller of this bow.");
      }
      if (!actor.holdsPermit(time.today())) {
        return Outcome.refused(
            "upperIn",
            "Limb bolts are turned by someone with the permit: send it to the workshop.");
      }
    }
    Instant now = time.now();
    // A check that came from elsewhere may have no steps: what was done then counts as work.
    Given given = verdicts.of(checkId);
    if (!given.steps().isEmpty() && !given.adjusts() && !done.changedAnything()) {
      Story.Told looked =
          Story.Told.ofRig(
              now, actor.id(), check.rig(), card.partIds(), "Looked at before measuring again.");
      story.tell(done.words() == null ? looked : looked.because(done.words()));
      return done(new CheckId(checkId));
    }
    long id =
        rows.add(
            NewRow.of("adjustment")
                .with("rig_id", check.rig())
                .with("check_id", checkId)
                .with("happened_at", now)
                .with("recorded_at", now)
                .with("done_by", actor.id())
                .with("twists_added", done.twistsAdded())
                .with("upper_in", done.upperIn())
                .with("lower_in", done.lowerIn())
                .with("words", done.words()));
    Story.Told told = Story.Told.ofRig(now, actor.id(), check.rig(), card.partIds(), done.said());
    story.tell(done.words() == null ? told : told.because(done.words()));
    return done(new AdjustmentId(id));
  }

  private static Outcome<Made> done(Made made) {
    return Outcome.done(made);
  }

  /** Gives back what a press made by its kind. */
  static Made made(String kind, long id) {
    return kind.equals("adjustment") ? new AdjustmentId(id) : new CheckId(id);
  }
}
