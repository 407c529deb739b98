package club.ascham.verdict;

import club.ascham.bow.Target;
import club.ascham.units.Length;

/**
 * One measured quantity beside what it should be and what it was.
 *
 * @param setUpFigure what it measured when the set-up was finished
 * @param scatter how far two readings of it may lie apart without a change
 */
public record Finding(
    Quantity quantity, Length reading, Target target, Length setUpFigure, Length scatter) {

  public Place place() {
    return Place.of(reading, target);
  }

  /** Reading minus set-up figure. */
  public Length change() {
    return reading.minus(setUpFigure);
  }

  /** Whether it lies where it should, or nothing says where that is and nothing is wrong. */
  public boolean asItShouldBe() {
    return switch (place()) {
      case IN_INNER -> true;
      case IN_OUTER -> target.inner() == null;
      case BEYOND -> false;
    };
  }

  /** Whether it moved by more than two people measuring one bow may differ. */
  public boolean moved() {
    return change().abs().compareTo(scatter) > 0;
  }
}
