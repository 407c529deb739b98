package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import java.util.Arrays;
import java.util.Random;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Age replacement (Barlow and Proschan): a part is replaced when it fails or at age T, whichever
 * comes first. It costs C(T) = (planned R(T) + unplanned F(T)) / integral of R from 0 to T for each
 * unit of age; the best T solves h(T) integral R - F(T) = planned / (unplanned - planned).
 *
 * @param age null: no age pays, inspect instead
 * @param costRate at that age; running to failure where none pays
 */
public record ReplacementAge(Double age, double costRate, double runToFailureCostRate) {
  /** A gain below this share of the cost is none: the best age lies beyond nearly every life. */
  private static final double NEGLIGIBLE = 1e-3;

  private static final double PRECISION = 1e-11;
  private static final int MOST = 500;

  /**
   * The hazard that a part has gone through is looked for within these. For small ones the equation
   * is (shape - 1) hazard = ratio, so that no costs and no shape that are let in ask for a smaller.
   */
  private static final double LEAST_HAZARD = 1e-22;

  private static final double MOST_HAZARD = 700;

  /**
   * @param planned cost of a replacement at its age, {@code unplanned} of one after a failure; both
   *     more than 0
   * @throws club.ascham.mechanics.OutOfDomain
   */
  public static ReplacementAge of(Weibull life, double planned, double unplanned) {
    Domain.within("plannedCost", planned, 1e-9, 1e9);
    Domain.within("unplannedCost", unplanned, 1e-9, 1e9);
    double toFailure = unplanned / life.mean();
    ReplacementAge none = new ReplacementAge(null, toFailure, toFailure);
    if (life.shape() <= 1 || unplanned <= planned) {
      return none;
    }
    double ratio = planned / (unplanned - planned);
    double last = Math.log(MOST_HAZARD);
    double first = Math.log(LEAST_HAZARD);
    if (excess(life, last, ratio) < 0) {
      return none;
    }
    double hazard =
        new BrentSolver(PRECISION, PRECISION).solve(MOST, x -> excess(life, x, ratio), first, last);
    double age = life.scale() * Math.exp(hazard / life.shape());
    double failed = -Math.expm1(-Math.exp(hazard));
    double rate = (planned * (1 - failed) + unplanned * failed) / life.meanUpTo(age);
    return rate < toFailure * (1 - NEGLIGIBLE) ? new ReplacementAge(age, rate, toFailure) : none;
  }

  /**
   * (h(T) integral R - F(T)) / ratio - 1, by the logarithm of the hazard gone through by T: in
   * shares of the ratio, which may be a millionth of a millionth.
   */
  private static double excess(Weibull life, double logHazard, double ratio) {
    double hazard = Math.exp(logHazard);
    double age = life.scale() * Math.exp(logHazard / life.shape());
    return (life.shape() * hazard / age * life.meanUpTo(age) + Math.expm1(-hazard)) / ratio - 1;
  }

  /**
   * The best age of an estimated life, and how far what is not known of the life may move it.
   *
   * @param low with {@code high}: 9 times in 10; null: that no age pays is among the likely
   * @param pays share of the likely lives for which an age pays
   */
  public record Likely(ReplacementAge best, Double low, Double high, double pays) {}

  /** Lives that are drawn from what is known of one. */
  private static final int DRAWS = 1_000;

  private static final double LOW = 0.05;
  private static final int NEARLY_NORMAL = 100;

  /** The same seed draws the same lives. */
  public static Likely likely(WeibullFit fit, double planned, double unplanned, long seed) {
    ReplacementAge best = of(fit.life(), planned, unplanned);
    Random random = new Random(seed);
    double[] ages = new double[DRAWS];
    int pays = 0;
    for (int i = 0; i < DRAWS; i++) {
      Double age = of(drawn(fit, random), planned, unplanned).age();
      ages[i] = age == null ? Double.POSITIVE_INFINITY : age;
      pays += age == null ? 0 : 1;
    }
    Arrays.sort(ages);
    return new Likely(
        best,
        finite(ages[(int) (LOW * DRAWS)]),
        finite(ages[(int) ((1 - LOW) * DRAWS) - 1]),
        (double) pays / DRAWS);
  }

  /** A life as likely as the fit says, with the wide tails of Student's t. */
  private static Weibull drawn(WeibullFit fit, Random random) {
    double ofShape = Math.sqrt(fit.varianceOfLogShape());
    double along = fit.covariance() / ofShape;
    double across = Math.sqrt(Math.max(0, fit.varianceOfLogScale() - along * along));
    double tail = tail(fit.degrees(), random);
    double x = tail * random.nextGaussian();
    double y = tail * random.nextGaussian();
    return Weibull.near(
        fit.life().shape() * Math.exp(ofShape * x),
        fit.life().scale() * Math.exp(along * x + across * y));
  }

  private static double tail(int degrees, Random random) {
    if (degrees > NEARLY_NORMAL) {
      return 1;
    }
    double squares = 0;
    for (int i = 0; i < degrees; i++) {
      double gaussian = random.nextGaussian();
      squares += gaussian * gaussian;
    }
    return Math.sqrt(degrees / squares);
  }

  private static Double finite(double age) {
    return Double.isInfinite(age) ? null : age;
  }
}
