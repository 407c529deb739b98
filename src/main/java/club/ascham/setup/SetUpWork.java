package club.ascham.setup;

import club.ascham.bow.Build;
import club.ascham.bow.Gauge;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.SetUp;
import club.ascham.rig.SetUpProgress;
import club.ascham.rig.SetUps;
import club.ascham.rig.StepsDone;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthText;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The set-up of a rig at the bench: begun, worked through step by step, finished. */
@ApplicationScoped
public class SetUpWork {
  private final SetUps setUps;
  private final RigSpecs specs;
  private final Concerns concerns;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  SetUpWork(
      SetUps setUps, RigSpecs specs, Concerns concerns, Story story, Actor actor, ClubTime time) {
    this.setUps = setUps;
    this.specs = specs;
    this.concerns = concerns;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Begins a set-up, or goes on with the one that is open. */
  @Writes
  public Outcome<RigId> begin(RigId id) {
    RigCard card = card(id);
    if (!card.isWhole()) {
      return Obstacle.refused(
          "", "This rig is not whole yet.", "Fit what is missing, then set it up.");
    }
    if (setUps.openOf(id).isPresent()) {
      return Outcome.done(id, "This set-up was begun already; go on where it stands.");
    }
    Optional<Obstacle> unstrung = Obstacle.unstrung(concerns.of(id));
    if (unstrung.isPresent()) {
      return Obstacle.refused(unstrung.get());
    }
    open(id, "Set-up begun.");
    return Outcome.done(id, "Set-up begun: the bow is in the workshop until it is finished.");
  }

  /**
   * Sends a bow to the workshop. One that stays unstrung may go too: its sheet opens, and nothing
   * of it is done from the string on before what stands against it is answered or released.
   */
  @Writes
  public Outcome<RigId> toWorkshop(RigId id) {
    if (!card(id).isWhole()) {
      return Obstacle.refused("", "A part of it is missing: it is in the workshop already.", "");
    }
    boolean unstrung = concerns.of(id).staysUnstrung();
    if (setUps.openOf(id).isEmpty()) {
      open(id, unstrung ? "Sent to the workshop, unstrung." : "Set-up begun.");
    }
    return Outcome.done(
        id,
        unstrung
            ? "It is in the workshop. Its string stays off."
            : "It is in the workshop until its set-up is finished.");
  }

  private void open(RigId id, String said) {
    Instant now = time.now();
    setUps.persistAndFlush(new SetUp(id, actor.id(), now));
    story.tell(Story.Told.ofRig(now, actor.id(), id, List.of(), said));
  }

  /**
   * Writes what was done and measured.
   *
   * @param version of the set-up that the entry was made from; empty: whatever it is now
   */
  @Writes
  Outcome<RigId> write(RigId id, SetUpEntry entry, OptionalInt version) {
    RigCard card = card(id);
    Optional<SetUp> open = setUps.openOf(id);
    if (open.isEmpty() || !card.isWhole()) {
      return nothingOpen();
    }
    SetUp setUp = open.get();
    if (version.isPresent() && version.getAsInt() != setUp.version()) {
      return Obstacle.changedMeanwhile();
    }
    Optional<Obstacle> refusal =
        progress(card, setUp).refusal(entry.steps(), actor.holdsPermit(time.today()));
    if (refusal.isPresent()) {
      return Obstacle.refused(refusal.get());
    }
    if (entry.needsString()) {
      Optional<Obstacle> unstrung = Obstacle.unstrung(concerns.of(id));
      if (unstrung.isPresent()) {
        return Obstacle.refused(unstrung.get());
      }
    }
    apply(entry, setUp);
    story.tell(
        Story.Told.ofRig(
            time.now(), actor.id(), id, List.of(), "Set-up: wrote down what was done so far."));
    return Outcome.done(id, "Saved.");
  }

  /**
   * @param version of the set-up that the wish was made from; empty: whatever it is now
   */
  @Writes
  Outcome<RigId> finish(RigId id, OptionalInt version) {
    RigCard card = card(id);
    Optional<SetUp> open = setUps.openOf(id);
    if (open.isEmpty() || !card.isWhole()) {
      return nothingOpen();
    }
    SetUp setUp = open.get();
    if (version.isPresent() && version.getAsInt() != setUp.version()) {
      return Obstacle.changedMeanwhile();
    }
    Optional<Obstacle> unstrung = Obstacle.unstrung(concerns.of(id));
    if (unstrung.isPresent()) {
      return Obstacle.refused(unstrung.get());
    }
    RigSpec spec = card.spec().orElseThrow();
    List<Obstacle> refusals =
        SetUpFinish.refusals(spec, card.benchTargets(), setUp.figures(), progress(card, setUp));
    if (!refusals.isEmpty()) {
      return Obstacle.refused(refusals);
    }
    if (spec.build() == Build.ONE_PIECE) {
      setUp.noScrewsToSee();
    }
    Instant now = time.now();
    setUp.finish(actor.id(), now);
    String figures = said(setUp.figures());
    story.tell(Story.Told.ofRig(now, actor.id(), id, card.partIds(), "Set up: " + figures + "."));
    return Outcome.done(id, "Set up: " + figures + ".");
  }

  /** Gives up a set-up in which nothing was done yet: the figures before it hold again. */
  @Writes
  Outcome<RigId> giveUp(RigId id) {
    Optional<SetUp> open = setUps.openOf(id);
    if (open.isEmpty()) {
      return nothingOpen();
    }
    if (!open.get().stepsDone().keys().isEmpty()) {
      return Obstacle.refused(
          "",
          "Steps of this set-up were done: the bow is no longer as its old figures say.",
          "Finish it.");
    }
    setUps.delete(open.get());
    story.tell(
        Story.Told.ofRig(
            time.now(), actor.id(), id, List.of(), "Set-up given up before anything was done."));
    return Outcome.done(id, "Given up before anything was done.");
  }

  private RigCard card(RigId id) {
    return specs
        .of(id)
        .orElseThrow(() -> new NoSuchThing("There is no rig " + id.value() + " any more."));
  }

  private static Outcome<RigId> nothingOpen() {
    return Obstacle.refused("", "No set-up of this rig is open.", "Begin one.");
  }

  private static SetUpProgress progress(RigCard card, SetUp setUp) {
    return new SetUpProgress(card.sheet(), setUp.stepsDone());
  }

  private static void apply(SetUpEntry entry, SetUp setUp) {
    setUp.write(entry.figures(), entry.asTyped());
    StepsDone done = setUp.stepsDone();
    for (var key : entry.steps()) {
      done = done.with(key);
    }
    setUp.done(done);
  }

  private static String said(SetUpFigures figures) {
    return "brace %s, tiller %s, nocking point %s above square"
        .formatted(
            LengthText.both(figures.brace()),
            Gauge.signed(figures.tiller()),
            LengthText.both(figures.nocking()));
  }
}
