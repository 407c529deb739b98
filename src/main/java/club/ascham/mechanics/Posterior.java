package club.ascham.mechanics;

import java.util.List;

/**
 * What is believed of one number of one bow: normally distributed. Each run of readings narrows it
 * by Bayes; with normal readings the normal prior is its own conjugate, so that a sum of precisions
 * is all there is to it, and the order in which adjustments were made plays no part.
 *
 * <p>A closed form that anyone can check by hand, and whose interval never widens; a test holds it
 * to cover 87 to 93 % of 2,000 simulated bows.
 *
 * @param sd more than 0
 * @param shown adjustments that it rests on
 */
public record Posterior(double mean, double sd, int shown) {
  /** Half the width of the interval that holds 9 times in 10, in standard deviations. */
  private static final double NINE_IN_TEN = 1.6448536269514722;

  /** What is believed of a bow of which nothing was recorded yet. */
  public static Posterior prior(double mean, double sd) {
    return new Posterior(mean, sd, 0);
  }

  /** After these runs, each of readings {@code baseline + value * at}, its baseline unknown. */
  public Posterior after(List<Run> runs) {
    double precision = 1 / (sd * sd);
    double weighted = mean * precision;
    int seen = shown;
    for (Run run : runs) {
      precision += run.information();
      weighted += run.score();
      seen += run.moves();
    }
    return new Posterior(weighted / precision, 1 / Math.sqrt(precision), seen);
  }

  /** With {@link #high()}: where it lies 9 times in 10. */
  public double low() {
    return mean - NINE_IN_TEN * sd;
  }

  public double high() {
    return mean + NINE_IN_TEN * sd;
  }
}
