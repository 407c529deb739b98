package club.ascham.setup;

import club.ascham.bow.Band;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;

/**
 * What a step should come to, in words to be read from a bow's length away.
 *
 * @param large in the unit of the person at the bench
 * @param small the same in the other unit, or what else belongs to it; may be empty
 */
public record StepTarget(String large, String small) {

  /**
   * @param figures of the set-up so far: the nocking point is tried first where tiller says
   */
  public static StepTarget of(
      SetUpStep step, Targets targets, SetUpFigures figures, LengthUnit unit) {
    return switch (step.key()) {
      case BRACE, BRACE_AGAIN -> banded(step, targets.brace(), unit);
      case TILLER -> banded(step, targets.tiller(), unit);
      case NOCKING_POINT -> nocking(step, targets, figures, unit);
      default -> new StepTarget(step.target(), "");
    };
  }

  private static StepTarget banded(SetUpStep step, Target target, LengthUnit unit) {
    if (target.inner() == null) {
      return target.outer() == null
          ? new StepTarget(step.target(), "")
          : new StepTarget("within " + in(target.outer(), unit), in(target.outer(), other(unit)));
    }
    return new StepTarget(in(target.inner(), unit), in(target.inner(), other(unit)));
  }

  private static StepTarget nocking(
      SetUpStep step, Targets targets, SetUpFigures figures, LengthUnit unit) {
    if (figures.tillerUpper() == null || figures.tillerLower() == null) {
      return banded(step, targets.nocking(), unit);
    }
    Length start = Targets.nockingStart(figures.tiller());
    return new StepTarget(
        "start " + in(start, unit) + " above square",
        in(start, other(unit)) + "; within " + in(targets.nocking().inner(), unit));
  }

  private static LengthUnit other(LengthUnit unit) {
    return unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  private static String in(Length length, LengthUnit unit) {
    return unit == LengthUnit.INCH ? LengthText.inches(length) : LengthText.wholeMm(length);
  }

  private static String in(Band band, LengthUnit unit) {
    String low = in(band.low(), unit);
    return low.substring(0, low.lastIndexOf(' ')) + " to " + in(band.high(), unit);
  }
}
