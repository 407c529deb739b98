package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.AgeBand;
import club.ascham.bow.ArrowMass;
import club.ascham.bow.Candidate;
import club.ascham.bow.DrawLength;
import club.ascham.bow.Experience;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.Hand;
import club.ascham.bow.Heaviness;
import club.ascham.bow.NewcomerAnswers;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Suitability;
import club.ascham.bow.Unsuited;
import club.ascham.bow.WeightCeiling;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Against;
import club.ascham.concern.Weight;
import club.ascham.form.WholeWords;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Whether a bow that is out may have these parts: the rules of the issue, for whoever has it.
 *
 * <p>Asked by a change of parts and by a corrected record: hand, length, weight, its arrows' mass,
 * and what stands against the part. The page asks to confirm, last of all; a call is its own
 * confirmation.
 */
final class BowOut {
  private static final String SAY_WHY =
      " Choose another part, or say in whole words why this one all the same; it is kept with the"
          + " loan.";

  /**
   * Who draws a bow that is out: its borrower, or an archer who shares it in a session.
   *
   * @param hand null: not known, as of whoever shares a bow
   * @param experience null: not known, and then a beginner's rule holds
   * @param shares the number of an archer of a session; null: the borrower
   * @param why the bow they have was given against advice; null: nothing was said (likewise coach)
   */
  record Archer(
      Hand hand,
      AgeBand age,
      Experience experience,
      Length draw,
      boolean estimated,
      Long shares,
      String why,
      String coach) {
    /** What was said when they were given it; a reason without words is none. */
    AgainstAdvice saidThen() {
      return new AgainstAdvice(why != null && WholeWords.isReason(why) ? why : null, coach);
    }
  }

  /**
   * Arrows that are shot from it.
   *
   * @param massGr of the lightest, in grains
   * @param shares the archer of a session who has them; null: whoever has the bow
   */
  record Arrows(String code, double massGr, Long shares) {}

  private BowOut() {}

  /**
   * What stands in the way of another bow in these hands, each at its answer; empty: nothing.
   *
   * @param setUp null: not measured as it then is
   * @param given why it is given although advice speaks against it
   * @param field the answer that names what makes the bow another one
   */
  static List<Obstacle> refusals(
      RigSpec changed,
      SetUpFigures setUp,
      List<Archer> archers,
      List<Arrows> arrows,
      AgainstAdvice given,
      String field) {
    List<Obstacle> refusals = new ArrayList<>();
    for (Archer archer : archers) {
      Optional<Obstacle> light = tooLight(changed, setUp, archer, arrows, field);
      if (light.isPresent()) {
        return List.of(light.get());
      }
      Judged judged = judge(changed, setUp, archer);
      if (judged.against().isEmpty()) {
        continue;
      }
      String said = "Whoever has this bow: " + judged.against();
      if (!judged.adviceOnly()) {
        return List.of(new Obstacle(field, said, ""));
      }
      if (refusals.isEmpty()) {
        given
            .lacking(said, SAY_WHY, judged.asksCoach())
            .forEach((answer, message) -> refusals.add(new Obstacle(answer, message, "")));
      }
    }
    return List.copyOf(refusals);
  }

  private record Judged(String against, boolean adviceOnly, boolean asksCoach) {}

  private static Judged judge(RigSpec changed, SetUpFigures setUp, Archer archer) {
    double drawIn = archer.draw().inches();
    if (archer.hand() != null
        && DrawLength.SHORTEST_IN <= drawIn
        && drawIn <= DrawLength.LONGEST_IN) {
      NewcomerAnswers answers =
          new NewcomerAnswers(
              archer.hand(),
              null,
              drawIn,
              archer.estimated(),
              archer.age(),
              archer.experience() == null ? Experience.BEGINNER : archer.experience());
      return Suitability.rank(answers, List.of(new Candidate<>(changed, changed, setUp)))
          .unsuited()
          .stream()
          .findFirst()
          .map(
              (Unsuited<RigSpec> one) ->
                  new Judged(String.join(" ", one.why()), one.adviceOnly(), one.asksCoach()))
          .orElse(new Judged("", true, false));
    }
    WeightCeiling ceiling = WeightCeiling.of(archer.age(), archer.experience());
    Optional<WeightOnFingers> weight = FingerWeight.reckoned(changed, setUp, drawIn);
    return new Judged(
        weight.map(ceiling::against).orElse(""),
        weight.filter(lb -> ceiling.of(lb) == Heaviness.REFUSED).isEmpty(),
        true);
  }

  private static Optional<Obstacle> tooLight(
      RigSpec changed, SetUpFigures setUp, Archer archer, List<Arrows> arrows, String field) {
    Optional<WeightOnFingers> weight =
        FingerWeight.reckoned(changed, setUp, archer.draw().inches());
    String light =
        weight.isEmpty()
            ? ""
            : arrows.stream()
                .filter(one -> one.shares() == null || one.shares().equals(archer.shares()))
                .map(one -> Map.entry(one.code(), new ArrowMass(one.massGr(), weight.get())))
                .filter(one -> !one.getValue().isSound())
                .map(one -> one.getKey() + " is " + one.getValue().shortfall())
                .collect(Collectors.joining("; "));
    return light.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Obstacle(
                field,
                "Its arrows are too light for this bow: " + light + ".",
                "Exchange them for heavier ones first, or take lighter limbs; nobody overrides"
                    + " this."));
  }

  /** What stands against a part that goes on a bow that is out, as if it were lent anew. */
  static List<Obstacle> against(Part on, Against against, AgainstAdvice given) {
    String field = Assembly.field(on.place());
    if (against.blocks()) {
      return List.of(
          new Obstacle(field, on.code() + " stays in. " + against.keptIn(), "Choose another."));
    }
    String spoken = against.said(Weight.SPEAKS_AGAINST);
    return spoken.isEmpty()
        ? List.of()
        : given.lacking(spoken, SAY_WHY, false).entrySet().stream()
            .map(one -> new Obstacle(one.getKey(), one.getValue(), ""))
            .toList();
  }
}
