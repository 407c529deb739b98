package club.ascham.changes;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.ArrowMass;
import club.ascham.bow.Candidate;
import club.ascham.bow.Heaviness;
import club.ascham.bow.Newcomer;
import club.ascham.bow.ShortestArrow;
import club.ascham.bow.Suitability;
import club.ascham.bow.Unsuited;
import club.ascham.bow.WeightCeiling;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.loan.Archer;
import club.ascham.loan.LoanLine;
import club.ascham.rig.RigCard;
import club.ascham.units.LengthText;
import club.ascham.upkeep.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether a loan may go on with the draw its archer has now.
 *
 * <p>A longer loan asks as its issue did: what speaks against it now, and did not when the loan was
 * given with a reason, asks for one again.
 */
final class ExtendRules {
  private static final String SAY_WHY =
      " To let it go on all the same, say why in whole words; it is kept with the loan; or exchange the"
          + " bow.";

  private ExtendRules() {}

  private record Known(Matter matter, ItemId item, Work work, long source) {
    static Known of(Concern one) {
      return new Known(one.matter(), one.item(), one.work(), one.source());
    }
  }

  /**
   * What speaks against letting it go on, unless the loan's reason was given for just that.
   *
   * @param lent what stood against it when it was lent
   * @param toldSince the reports that nobody knew of then, whenever it was noticed
   * @param lentWhy the reason that is kept with the loan; null: none
   * @param overrideWhy why it goes on all the same; null: no reason given
   */
  static Optional<Refusal> askWhy(
      Against now, Against lent, Set<Long> toldSince, String lentWhy, String overrideWhy) {
    if (now.blocks() || overrideWhy != null) {
      return Optional.empty();
    }
    Set<Known> answered =
        lentWhy == null
            ? Set.of()
            : lent.all().stream()
                .filter(one -> one.matter() != Matter.REPORTED || !toldSince.contains(one.source()))
                .map(Known::of)
                .collect(Collectors.toSet());
    String spoken =
        now.of(Weight.SPEAKS_AGAINST).stream()
            .filter(one -> !answered.contains(Known.of(one)))
            .map(Concern::said)
            .collect(Collectors.joining(" "));
    return spoken.isEmpty()
        ? Optional.empty()
        : Optional.of(new Refusal("overrideWhy", spoken + SAY_WHY));
  }

  /**
   * What keeps the loan from going on, with a draw that was measured again.
   *
   * @param out the lines still out
   * @param bow the rig that is out; null: none
   * @param given why a bow that advice speaks against stays out
   */
  static List<Refusal> refusals(
      Archer archer, List<LoanLine> out, RigCard bow, AgainstAdvice given) {
    List<Refusal> refusals = new ArrayList<>();
    ShortestArrow shortest = Newcomer.fit(archer.answers()).shortestArrow();
    List<String> tooShort =
        out.stream()
            .filter(LoanLine::isArrows)
            .filter(line -> line.arrowLength() == null || !shortest.allows(line.arrowLength()))
            .map(ExtendRules::said)
            .toList();
    if (!tooShort.isEmpty()) {
      refusals.add(
          new Refusal(
              "drawLength",
              "Too short for this draw, and can't go on: "
                  + String.join(", ", tooShort)
                  + ". The shortest safe arrow is now "
                  + shortest.said()
                  + ". Exchange them for longer ones first."));
    }
    if (bow != null) {
      archer.weightOf(bow).ifPresent(weight -> refusals.addAll(tooLight(out, weight)));
    }
    if (bow != null && bow.spec().isPresent()) {
      WeightCeiling ceiling = archer.ceiling();
      refusals.addAll(refused(archer.weightOf(bow), ceiling, "drawLength"));
      Candidate<RigCard> candidate = new Candidate<>(bow, bow.spec().get(), bow.setUp());
      if (refusals.isEmpty()) {
        for (Unsuited<RigCard> unsuited :
            Suitability.rank(archer.answers(), List.of(candidate)).unsuited()) {
          refusals.addAll(lacking(given, String.join(" ", unsuited.why()), unsuited.asksCoach()));
        }
      }
    }
    return refusals;
  }

  /**
   * What keeps the loan from going on with the draw it began with: the bow's weight alone, since
   * that may have been reckoned anew, and its archer be a year older.
   *
   * @param weight empty: it can't be reckoned
   * @param given why it stays out all the same: what was said when it went out counts
   */
  static List<Refusal> tooHeavy(
      WeightCeiling ceiling, Optional<WeightOnFingers> weight, AgainstAdvice given) {
    List<Refusal> refused = refused(weight, ceiling, "dueOn");
    return !refused.isEmpty() || weight.isEmpty()
        ? refused
        : switch (ceiling.of(weight.get())) {
          case WITH_A_COACH -> lacking(given, ceiling.against(weight.get()), true);
          case LIGHT_ENOUGH, REFUSED -> List.of();
        };
  }

  private static List<Refusal> refused(
      Optional<WeightOnFingers> weight, WeightCeiling ceiling, String field) {
    return weight
        .filter(lb -> ceiling.of(lb) == Heaviness.REFUSED)
        .map(
            lb ->
                List.of(
                    new Refusal(
                        field,
                        ceiling.against(lb)
                            + " It can't go on: exchange the bow, or ask it back.")))
        .orElse(List.of());
  }

  private static List<Refusal> lacking(AgainstAdvice given, String against, boolean asksCoach) {
    return given.lacking(against, SAY_WHY, asksCoach).entrySet().stream()
        .map(one -> new Refusal(one.getKey(), one.getValue()))
        .toList();
  }

  private static List<Refusal> tooLight(List<LoanLine> out, WeightOnFingers weight) {
    String light =
        out.stream()
            .filter(line -> line.arrowMassGr() != null)
            .map(line -> new Weighed(line.code(), new ArrowMass(line.arrowMassGr(), weight)))
            .filter(one -> !one.mass().isSound())
            .map(one -> one.code() + " is " + one.mass().shortfall())
            .collect(Collectors.joining("; "));
    return light.isEmpty()
        ? List.of()
        : List.of(
            new Refusal(
                "drawLength",
                "Too light for this draw, and can't go on: "
                    + light
                    + ". Exchange them for heavier ones first."));
  }

  private record Weighed(String code, ArrowMass mass) {}

  private static String said(LoanLine line) {
    return line.code()
        + (line.arrowLength() == null
            ? " (length not recorded)"
            : " (" + LengthText.inches(line.arrowLength()) + ")");
  }
}
