package club.ascham.assembly;

import club.ascham.bow.Level;
import club.ascham.bow.Style;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Rig;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.Rigs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.OptionalInt;

/** Says how a rig is shot, which decides its tiller, and how far its sheet goes. */
@ApplicationScoped
class ShootAs {
  private final Rigs rigs;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ShootAs(Rigs rigs, Story story, Actor actor, ClubTime time) {
    this.rigs = rigs;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** How a rig is to be shot. */
  record Wish(Style style, Level level) {}

  static Wish parse(Typed typed) {
    return new Wish(
        typed.requiredWord("style", Style.class, "How do the fingers hold the string?"),
        typed.requiredWord("level", Level.class, "How far is it to be set up?"));
  }

  @Writes
  Outcome<RigId> change(RigId id, Wish wish, OptionalInt version) {
    Rig rig = rigs.findById(id.value());
    if (rig == null || rig.isTakenApart()) {
      throw RigSpecs.noSuch(id);
    }
    if (version.isPresent() && version.getAsInt() != rig.version()) {
      return Obstacle.changedMeanwhile();
    }
    rig.shootAs(wish.style(), wish.level());
    String said =
        "Shot %s, set up for %s."
            .formatted(
                Words.said(wish.style()),
                wish.level() == Level.BEGINNER ? "a beginner" : "a fuller kit");
    story.tell(Story.Told.ofRig(time.now(), actor.id(), id, List.of(), said));
    return Outcome.done(id, said);
  }
}
