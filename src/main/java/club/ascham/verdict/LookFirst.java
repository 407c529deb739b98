package club.ascham.verdict;

import club.ascham.bow.Zone;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Whether limbs and loops are looked at before anything is twisted or turned. */
final class LookFirst {
  private LookFirst() {}

  /** Why they are; empty: no reason. */
  static List<Remark> why(OnRecord bow, Reading reading, Evidence evidence) {
    List<Remark> reasons = new ArrayList<>();
    Finding brace = evidence.finding(Quantity.BRACE);
    Finding tiller = evidence.finding(Quantity.TILLER);
    if (brace.zone() == Zone.BEYOND) {
      reasons.add(Remark.of(Saying.BRACE_FAR_OFF));
    }
    if (bow.rig().tillerAdjusts()) {
      boolean tillerOff = !tiller.asItShouldBe();
      if (tillerOff && tiller.zone() == Zone.BEYOND) {
        reasons.add(Remark.of(Saying.TILLER_FAR_OFF));
      }
      boolean setUpWasRight =
          new Finding(
                  Quantity.TILLER,
                  tiller.setUpFigure(),
                  tiller.target(),
                  tiller.setUpFigure(),
                  tiller.scatter())
              .asItShouldBe();
      if ((tillerOff || setUpWasRight) && turnedOver(tiller)) {
        reasons.add(Remark.of(Saying.TURNED_OVER));
      }
    }
    DistancesMoved.of(bow, reading)
        .filter(DistancesMoved::asksForALook)
        .ifPresent(moved -> reasons.add(moved.said()));
    return reasons;
  }

  /** Limbs swapped end for end turn tiller's sign over; too small a tiller can't show it. */
  private static boolean turnedOver(Finding tiller) {
    Length setUp = tiller.setUpFigure();
    return setUp.abs().compareTo(Judge.READERS_SCATTER) >= 0
        && tiller.reading().plus(setUp).abs().compareTo(tiller.change().abs()) < 0;
  }
}
