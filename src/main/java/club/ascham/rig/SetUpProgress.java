package club.ascham.rig;

import club.ascham.bow.SetUpStep;
import club.ascham.bow.SetUpStep.Key;
import club.ascham.bow.Who;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How far the set-up sheet of a rig has been worked through. */
public record SetUpProgress(List<SetUpStep> sheet, StepsDone done) {

  /** The step that comes next; empty when all are done. */
  public Optional<SetUpStep> next() {
    return sheet.stream().filter(step -> !done.has(step.key())).findFirst();
  }

  Optional<SetUpStep> step(Key key) {
    return sheet.stream().filter(step -> step.key() == key).findFirst();
  }

  /** The step's number on the sheet, from 1. */
  public int number(SetUpStep step) {
    return sheet.indexOf(step) + 1;
  }

  public boolean isThrough() {
    return next().isEmpty();
  }

  public List<SetUpStep> undone() {
    return sheet.stream().filter(step -> !done.has(step.key())).toList();
  }

  /**
   * What keeps these steps from being entered as done now: each needs all those before it, and some
   * need the permit.
   */
  public Optional<Obstacle> refusal(Set<Key> wanted, boolean holdsPermit) {
    for (SetUpStep step : sheet) {
      if (wanted.contains(step.key())) {
        if (step.who() == Who.PERMIT_HOLDER && !holdsPermit) {
          return Optional.of(
              new Obstacle(
                  "stepsDone",
                  "\"" + step.title() + "\" is for someone who holds the permit for limb bolts.",
                  "Take the string off with the stringer and leave the bow here: the sheet opens at this"
                      + " step for them."));
        }
      } else if (!done.has(step.key()) && anyAfter(step, wanted)) {
        return Optional.of(
            new Obstacle(
                "stepsDone",
                "\"" + step.title() + "\" comes first and is not done yet.",
                "The order is the safe one: do that step, then go on."));
      }
    }
    return Optional.empty();
  }

  private boolean anyAfter(SetUpStep step, Set<Key> wanted) {
    return sheet.subList(sheet.indexOf(step) + 1, sheet.size()).stream()
        .anyMatch(later -> wanted.contains(later.key()) && !done.has(later.key()));
  }
}
