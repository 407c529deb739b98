package club.ascham.statistics;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How one quantity went since the bow was last adjusted, ready to draw; all in mm. Up to the
 * seventh reading the limits are those of a reading, and what is judged is the reading; from the
 * eighth on they are those of the weighted average, for all points.
 *
 * @param points oldest first
 * @param centre the set-up figure; from the eighth reading the level of the bow by all of them
 * @param averaged whether the weighted average is what is judged
 */
public record DriftChart(List<Point> points, double centre, boolean averaged) {
  /**
   * One reading.
   *
   * @param mm as read
   * @param judged what lies within {@code upper} and {@code lower} or not: the reading without its
   *     reader's offset, or the weighted average with it
   * @param signal whether this reading said <i>changing</i>, by these limits or by the sums
   */
  public record Point(
      Instant at,
      String reader,
      double mm,
      double judged,
      double upper,
      double lower,
      boolean signal) {}

  static DriftChart of(Course course, Scatter scatter) {
    if (course.isEmpty()) {
      return null;
    }
    boolean averaged = course.last().isCharted();
    double first = course.steps().get(0).corrected();
    double centre = averaged ? course.centre() : first;
    List<Point> points = new ArrayList<>();
    for (Course.Step step : course.steps()) {
      double judged =
          averaged ? centre + step.ewma() * scatter.reproducibility() : step.corrected();
      double reach = averaged ? step.ewmaLimit() * scatter.reproducibility() : step.allowed();
      points.add(
          new Point(
              step.read().at(),
              step.read().reader(),
              step.read().mm(),
              judged,
              centre + reach,
              centre - reach,
              step.share() > 1));
    }
    return new DriftChart(List.copyOf(points), centre, averaged);
  }
}
