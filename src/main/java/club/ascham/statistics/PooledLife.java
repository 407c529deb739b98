package club.ascham.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lives of groups of one kind of part, such as strings by material, where a small group leans on
 * the others: log shape and log scale of the groups are taken to be normal about a common life, and
 * each group's own parts pull it away from there (empirical Bayes; the peak of likelihood times
 * prior, and its curvature). A group without a failure has a life too, for what it has survived.
 *
 * @param together all parts as one group
 * @param groups each group's own life
 */
public record PooledLife(WeibullFit together, Map<String, WeibullFit> groups) {
  /** Judged, of log shape: 9 groups in 10 within 1.5 times the common one. */
  private static final double SHAPE_SPREAD = 0.25;

  /** Judged, of log scale: within 2.3 times. */
  private static final double SCALE_SPREAD = 0.5;

  /** Degrees of freedom that the judged spreads count for. */
  private static final int JUDGED = 4;

  private static final int STEPS = 100;
  private static final double NEAR_ENOUGH = 1e-10;

  /**
   * Empty where even all parts together carry no life: {@link LifeEstimate#of} of them says why.
   */
  public static Optional<PooledLife> of(Map<String, List<Service>> groups) {
    List<Service> all = groups.values().stream().flatMap(List::stream).toList();
    if (!(LifeEstimate.of(all) instanceof LifeEstimate.Fitted fitted)) {
      return Optional.empty();
    }
    WeibullFit together = fitted.fit();
    List<WeibullFit> own = new ArrayList<>();
    for (List<Service> group : groups.values()) {
      if (LifeEstimate.of(group) instanceof LifeEstimate.Fitted alone) {
        own.add(alone.fit());
      }
    }
    Prior shape =
        Prior.of(
            own.stream().map(fit -> log(fit.life().shape(), fit.varianceOfLogShape())).toList(),
            log(together.life().shape(), together.varianceOfLogShape()),
            SHAPE_SPREAD);
    Prior scale =
        Prior.of(
            own.stream().map(fit -> log(fit.life().scale(), fit.varianceOfLogScale())).toList(),
            log(together.life().scale(), together.varianceOfLogScale()),
            SCALE_SPREAD);
    Weibull common = new Weibull(Math.exp(shape.mean), Math.exp(scale.mean));
    Map<String, WeibullFit> pooled = new LinkedHashMap<>();
    groups.forEach(
        (name, services) ->
            pooled.put(name, pulled(services, common, 1 / shape.variance, 1 / scale.variance)));
    return Optional.of(new PooledLife(together, pooled));
  }

  private static Prior log(double estimate, double variance) {
    return new Prior(Math.log(estimate), variance);
  }

  /** A normal belief. */
  private record Prior(double mean, double variance) {
    /**
     * About a group of which nothing was seen: the groups' mean, weighted; what they differ by
     * beyond what their own few parts explain (method of moments), drawn toward the judged spread;
     * and what is not known of the mean.
     */
    static Prior of(List<Prior> own, Prior together, double judged) {
      if (own.size() < 2) {
        return new Prior(together.mean, judged * judged + together.variance);
      }
      double middle = own.stream().mapToDouble(Prior::mean).average().orElseThrow();
      double excess = 0;
      for (Prior group : own) {
        excess += Math.pow(group.mean - middle, 2) - group.variance;
      }
      double seen = own.size() - 1;
      double between =
          Math.max(0, excess + group(own) + JUDGED * judged * judged) / (seen + JUDGED);
      double weights = 0;
      double sum = 0;
      for (Prior group : own) {
        double weight = 1 / (group.variance + between);
        weights += weight;
        sum += weight * group.mean;
      }
      return new Prior(sum / weights, between + 1 / weights);
    }

    /** What the middle of the groups takes from their squares: one group's mean variance. */
    private static double group(List<Prior> own) {
      return own.stream().mapToDouble(Prior::variance).average().orElseThrow();
    }
  }

  /**
   * Newton's steps from the common life, each halved until it climbs.
   *
   * @param shapes precision of the prior of log shape, {@code scales} of log scale
   */
  private static WeibullFit pulled(
      List<Service> services, Weibull common, double shapes, double scales) {
    WeibullLikelihood likelihood = new WeibullLikelihood(services);
    double u = 0;
    double v = 0;
    double height = height(likelihood, common, u, v, shapes, scales);
    for (int step = 0; step < STEPS; step++) {
      double[] slopes =
          likelihood.slopes(Math.log(common.shape()) + u, Math.log(common.scale()) + v);
      double byShape = slopes[0] - shapes * u;
      double byScale = slopes[1] - scales * v;
      double a = shapes - slopes[2];
      double b = -slopes[3];
      double c = scales - slopes[4];
      if (a * c - b * b <= 0 || a <= 0) {
        // No peak in this neighbourhood: the prior's own curvature leads uphill, if slowly.
        a = shapes + Math.abs(slopes[2]) + Math.abs(b);
        c = scales + Math.abs(slopes[4]) + Math.abs(b);
        b = 0;
      }
      double determinant = a * c - b * b;
      double du = (c * byShape - b * byScale) / determinant;
      double dv = (a * byScale - b * byShape) / determinant;
      double next = height(likelihood, common, u + du, v + dv, shapes, scales);
      while (!(next >= height) && Math.abs(du) + Math.abs(dv) > NEAR_ENOUGH) {
        du /= 2;
        dv /= 2;
        next = height(likelihood, common, u + du, v + dv, shapes, scales);
      }
      if (Math.abs(du) + Math.abs(dv) <= NEAR_ENOUGH) {
        break;
      }
      u += du;
      v += dv;
      height = next;
    }
    Weibull life = moved(common, u, v);
    return WeibullFit.at(
            life, likelihood, services.size(), likelihood.failures() + JUDGED, shapes, scales)
        .orElseThrow(() -> new IllegalStateException("a peak that is none: " + life));
  }

  private static double height(
      WeibullLikelihood likelihood,
      Weibull common,
      double u,
      double v,
      double shapes,
      double scales) {
    double shape = common.shape() * Math.exp(u);
    return shape < Weibull.LEAST_SHAPE || shape > Weibull.MOST_SHAPE
        ? Double.NEGATIVE_INFINITY
        : likelihood.value(moved(common, u, v)) - (shapes * u * u + scales * v * v) / 2;
  }

  private static Weibull moved(Weibull common, double u, double v) {
    return new Weibull(common.shape() * Math.exp(u), common.scale() * Math.exp(v));
  }
}
