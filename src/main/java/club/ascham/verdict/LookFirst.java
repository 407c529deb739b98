package club.ascham.verdict;

import club.ascham.bow.Zone;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Whether limbs and loops are looked at before anything is twisted or turned. */
final class LookFirst {
  private LookFirst() {}

  /** Why they are; empty: no reason. */
  static List<String> why(OnRecord bow, Reading reading, Evidence evidence) {
    List<String> reasons = new ArrayList<>();
    Finding brace = evidence.finding(Quantity.BRACE);
    Finding tiller = evidence.finding(Quantity.TILLER);
    if (brace.zone() == Zone.BEYOND) {
      reasons.add("With brace so far off, a loop or a limb may not be seated.");
    }
    if (bow.rig().tillerAdjusts()) {
      boolean tillerOff = !tiller.asItShouldBe();
      if (tillerOff && tiller.zone() == Zone.BEYOND) {
        reasons.add("So far beyond, tiller is sooner a limb out of its seat than a bolt.");
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
        reasons.add(
            "Tiller is nearer to its set-up figure turned over than to that figure: the limbs may be"
                + " the wrong way up.");
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
