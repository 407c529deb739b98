package club.ascham.assembly;

import club.ascham.bow.Build;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;

/**
 * Who may put limbs on or take them off. Limbs that slot in leave the limb bolts as they are: an
 * officer may, or who holds the permit for them. Of a screw-in bow the limb bolt is what holds the
 * limb, so that whoever fits it turns it: only who holds the permit may.
 */
final class BoltHands {
  private BoltHands() {}

  /**
   * Why these hands may not; empty where they may.
   *
   * @param moved the parts that are put on or taken off
   */
  static Optional<Obstacle> refusal(Actor actor, LocalDate today, Collection<Part> moved) {
    if (actor.holdsPermit(today)) {
      return Optional.empty();
    }
    if (moved.stream().anyMatch(BoltHands::isHeldByBolts)) {
      return Optional.of(
          new Obstacle(
              "",
              "The limbs of a screw-in bow are held by their limb bolts: they are put on and taken"
                  + " off by someone with the permit for limb bolts.",
              "Ask them; a string you may change yourself."));
    }
    return actor.isOfficer()
        ? Optional.empty()
        : Optional.of(
            new Obstacle(
                "",
                "Limbs are put on and taken off by an officer, or by someone with the permit for"
                    + " limb bolts.",
                "Ask one of them; a string you may change yourself."));
  }

  private static boolean isHeldByBolts(Part part) {
    return part.riser() != null && part.riser().build() == Build.SCREW_IN
        || part.limbs() != null && part.limbs().build() == Build.SCREW_IN;
  }
}
