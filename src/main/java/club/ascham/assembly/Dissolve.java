package club.ascham.assembly;

import club.ascham.form.Outcome;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.Rig;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.Rigs;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Takes a rig apart: its parts are loose again, its story stays. */
@ApplicationScoped
class Dissolve {
  private final Rigs rigs;
  private final RigSpecs specs;
  private final LoanedParts loaned;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  Dissolve(
      Rigs rigs,
      RigSpecs specs,
      LoanedParts loaned,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rigs = rigs;
    this.specs = specs;
    this.loaned = loaned;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * @param version of the rig that the wish was made from; empty: whatever it is now
   */
  @Writes
  Outcome<RigId> dissolve(RigId id, OptionalInt version) {
    Rig rig = rigs.findById(id.value());
    if (rig == null) {
      throw new NoSuchThing("There is no rig " + id.value() + ".");
    }
    if (rig.isTakenApart()) {
      return Obstacle.refused("", "This rig was taken apart already.", "");
    }
    if (version.isPresent() && version.getAsInt() != rig.version()) {
      return Obstacle.changedMeanwhile();
    }
    RigCard card = specs.of(id).orElseThrow();
    Optional<Obstacle> hands = BoltHands.refusal(actor, time.today(), card.parts());
    if (hands.isPresent()) {
      return Obstacle.refused(hands.get());
    }
    if (loaned.loanOf(id).isPresent()) {
      return Obstacle.refused("", "This rig is on loan.", "Receive it first.");
    }
    Instant now = time.now();
    card.parts().forEach(part -> rigs.takeOff(id, part.id(), now));
    rows.change("DELETE FROM kept_with WHERE rig_id = ?1", id);
    rig.dissolve(now);
    String codes = card.parts().stream().map(Part::code).collect(Collectors.joining(", "));
    String said = codes.isEmpty() ? "Taken apart." : "Taken apart: " + codes + ".";
    story.tell(Story.Told.ofRig(now, actor.id(), id, card.partIds(), said));
    return Outcome.done(id, said + " Each part is loose again.");
  }
}
