package club.ascham.mechanics;

/**
 * A bundle of parallel strands that twisting shortens. Two ways of reckoning it are in print; they
 * differ twofold, and the truth lies between:
 *
 * <ul>
 *   <li>the mean strand of the bundle (contraction factor (1 + sec a) / 2, Hearle): shortening (pi
 *       R n)^2 / L0;
 *   <li>the outermost helix: L0 - sqrt(L0^2 - (2 pi R n)^2).
 * </ul>
 *
 * <p>Both are quadratic in the turns: "millimetres a twist" is no constant.
 *
 * @param untwistedMm L0
 * @param strands N
 * @param strandDiameterMm d of one strand
 */
public record TwistedString(double untwistedMm, int strands, double strandDiameterMm) {
  /** Part of the bundle's cross-section that is thread: a judgement. */
  private static final double PACKING = 0.75;

  /**
   * @throws OutOfDomain for what is no string
   */
  public TwistedString {
    Domain.within("stringLengthMm", untwistedMm, 500, 2_500);
    if (strands < 4 || strands > 60) {
      throw new OutOfDomain("strands", "A bowstring has between 4 and 60 strands.");
    }
    Domain.within("strandDiameterMm", strandDiameterMm, 0.1, 2);
  }

  /** R, of the bundle. */
  public double radiusMm() {
    return strandDiameterMm / 2 * Math.sqrt(strands / PACKING);
  }

  /** By the mean strand: the least that these turns can shorten it. */
  public double leastShorteningMm(double turns) {
    double across = Math.PI * radiusMm() * turns;
    return across * across / untwistedMm;
  }

  /**
   * By the outermost helix: the most that these turns can shorten it.
   *
   * @throws OutOfDomain where the outermost strand would lie across the string
   */
  public double mostShorteningMm(double turns) {
    double across = 2 * Math.PI * radiusMm() * turns;
    if (Math.abs(across) >= untwistedMm) {
      throw new OutOfDomain("twists", "So many turns don't go into a string of that length.");
    }
    return untwistedMm - Math.sqrt(untwistedMm * untwistedMm - across * across);
  }

  /**
   * The turns that shorten it by so much, if it shortens by a factor more than the mean strand
   * says.
   *
   * @param factor 1: the mean strand; 2: nearly the outermost helix
   */
  double turnsFor(double shorteningMm, double factor) {
    return Math.sqrt(Math.max(0, shorteningMm) / factor * untwistedMm) / (Math.PI * radiusMm());
  }

  double shorteningMm(double turns, double factor) {
    return factor * leastShorteningMm(turns);
  }
}
