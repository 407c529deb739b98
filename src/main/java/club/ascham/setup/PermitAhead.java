package club.ascham.setup;

import club.ascham.bow.SetUpStep;
import club.ascham.bow.Who;
import club.ascham.rig.RigCard;
import club.ascham.rig.SetUpProgress;
import club.ascham.rig.StepsDone;
import java.util.List;

/** Tells who lacks the permit, before anything is strung, at which step of a set-up they stop. */
public final class PermitAhead {
  private PermitAhead() {}

  /** Of a whole set-up of this rig; null: they may do all of it, or it is not whole. */
  public static String of(RigCard card, boolean holdsPermit) {
    return card.spec().isEmpty()
        ? null
        : of(new SetUpProgress(card.sheet(), StepsDone.of("")), holdsPermit);
  }

  /** Of what is still to be done; null: nothing of that needs the permit, or they hold it. */
  public static String of(SetUpProgress progress, boolean holdsPermit) {
    List<SetUpStep> ahead =
        progress.undone().stream().filter(step -> step.who() == Who.PERMIT_HOLDER).toList();
    if (holdsPermit || ahead.isEmpty()) {
      return null;
    }
    SetUpStep first = ahead.get(0);
    return "Step %d, %s, is only for someone who holds the permit for limb bolts. Ask one along; else the string comes off there and the bow waits."
        .formatted(progress.number(first), first.title());
  }
}
