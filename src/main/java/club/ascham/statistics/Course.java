package club.ascham.statistics;

import club.ascham.statistics.Scatter.Offset;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How one quantity of one bow went from reading to reading since it was last adjusted, and how
 * strongly each reading speaks for a change.
 *
 * <p>For a steady bow the {@link Residuals} are independent and standard normal, whoever measured
 * (recursive residuals: Brown, Durbin and Evans, J. R. Stat. Soc. B 37, 1975), which is what EWMA
 * and CUSUM ask for; a chart about the set-up figure alone would take that figure's own error for a
 * change. A reading that signals is not believed: the centre stays where it was, so that a bow that
 * has changed does not become its own rule.
 *
 * @param steps one a reading, oldest first
 * @param centre the level of the bow by the readings that did not signal
 */
record Course(List<Step> steps, double centre) {
  /** Readings with which the charts begin; before that the change from the first is judged. */
  static final int CHARTED = 8;

  static final double LAMBDA = 0.2;
  static final double K = 0.5;

  /** With {@link #H}: together one false alarm in 400 readings; found by simulation. */
  static final double WIDTH = 3.0;

  static final double H = 5.1;

  /** One reading of this quantity. */
  record Read(Instant at, String reader, double mm) {}

  /**
   * One reading and what it says.
   *
   * @param number counted from 1
   * @param corrected without its reader's offset
   * @param change from the first reading, offsets reckoned in (likewise {@code allowed})
   * @param ewma in standard deviations of a reading (likewise {@code ewmaLimit})
   * @param up CUSUM upward, {@code down} downward, in standard deviations of a reading
   */
  record Step(
      int number,
      Read read,
      double corrected,
      double change,
      double allowed,
      double ewma,
      double ewmaLimit,
      double up,
      double down) {
    boolean isCharted() {
      return number >= CHARTED;
    }

    double changeShare() {
      return number == 1 ? 0 : Math.abs(change) / allowed;
    }

    double ewmaShare() {
      return number == 1 ? 0 : Math.abs(ewma) / ewmaLimit;
    }

    double cusumShare() {
      return Math.max(up, down) / H;
    }

    /** How near the nearest of its limits it comes; over 1 is a signal. */
    double share() {
      return isCharted() ? Math.max(ewmaShare(), cusumShare()) : changeShare();
    }
  }

  /**
   * @param reads oldest first
   * @param k limit of the change from the first reading, in standard deviations
   */
  static Course of(List<Read> reads, Scatter scatter, double k) {
    Residuals residuals = new Residuals();
    List<Step> steps = new ArrayList<>(reads.size());
    double first = 0;
    double ewma = 0;
    double up = 0;
    double down = 0;
    for (int i = 0; i < reads.size(); i++) {
      Read read = reads.get(i);
      double corrected = read.mm() - scatter.offsetOf(read.reader()).mean();
      double[] covariances = covariances(reads, i, scatter);
      double residual = residuals.of(corrected, variance(read, scatter), covariances);
      first = i == 0 ? corrected : first;
      if (i > 0) {
        ewma = Ewma.next(ewma, residual, LAMBDA);
        up = Cusum.next(up, residual, K);
        down = Cusum.next(down, -residual, K);
      }
      double ofChange =
          i == 0
              ? 0
              : variance(reads.get(0), scatter) + variance(read, scatter) - 2 * covariances[0];
      Step step =
          new Step(
              i + 1,
              read,
              corrected,
              corrected - first,
              k * Math.sqrt(ofChange),
              ewma,
              WIDTH * Ewma.spread(i, LAMBDA),
              up,
              down);
      steps.add(step);
      if (step.share() <= 1) {
        residuals.believe();
      }
    }
    return new Course(List.copyOf(steps), reads.isEmpty() ? 0 : residuals.level());
  }

  private static double variance(Read read, Scatter scatter) {
    Offset offset = scatter.offsetOf(read.reader());
    return scatter.repeatability() * scatter.repeatability() + offset.sd() * offset.sd();
  }

  /** With each earlier reading: what is not known of the offset, where it is one person's. */
  private static double[] covariances(List<Read> reads, int of, Scatter scatter) {
    double[] covariances = new double[of];
    String reader = reads.get(of).reader();
    double sd = scatter.offsetOf(reader).sd();
    for (int j = 0; j < of; j++) {
      covariances[j] = reader != null && reader.equals(reads.get(j).reader()) ? sd * sd : 0;
    }
    return covariances;
  }

  boolean isEmpty() {
    return steps.isEmpty();
  }

  Step last() {
    return steps.get(steps.size() - 1);
  }

  /**
   * The reading, counted from 0, with which the change seems to have begun: the one after which the
   * larger sum was never 0 again; at least the second.
   */
  int changedFrom() {
    boolean rising = last().up() >= last().down();
    int from = steps.size() - 1;
    while (from > 1 && sum(from - 1, rising) > 0) {
      from--;
    }
    return Math.max(1, from);
  }

  private double sum(int step, boolean rising) {
    return rising ? steps.get(step).up() : steps.get(step).down();
  }

  /**
   * Readings from one on less those before it, without offsets.
   *
   * @param variance of the change
   */
  record Shift(double mm, double variance) {}

  Shift shift(Instant from, Scatter scatter) {
    double[] before = new double[2];
    double[] after = new double[2];
    for (Step step : steps) {
      double[] side = step.read().at().isBefore(from) ? before : after;
      side[0]++;
      side[1] += step.corrected();
    }
    if (before[0] == 0 || after[0] == 0) {
      return null;
    }
    double one = scatter.reproducibility() * scatter.reproducibility();
    return new Shift(after[1] / after[0] - before[1] / before[0], one / before[0] + one / after[0]);
  }
}
