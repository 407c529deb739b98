package club.ascham.rig;

import club.ascham.people.Actor;
import java.time.LocalDate;

/** Who may put a bow together or take its limbs off: an officer, or who holds the bolt permit. */
final class BoltHands {
  private BoltHands() {}

  static boolean may(Actor actor, LocalDate today) {
    return actor.isOfficer() || actor.holdsPermit(today);
  }

  static Outcome.Refused refused() {
    return Outcome.refused(
        "",
        "Limbs are put on and taken off by an officer, or by someone with the permit for limb"
            + " bolts.",
        "Ask one of them; a string you may change yourself.");
  }
}
