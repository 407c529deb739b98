package club.ascham.verdict;

import club.ascham.bow.Band;
import club.ascham.bow.Target;
import club.ascham.bow.Zone;
import club.ascham.units.Length;

/**
 * One measured quantity beside what it should be and what it was.
 *
 * @param setUpFigure what it measured when the set-up was finished
 * @param scatter how far two readings of it may lie apart without a change
 */
public record Finding(
    Quantity quantity, Length reading, Target target, Length setUpFigure, Length scatter) {

  /** The target of what is judged has an outer band. */
  public Zone zone() {
    return target.zone(reading).orElseThrow();
  }

  /** Reading minus set-up figure. */
  public Length change() {
    return reading.minus(setUpFigure);
  }

  /** Whether it lies where it should, or nothing says where that is and nothing is wrong. */
  public boolean asItShouldBe() {
    return switch (zone()) {
      case IN_INNER -> true;
      case IN_OUTER -> target.inner() == null;
      case BEYOND -> false;
    };
  }

  /** Where it should be brought; where that is nearer than a reading can tell, farther inside. */
  Length aim() {
    Length aim = target.aim(setUpFigure).orElseThrow();
    boolean near = aim.minus(reading).abs().compareTo(Target.READING_STEP) < 0;
    return near && target.inner() != null ? target.inner().middle() : aim;
  }

  /** Whether it moved by more than two people measuring one bow may differ. */
  public boolean moved() {
    return !Band.around(setUpFigure, scatter).holdsAsRead(reading);
  }
}
