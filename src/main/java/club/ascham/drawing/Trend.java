package club.ascham.drawing;

import club.ascham.bow.Band;
import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.statistics.Drift;
import club.ascham.statistics.Drift.Judged;
import club.ascham.statistics.DriftChart;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How brace and tiller of one rig went from check to check, drawn: strips over one another, oldest
 * check on the left, one step a check. Each strip has the band to aim for, a line at the set-up
 * figure, a dot for each reading, and since the last adjustment the limits within which readings
 * scatter of themselves; an adjustment stands between the checks around it. Coordinates are pixels
 * of a paper {@link #WIDTH} by {@link #height()}.
 *
 * @param adjustments where adjustments were made
 * @param description what the drawing shows, in words
 */
public record Trend(List<Strip> strips, List<Adjustment> adjustments, String description) {
  static final int WIDTH = 320;

  private static final int LEFT = 8;
  private static final int RIGHT = 214;
  private static final int STRIP = 84;
  private static final int FIRST_TOP = 24;
  private static final int APART = 126;
  private static final int BELOW = 18;
  private static final int INSET = 14;

  /** Less than this from top to bottom would make a hair look like a hill. */
  private static final Length LEAST_SPAN = Length.ofMm(8);

  /**
   * A check that was measured.
   *
   * @param brace null: only the other was (likewise tiller)
   */
  public record Reading(Instant at, Length brace, Length tiller) {}

  /** What the readings are drawn against: the last adjustment of the bow, and the charts since. */
  public record Against(
      List<Instant> adjustments, Targets targets, SetUpFigures setUp, Drift drift) {}

  /**
   * One quantity.
   *
   * @param band null: nothing says what to aim for (likewise {@code bandWords})
   * @param setUp the line at the set-up figure; null: there is none
   * @param line through the readings
   * @param limits what readings do of themselves, above and below; empty: not known yet
   * @param average through their weighted average; empty while the readings are judged one by one
   */
  public record Strip(
      String name,
      double top,
      double bottom,
      Bar band,
      Double setUp,
      String line,
      String limits,
      String average,
      List<Dot> dots,
      List<Words> words) {
    public double nameY() {
      return top - 8;
    }
  }

  /** The band to aim for. */
  public record Bar(double y, double height) {}

  /**
   * A reading.
   *
   * @param sign how it lies among its bands; null: nothing says
   */
  public record Dot(double x, double y, String sign) {}

  /** A figure at the right of a strip. */
  public record Words(double y, String said) {}

  /** Where something was adjusted. */
  public record Adjustment(double x, double bottom) {
    public double top() {
      return FIRST_TOP;
    }

    /** A small wedge that points up at the line. */
    public String wedge() {
      return "M%s %sl-5 9h10z".formatted(SideView.number(x), SideView.number(bottom() + 3));
    }
  }

  /**
   * The drawing of brace and tiller; null for fewer than two readings, which show no trend.
   *
   * @param readings oldest first
   */
  public static Trend of(List<Reading> readings, Against against) {
    if (readings.size() < 2) {
      return null;
    }
    List<Strip> strips = List.of(brace(readings, against, 0), tiller(readings, against, 1));
    return of(strips, readings, against, bothWords(readings));
  }

  /** As {@link #of(List, Against)}, of those readings alone that have the quantity. */
  public static Trend ofBrace(List<Reading> readings, Against against) {
    List<Reading> known = readings.stream().filter(one -> one.brace() != null).toList();
    return known.size() < 2
        ? null
        : of(
            List.of(brace(known, against, 0)),
            known,
            against,
            words("brace", known, Reading::brace, false));
  }

  /** As {@link #of(List, Against)}, of those readings alone that have the quantity. */
  public static Trend ofTiller(List<Reading> readings, Against against) {
    List<Reading> known = readings.stream().filter(one -> one.tiller() != null).toList();
    return known.size() < 2
        ? null
        : of(
            List.of(tiller(known, against, 0)),
            known,
            against,
            words("tiller", known, Reading::tiller, true));
  }

  private static Trend of(
      List<Strip> strips, List<Reading> readings, Against against, String words) {
    double bottom = strips.get(strips.size() - 1).bottom();
    List<Adjustment> marks = marks(readings, against.adjustments(), bottom);
    return new Trend(strips, marks, description(readings, words, marks.size()));
  }

  private static Strip brace(List<Reading> readings, Against against, int place) {
    return strip(
        new Quantity("Brace", against.targets().brace(), false, place),
        readings,
        Reading::brace,
        against.setUp() == null ? null : against.setUp().brace(),
        against.drift() == null ? null : against.drift().brace());
  }

  private static Strip tiller(List<Reading> readings, Against against, int place) {
    return strip(
        new Quantity("Tiller", against.targets().tiller(), true, place),
        readings,
        Reading::tiller,
        against.setUp() == null ? null : against.setUp().tiller(),
        against.drift() == null ? null : against.drift().tiller());
  }

  private record Quantity(String name, Target target, boolean signed, int place) {
    int top() {
      return FIRST_TOP + APART * place;
    }
  }

  private static Strip strip(
      Quantity of,
      List<Reading> readings,
      Function<Reading, Length> figure,
      Length setUp,
      Judged judged) {
    Band inner = of.target().inner();
    List<Length> figures = readings.stream().map(figure).toList();
    List<DriftChart.Point> points = points(readings, judged);
    Scale scale = Scale.over(figures, inner, setUp, points, of.top());
    List<Dot> dots = new ArrayList<>();
    Path line = new Path();
    Path upper = new Path();
    Path lower = new Path();
    Path average = new Path();
    for (int i = 0; i < readings.size(); i++) {
      double x = x(i, readings.size());
      double y = scale.y(figures.get(i).units());
      line.to(x, y);
      dots.add(new Dot(x, y, Gauge.sign(of.target(), figures.get(i))));
      DriftChart.Point point = points.get(i);
      if (point != null) {
        upper.to(x, scale.y(units(point.upper())));
        lower.to(x, scale.y(units(point.lower())));
        if (judged.chart().averaged()) {
          average.to(x, scale.y(units(point.judged())));
        }
      }
    }
    return new Strip(
        of.name(),
        of.top(),
        of.top() + STRIP,
        inner == null
            ? null
            : new Bar(
                scale.y(inner.high().units()),
                Math.max(1, scale.y(inner.low().units()) - scale.y(inner.high().units()))),
        setUp == null ? null : scale.y(setUp.units()),
        line.toString(),
        upper.toString() + lower,
        average.toString(),
        List.copyOf(dots),
        words(scale, inner, setUp, of.signed()));
  }

  /** The chart's point for each reading; null where it is from before the chart began. */
  private static List<DriftChart.Point> points(List<Reading> readings, Judged judged) {
    Map<Instant, DriftChart.Point> known = new HashMap<>();
    if (judged != null) {
      judged.chart().points().forEach(point -> known.put(point.at(), point));
    }
    return readings.stream().map(reading -> known.get(reading.at())).toList();
  }

  private static double units(double mm) {
    return mm * Length.ofMm(1).units();
  }

  /** A line from point to point. */
  private static final class Path {
    private final StringBuilder drawn = new StringBuilder();

    void to(double x, double y) {
      drawn
          .append(drawn.isEmpty() ? "M" : "L")
          .append(SideView.number(x))
          .append(' ')
          .append(SideView.number(y));
    }

    @Override
    public String toString() {
      return drawn.toString();
    }
  }

  /** The ends of the band and the set-up figure, each in the room that it needs. */
  private static List<Words> words(Scale scale, Band inner, Length setUp, boolean signed) {
    List<Words> words = new ArrayList<>();
    if (setUp != null) {
      words.add(new Words(scale.y(setUp.units()) + 4, "set up " + mm(setUp, signed)));
    }
    if (inner != null) {
      for (Length end : List.of(inner.high(), inner.low())) {
        double y = scale.y(end.units()) + 4;
        if (words.stream().allMatch(other -> Math.abs(other.y() - y) >= 14)) {
          words.add(new Words(y, mm(end, signed)));
        }
      }
    }
    return List.copyOf(words);
  }

  private static String mm(Length length, boolean signed) {
    String both = signed ? Gauge.signed(length) : LengthText.both(length);
    return both.substring(both.indexOf("· ") + 2);
  }

  private static double x(double step, int steps) {
    double first = LEFT + INSET;
    double last = RIGHT - INSET;
    return tenth(first + step * (last - first) / (steps - 1));
  }

  /** Before the first reading nothing is drawn that could have been changed. */
  private static List<Adjustment> marks(
      List<Reading> readings, List<Instant> adjustments, double bottom) {
    return adjustments.stream()
        .map(at -> readings.stream().filter(reading -> !reading.at().isAfter(at)).count())
        .filter(before -> before > 0)
        .distinct()
        .map(
            before ->
                new Adjustment(
                    Math.min(x(before - 0.5, readings.size()), RIGHT - INSET / 2.0), bottom))
        .toList();
  }

  private static String description(List<Reading> readings, String words, int adjusted) {
    return "%d checks: %s%s."
        .formatted(
            readings.size(),
            words,
            adjusted == 0
                ? ""
                : adjusted == 1 ? ", adjusted once between" : ", adjusted " + adjusted + " times");
  }

  private static String bothWords(List<Reading> readings) {
    return words("brace", readings, Reading::brace, false)
        + ", "
        + words("tiller", readings, Reading::tiller, true);
  }

  private static String words(
      String what, List<Reading> readings, Function<Reading, Length> figure, boolean signed) {
    return "%s from %s to %s"
        .formatted(
            what,
            mm(figure.apply(readings.get(0)), signed),
            mm(figure.apply(readings.get(readings.size() - 1)), signed));
  }

  private static double tenth(double pixels) {
    return Math.round(10 * pixels) / 10.0;
  }

  /** Lengths onto one strip, the greatest at the top. */
  private record Scale(double low, double high, int top) {
    static Scale over(
        List<Length> readings, Band inner, Length setUp, List<DriftChart.Point> points, int top) {
      List<Double> units =
          Stream.concat(
                  Stream.concat(
                          readings.stream(),
                          Stream.of(
                              inner == null ? null : inner.low(),
                              inner == null ? null : inner.high(),
                              setUp))
                      .filter(Objects::nonNull)
                      .map(length -> (double) length.units()),
                  points.stream()
                      .filter(Objects::nonNull)
                      .flatMap(
                          point ->
                              Stream.of(
                                  Trend.units(point.upper()),
                                  Trend.units(point.lower()),
                                  Trend.units(point.judged()))))
              .sorted()
              .toList();
      double low = units.get(0);
      double high = units.get(units.size() - 1);
      double margin = Math.max((high - low) / 8, (LEAST_SPAN.units() - (high - low)) / 2);
      return new Scale(low - margin, high + margin, top);
    }

    double y(double units) {
      return tenth(top + STRIP * (high - units) / (high - low));
    }
  }

  public int width() {
    return WIDTH;
  }

  public double height() {
    return strips.get(strips.size() - 1).bottom() + BELOW;
  }

  public double left() {
    return LEFT;
  }

  public double right() {
    return RIGHT;
  }

  /** Whether the limits of what readings do of themselves are drawn. */
  public boolean hasLimits() {
    return strips.stream().anyMatch(strip -> !strip.limits().isEmpty());
  }

  public boolean hasAverage() {
    return strips.stream().anyMatch(strip -> !strip.average().isEmpty());
  }
}
