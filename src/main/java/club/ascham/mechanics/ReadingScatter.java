package club.ascham.mechanics;

/**
 * How far a reading lies from what is there: the finest step of the scale, evenly spread
 * (step/sqrt(12)), and what square and eye add. Judged, to agree with the 3 mm that two people may
 * differ by on one bow 19 times in 20, until the club's own readers say better.
 */
public final class ReadingScatter {
  /** Standard deviation that square, eye and the string's seat add to brace, or to tiller. */
  public static final double EYE_MM = 1.0;

  /** Half the finest step that anybody reads: nearer to its aim than this, a distance is there. */
  static final double READABLE_MM = 0.5;

  /** Lengths are told to a hundred-thousandth of a millimetre; binary fractions lose less. */
  private static final double TOLD_MM = 5e-6;

  private ReadingScatter() {}

  /** Whether a distance is less than another, to what a length is told by: 4.1 - 3.1 is 1. */
  static boolean isLess(double mm, double thanMm) {
    return mm < thanMm - TOLD_MM;
  }

  /** Standard deviation of brace, read in steps of {@code stepMm}. */
  public static double braceMm(double stepMm) {
    return Math.sqrt(stepMm * stepMm / 12 + EYE_MM * EYE_MM);
  }

  /** Standard deviation of tiller: two distances, each read in steps of {@code stepMm}. */
  public static double tillerMm(double stepMm) {
    return Math.sqrt(2 * stepMm * stepMm / 12 + EYE_MM * EYE_MM);
  }
}
