package club.ascham.loan;

import club.ascham.bow.AgeBand;
import club.ascham.bow.DrawLength;
import club.ascham.bow.Experience;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.Hand;
import club.ascham.bow.NewcomerAnswers;
import club.ascham.bow.WeightCeiling;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Typed;
import club.ascham.rig.RigCard;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.util.Optional;

/**
 * The four answers about the person in front of the officer.
 *
 * @param dominantEye null: not tested
 */
public record Archer(
    Hand hand, Hand dominantEye, DrawLength draw, AgeBand age, Experience experience) {

  /** As it was said then; empty: a session, or a borrower of whom nothing is kept any more. */
  static Optional<Archer> of(LoanSheet sheet) {
    return sheet.drawLength() == null || sheet.ageBand() == null
        ? Optional.empty()
        : Optional.of(
            new Archer(
                sheet.hand(),
                null,
                new DrawLength(sheet.drawLength(), sheet.drawEstimated()),
                sheet.ageBand(),
                sheet.experience()));
  }

  /** As typed; empty when something is missing or wrong, which then stands at its field. */
  public static Optional<Archer> parse(Typed typed, LengthUnit unit) {
    Hand hand = typed.requiredWord("hand", Hand.class, "Which hand draws the string?");
    Hand eye = typed.word("dominantEye", Hand.class);
    Optional<DrawLength> draw = draw(typed, unit);
    AgeBand age = typed.requiredWord("ageBand", AgeBand.class, "How old, as nearly as this needs?");
    Experience experience =
        typed.requiredWord("experience", Experience.class, "How far has this archer come?");
    return hand != null && draw.isPresent() && age != null && experience != null && typed.sound()
        ? Optional.of(new Archer(hand, eye, draw.get(), age, experience))
        : Optional.empty();
  }

  /**
   * A draw measured with a long arrow (or said to be an estimate), else one reckoned from the arm
   * span; where both are given, the draw counts.
   */
  public static Optional<DrawLength> draw(Typed typed, LengthUnit unit) {
    if (typed.has("drawLength")) {
      Length amo = typed.length("drawLength", unit, Plausible.DRAW_LENGTH);
      return amo == null
          ? Optional.empty()
          : Optional.of(new DrawLength(amo, typed.ticked("drawEstimated")));
    }
    if (!typed.has("armSpan")) {
      typed.fault(
          "drawLength", "Measure the draw with a long arrow, or give the arm span instead.");
      return Optional.empty();
    }
    Length span = typed.length("armSpan", unit, Plausible.ARM_SPAN);
    if (span == null) {
      return Optional.empty();
    }
    DrawLength estimate = DrawLength.ofArmSpan(span);
    if (!estimate.plausible()) {
      typed.fault(
          "armSpan", "That span makes a draw no bow here is made for. Measure with a long arrow.");
      return Optional.empty();
    }
    return Optional.of(estimate);
  }

  /** Of a rig on these fingers; empty while it can't be reckoned. */
  public Optional<WeightOnFingers> weightOf(RigCard rig) {
    return rig.spec()
        .flatMap(spec -> FingerWeight.reckoned(spec, rig.setUp(), draw.amo().inches()));
  }

  /** How heavy a bow may be on these fingers. */
  public WeightCeiling ceiling() {
    return WeightCeiling.of(age, experience);
  }

  public NewcomerAnswers answers() {
    return new NewcomerAnswers(
        hand, dominantEye, draw.amo().inches(), draw.estimated(), age, experience);
  }
}
