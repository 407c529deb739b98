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

  /**
   * By the mean strand: the least that these turns can shorten it. The outermost helix shortens by
   * twice as much, to 1 in 100 for any twists that are sound.
   */
  public double leastShorteningMm(double turns) {
    double across = Math.PI * radiusMm() * turns;
    return across * across / untwistedMm;
  }

  /** Whether so many turns go in at all: at most, the outermost strand would lie across. */
  public boolean takes(int turns) {
    return 2 * Math.PI * radiusMm() * turns < untwistedMm;
  }
}
