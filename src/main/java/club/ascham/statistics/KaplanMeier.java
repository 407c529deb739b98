package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The share of parts that reach an age, from the parts themselves: at each age at which some
 * failed, those that did out of those that were watched then. A part older than the record counts
 * from the age at which it was entered on; one that leaves at an age at which others fail was still
 * there.
 *
 * @param steps by rising age; empty where nothing failed
 */
public record KaplanMeier(List<Step> steps) {
  /** With fewer parts at risk one that fails moves the curve by more than a fifth (judged). */
  public static final int FEW = 5;

  /**
   * @param watched parts at risk just before
   * @param value share that reaches more than this age, given that it reached the youngest age
   *     watched
   * @param standardError by Greenwood's formula
   * @param low of the band on log(-log) scale, which stays between 0 and 1 (likewise {@code high})
   */
  public record Step(
      double time,
      int watched,
      int failed,
      double value,
      double standardError,
      double low,
      double high) {
    /** It rests on fewer than {@link #FEW}. */
    public boolean few() {
      return watched < FEW;
    }
  }

  /**
   * @param level of the band at each age by itself, such as 0.95
   */
  public static KaplanMeier of(List<Service> services, double level) {
    double z = Normal.quantile((1 + Domain.within("level", level, 0.5, 0.9999)) / 2);
    double[] entries = services.stream().mapToDouble(Service::entered).sorted().toArray();
    double[] ends = services.stream().mapToDouble(Service::until).sorted().toArray();
    double[] failures =
        services.stream().filter(Service::failed).mapToDouble(Service::until).sorted().toArray();
    List<Step> steps = new ArrayList<>();
    double value = 1;
    double greenwood = 0;
    double high = 1;
    for (int i = 0; i < failures.length; ) {
      double time = failures[i];
      int failed = below(failures, time, true) - i;
      int watched = below(entries, time, false) - below(ends, time, false);
      value *= 1 - (double) failed / watched;
      greenwood += (double) failed / watched / (watched - failed);
      if (value > 0) {
        double reach = z * Math.sqrt(greenwood) / -Math.log(value);
        high = Math.pow(value, Math.exp(-reach));
        steps.add(
            new Step(
                time,
                watched,
                failed,
                value,
                value * Math.sqrt(greenwood),
                Math.pow(value, Math.exp(reach)),
                high));
      } else {
        // The formula has no answer when the last one watched has failed: no better than before.
        steps.add(new Step(time, watched, failed, 0, 0, 0, high));
      }
      i += failed;
    }
    return new KaplanMeier(List.copyOf(steps));
  }

  /** How many of sorted values are less than a time, or at most it. */
  private static int below(double[] sorted, double time, boolean orAt) {
    int at = Arrays.binarySearch(sorted, time);
    if (at < 0) {
      return -at - 1;
    }
    while (orAt ? at < sorted.length && sorted[at] == time : at > 0 && sorted[at - 1] == time) {
      at += orAt ? 1 : -1;
    }
    return at;
  }

  /** The age from which on every step rests on few; null: the last one does not. */
  public Double fewFrom() {
    Double from = null;
    for (Step step : steps) {
      if (!step.few()) {
        from = null;
      } else if (from == null) {
        from = step.time();
      }
    }
    return from;
  }

  /** The age that half the parts reach; null: more than half reach every age that was watched. */
  public Double median() {
    return steps.stream()
        .filter(step -> step.value() <= 0.5)
        .map(Step::time)
        .findFirst()
        .orElse(null);
  }
}
