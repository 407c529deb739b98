package club.ascham.bow;

import club.ascham.mechanics.CommonRecurve;
import club.ascham.mechanics.DrawCurve;
import club.ascham.mechanics.OutOfDomain;

/**
 * How the force of one bow rises with the draw: that of a common recurve of its length with elastic
 * limbs, and beside it the even rise from nothing at the braced string, which is all that is left
 * where the mechanics does not reach.
 *
 * <p>It stays as the other end of the range, since the recurve's geometry is assumed.
 *
 * @param curve null: no such recurve; then the rise is even
 * @param zeroIn AMO draw at which the string stands when braced
 */
record Rise(DrawCurve curve, double zeroIn) {
  /** A factor: the likeliest and the two ends. */
  record Factor(double likely, double low, double high) {
    static final Factor NONE = new Factor(1, 1, 1);

    /** Of several answers, the likeliest first. */
    static Factor of(double likely, double... others) {
      double low = likely;
      double high = likely;
      for (double other : others) {
        low = Math.min(low, other);
        high = Math.max(high, other);
      }
      return new Factor(likely, low, high);
    }
  }

  static Rise of(double bowIn, double riserIn, double zeroIn) {
    try {
      return new Rise(
          CommonRecurve.curve(bowIn, riserIn, zeroIn - FingerWeight.AMO_BEYOND_PIVOT_IN), zeroIn);
    } catch (OutOfDomain noSuchRecurve) {
      return new Rise(null, zeroIn);
    }
  }

  boolean isElastic() {
    return curve != null;
  }

  /**
   * From the force at one draw to that at another, both AMO draws beyond the braced string. An even
   * rise is the other end of the range: real bows lie between the two, most of them near the first.
   */
  Factor from(double drawIn, double toIn) {
    double even = (toIn - zeroIn) / (drawIn - zeroIn);
    return curve == null
        ? Factor.of(even)
        : Factor.of(curve.forceLb(toIn - zeroIn) / curve.forceLb(drawIn - zeroIn), even);
  }
}
