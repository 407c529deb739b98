package club.ascham.check;

import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.store.Pressed;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.verdict.Verdict;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** Keeps what was done at the bench after a check, so that the second measurement pairs with it. */
@ApplicationScoped
class RecordAdjustment {
  private final Checks checks;
  private final RigSpecs specs;
  private final Rows rows;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  RecordAdjustment(
      Checks checks,
      RigSpecs specs,
      Rows rows,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.checks = checks;
    this.specs = specs;
    this.rows = rows;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** How keeping it ended. */
  sealed interface Outcome {
    /** Kept; the second measurement comes next. */
    record Kept(RigId rig, long adjustment) implements Outcome {}

    /** It was looked at, and is the same bow: its next readings go on from those before. */
    record Looked(RigId rig) implements Outcome {}

    /** Nothing was changed. */
    record Refused(String field, String message) implements Outcome {}

    /** The same form was sent before; this is the page it led to. */
    record PressedBefore(String page) implements Outcome {}
  }

  @Writes
  Outcome record(long checkId, AdjustmentDone done, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.PressedBefore(before.get());
    }
    Checks.Row check =
        checks
            .one(checkId)
            .orElseThrow(() -> new NoSuchThing("There is no check " + checkId + "."));
    RigCard card =
        specs.of(check.rig()).orElseThrow(() -> new NoSuchThing("That bow was taken apart."));
    if (check.verdict() != Verdict.Kind.ADJUST || checks.newest(check.rig()) != checkId) {
      return new Outcome.Refused(
          "", "Another check came after this one, or it asked for no adjustment. Measure anew.");
    }
    if (done.turnedBolts()) {
      if (!card.spec().map(spec -> spec.tillerAdjusts()).orElse(false)) {
        return new Outcome.Refused("upperIn", "No bolt sets the tiller of this bow.");
      }
      if (!actor.holdsPermit(time.today())) {
        return new Outcome.Refused(
            "upperIn",
            "Limb bolts are turned by someone with the permit: send it to the workshop.");
      }
    }
    Instant now = time.now();
    // A check that came from elsewhere may have no steps: what was done then counts as work.
    if (!check.words().steps().isEmpty() && !check.words().adjusts() && !done.changedAnything()) {
      Story.Told looked =
          Story.Told.ofRig(
              now, actor.id(), check.rig(), card.partIds(), "Looked at before measuring again.");
      story.tell(done.words() == null ? looked : looked.because(done.words()));
      pressed.leads(formKey, CheckPages.afterALook(check.rig(), checkId));
      return new Outcome.Looked(check.rig());
    }
    rows.change(
        """
        INSERT INTO adjustment (rig_id, check_id, happened_at, recorded_at, done_by, twists_added,
                                upper_in, lower_in, words)
        VALUES (?1, ?2, ?3, ?3, ?4, ?5, ?6, ?7, ?8)""",
        check.rig(),
        checkId,
        now,
        actor.id(),
        done.twistsAdded(),
        done.upperIn(),
        done.lowerIn(),
        done.words());
    long id = rows.number("SELECT max(id) FROM adjustment");
    Story.Told told = Story.Told.ofRig(now, actor.id(), check.rig(), card.partIds(), done.said());
    story.tell(done.words() == null ? told : told.because(done.words()));
    pressed.leads(formKey, CheckPages.secondMeasurement(check.rig(), id));
    return new Outcome.Kept(check.rig(), id);
  }
}
