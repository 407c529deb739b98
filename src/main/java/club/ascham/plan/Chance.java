package club.ascham.plan;

import java.util.SplittableRandom;

/**
 * All that is left to chance in one replication, from a seed of its own.
 *
 * <p>Its seed is mixed, so that the result does not depend on who reckons which replication. Seeds
 * in a row would make one replication the last one shifted by a step, since the generator only
 * counts on: the means were 5 % off so, and the tests of renewals said it.
 */
final class Chance {
  /** Everything goes as expected: use as it was, and nothing fails. */
  static final Chance NONE = new Chance(null, 1);

  private final SplittableRandom random;
  private final double usage;

  private Chance(SplittableRandom random, double usage) {
    this.random = random;
    this.usage = usage;
  }

  /** Of the n-th replication, whoever reckons it and when. */
  static Chance of(long seed, int replication, double usageSpread) {
    SplittableRandom random = new SplittableRandom(mixed(mixed(seed) + replication));
    double usage = 1 + usageSpread * (2 * random.nextDouble() - 1);
    return new Chance(random, usage);
  }

  /**
   * Seeds far apart: the generator only steps through all numbers, so that near seeds would make
   * one replication the last one shifted. The mixing of MurmurHash3 (Appleby), in the public
   * domain.
   */
  private static long mixed(long seed) {
    long z = (seed ^ seed >>> 33) * 0xff51afd7ed558ccdL;
    z = (z ^ z >>> 33) * 0xc4ceb9fe1a85ec53L;
    return z ^ z >>> 33;
  }

  double usage() {
    return usage;
  }

  /**
   * How long a part will last from now on, in days.
   *
   * @param hazardSoFar what its age has used up: (age / scale) ^ shape
   * @param scale 0: it does not fail
   */
  double lasts(double shape, double scale, double hazardSoFar, double age) {
    if (random == null || scale == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double more = -Math.log1p(-random.nextDouble());
    return scale * Math.pow(hazardSoFar + more, 1 / shape) - age;
  }
}
