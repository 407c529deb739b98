package club.ascham.bow;

/**
 * The mass of an arrow against the weight that drives it: too light an arrow leaves its energy in
 * the bow, much as a dry loose does.
 */
public final class ArrowMass {
  /** The industry's least, in grains to the pound (bloodsportarchery.com, arrow safety). */
  public static final double LEAST_GRAINS_PER_POUND = 5;

  private ArrowMass() {}

  /**
   * Grains of arrow, point and all, to each lbf on the fingers.
   *
   * @throws IllegalArgumentException when either is not positive
   */
  public static double grainsPerPound(double arrowGrains, double weightLb) {
    if (!(arrowGrains > 0) || !(weightLb > 0)) {
      throw new IllegalArgumentException(
          "an arrow's mass and a bow's weight are more than nothing");
    }
    return arrowGrains / weightLb;
  }

  /** Whether the arrow is below the least mass for this weight. */
  public static boolean tooLight(double arrowGrains, double weightLb) {
    return grainsPerPound(arrowGrains, weightLb) < LEAST_GRAINS_PER_POUND;
  }
}
