package club.ascham.mechanics;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Readings of one bow between which nothing was done but what was counted. The last reading of one
 * adjustment is often the first of the next: as one run it counts once, and the unknown baseline of
 * the run takes nothing from the others (weighted least squares about their own means).
 */
public record Run(List<Point> points) {
  public Run {
    points = List.copyOf(points);
  }

  /**
   * One reading.
   *
   * @param at how far the work stood: twists, or turns of the bolts
   * @param mm measured
   * @param sdMm scatter of such a reading
   */
  public record Point(double at, double mm, double sdMm) {
    double weight() {
      return 1 / (sdMm * sdMm);
    }
  }

  /** The same readings against another scale of the work. */
  public Run against(DoubleUnaryOperator scale) {
    return new Run(
        points.stream()
            .map(point -> new Point(scale.applyAsDouble(point.at()), point.mm(), point.sdMm()))
            .toList());
  }

  /** How often the work moved on from one reading to the next. */
  public int moves() {
    int moves = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).at() != points.get(i - 1).at()) {
        moves++;
      }
    }
    return moves;
  }

  public double least() {
    return points.stream().mapToDouble(Point::at).min().orElse(0);
  }

  public double most() {
    return points.stream().mapToDouble(Point::at).max().orElse(0);
  }

  /** Precision that the run adds to the slope: the sum of w (at - mean)^2. */
  double information() {
    double middle = middle();
    return points.stream()
        .mapToDouble(point -> point.weight() * (point.at() - middle) * (point.at() - middle))
        .sum();
  }

  /** The slope that the run shows, times its {@link #information()}. */
  double score() {
    double middle = middle();
    return points.stream()
        .mapToDouble(point -> point.weight() * (point.at() - middle) * point.mm())
        .sum();
  }

  private double middle() {
    double weight = points.stream().mapToDouble(Point::weight).sum();
    return points.stream().mapToDouble(point -> point.weight() * point.at()).sum() / weight;
  }
}
