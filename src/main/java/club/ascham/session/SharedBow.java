package club.ascham.session;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.AgeBand;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.rig.AdviceOverridden;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.util.Optional;

/**
 * An archer of a session, without a name: the bow they share, and what decides its weight and their
 * arrows.
 *
 * @param arrows null: none yet
 * @param given why what is spoken against, or heavy, is given all the same
 */
record SharedBow(
    RigId rig, AgeBand age, Length draw, boolean estimated, ItemCode arrows, AgainstAdvice given) {

  /** As typed; empty when something is missing or wrong, which then stands at its field. */
  static Optional<SharedBow> parse(Typed typed, LengthUnit unit) {
    Integer rig = typed.whole("rig", 1, Integer.MAX_VALUE);
    AgeBand age = typed.requiredWord("ageBand", AgeBand.class, "How old, as nearly as this needs?");
    Length draw = typed.length("draw", unit, Plausible.DRAW_LENGTH);
    ItemCode arrows = typed.code("arrows");
    AgainstAdvice given = AdviceOverridden.parse(typed);
    if (rig == null) {
      typed.fault("rig", "Which rig does this archer share?");
    }
    if (draw == null) {
      typed.fault("draw", "The draw length decides how long the arrows must be.");
    }
    return typed.sound()
        ? Optional.of(
            new SharedBow(new RigId(rig), age, draw, typed.ticked("estimated"), arrows, given))
        : Optional.empty();
  }
}
