package club.ascham.rig;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.AgeBand;
import club.ascham.bow.Experience;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.Heaviness;
import club.ascham.bow.RigSpec;
import club.ascham.bow.WeightCeiling;
import club.ascham.bow.WeightOnFingers;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a bow that is out may get other limbs: the rule of the issue, for whoever has it. */
final class HeavierBow {
  private static final String SAY_WHY =
      " Choose lighter limbs, or say in whole words why these all the same; it is kept with the"
          + " loan.";

  /**
   * Who draws a bow that is out: its borrower, or an archer who shares it in a session.
   *
   * @param experience null: not known, and then a beginner's rule holds
   */
  record Archer(AgeBand age, Experience experience, Length draw) {}

  private HeavierBow() {}

  /**
   * What stands in the way, each at its answer; empty: nothing.
   *
   * @param field the answer that names what makes the bow heavy
   */
  static List<Refusal> refusals(
      RigSpec changed, List<Archer> archers, AgainstAdvice given, String field) {
    List<Refusal> refusals = new ArrayList<>();
    for (Archer archer : archers) {
      WeightCeiling ceiling = WeightCeiling.of(archer.age(), archer.experience());
      Optional<WeightOnFingers> weight =
          FingerWeight.reckoned(changed, null, archer.draw().inches());
      String against = weight.map(ceiling::against).orElse("");
      if (against.isEmpty()) {
        continue;
      }
      String said = "Whoever has this bow: " + against;
      if (ceiling.of(weight.get()) == Heaviness.REFUSED) {
        return List.of(new Refusal(field, said, ""));
      }
      if (refusals.isEmpty()) {
        given
            .lacking(said, SAY_WHY, true)
            .forEach((answer, message) -> refusals.add(new Refusal(answer, message, "")));
      }
    }
    return List.copyOf(refusals);
  }
}
