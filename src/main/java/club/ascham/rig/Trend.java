package club.ascham.rig;

import club.ascham.bow.Band;
import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How brace and tiller of one rig went from check to check, drawn: two strips over one another,
 * oldest check on the left, one step a check. Each strip has the band to aim for, a line at the
 * set-up figure and a dot for each reading; an adjustment stands between the checks around it.
 * Coordinates are pixels of a paper {@link #WIDTH} by {@link #HEIGHT}.
 *
 * @param adjustments where adjustments were made
 * @param description what the drawing shows, in words
 */
record Trend(Strip brace, Strip tiller, List<Adjustment> adjustments, String description) {
  static final int WIDTH = 320;
  static final int HEIGHT = 252;

  private static final int LEFT = 8;
  private static final int RIGHT = 214;
  private static final int STRIP = 84;
  private static final int BRACE_TOP = 24;
  private static final int TILLER_TOP = 150;
  private static final int INSET = 14;

  /** Less than this from top to bottom would make a hair look like a hill. */
  private static final Length LEAST_SPAN = Length.ofMm(8);

  /** A check that was measured. */
  record Reading(Instant at, Length brace, Length tiller) {}

  /**
   * One quantity.
   *
   * @param band null: nothing says what to aim for (likewise {@code bandWords})
   * @param setUp the line at the set-up figure; null: there is none
   * @param line through the readings
   */
  record Strip(
      String name,
      double top,
      double bottom,
      Bar band,
      Double setUp,
      String line,
      List<Dot> dots,
      List<Words> words) {
    public double nameY() {
      return top - 8;
    }
  }

  /** The band to aim for. */
  record Bar(double y, double height) {}

  /**
   * A reading.
   *
   * @param sign how it lies among its bands; null: nothing says
   */
  record Dot(double x, double y, String sign) {}

  /** A figure at the right of a strip. */
  record Words(double y, String said) {}

  /** Where something was adjusted. */
  record Adjustment(double x) {
    public double top() {
      return BRACE_TOP;
    }

    public double bottom() {
      return TILLER_TOP + STRIP;
    }

    /** A small wedge that points up at the line. */
    public String wedge() {
      return "M%s %sl-5 9h10z".formatted(SideView.number(x), SideView.number(bottom() + 3));
    }
  }

  /**
   * The drawing; null for fewer than two readings, which show no trend.
   *
   * @param readings oldest first
   * @param setUp null: no set-up is in force
   */
  static Trend of(
      List<Reading> readings, List<Instant> adjustments, Targets targets, SetUpFigures setUp) {
    if (readings.size() < 2) {
      return null;
    }
    Strip brace =
        strip(
            "Brace",
            BRACE_TOP,
            readings.stream().map(Reading::brace).toList(),
            targets.brace(),
            setUp == null ? null : setUp.brace(),
            false);
    Strip tiller =
        strip(
            "Tiller",
            TILLER_TOP,
            readings.stream().map(Reading::tiller).toList(),
            targets.tiller(),
            setUp == null ? null : setUp.tiller(),
            true);
    List<Adjustment> marks = marks(readings, adjustments);
    return new Trend(brace, tiller, marks, description(readings, marks.size()));
  }

  private static Strip strip(
      String name, int top, List<Length> readings, Target target, Length setUp, boolean signed) {
    Band inner = target.inner();
    Scale scale = Scale.over(readings, inner, setUp, top);
    List<Dot> dots = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < readings.size(); i++) {
      double x = x(i, readings.size());
      double y = scale.y(readings.get(i));
      line.append(i == 0 ? "M" : "L")
          .append(SideView.number(x))
          .append(' ')
          .append(SideView.number(y));
      dots.add(new Dot(x, y, Gauge.sign(target, readings.get(i))));
    }
    return new Strip(
        name,
        top,
        top + STRIP,
        inner == null
            ? null
            : new Bar(
                scale.y(inner.high()), Math.max(1, scale.y(inner.low()) - scale.y(inner.high()))),
        setUp == null ? null : scale.y(setUp),
        line.toString(),
        List.copyOf(dots),
        words(scale, inner, setUp, signed));
  }

  /** The ends of the band and the set-up figure, each in the room that it needs. */
  private static List<Words> words(Scale scale, Band inner, Length setUp, boolean signed) {
    List<Words> words = new ArrayList<>();
    if (setUp != null) {
      words.add(new Words(scale.y(setUp) + 4, "set up " + mm(setUp, signed)));
    }
    if (inner != null) {
      for (Length end : List.of(inner.high(), inner.low())) {
        double y = scale.y(end) + 4;
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
  private static List<Adjustment> marks(List<Reading> readings, List<Instant> adjustments) {
    return adjustments.stream()
        .map(at -> readings.stream().filter(reading -> !reading.at().isAfter(at)).count())
        .filter(before -> before > 0)
        .distinct()
        .map(
            before ->
                new Adjustment(Math.min(x(before - 0.5, readings.size()), RIGHT - INSET / 2.0)))
        .toList();
  }

  private static String description(List<Reading> readings, int adjusted) {
    Reading first = readings.get(0);
    Reading last = readings.get(readings.size() - 1);
    return "%d checks: brace from %s to %s, tiller from %s to %s%s."
        .formatted(
            readings.size(),
            mm(first.brace(), false),
            mm(last.brace(), false),
            mm(first.tiller(), true),
            mm(last.tiller(), true),
            adjusted == 0
                ? ""
                : adjusted == 1 ? ", adjusted once between" : ", adjusted " + adjusted + " times");
  }

  private static double tenth(double pixels) {
    return Math.round(10 * pixels) / 10.0;
  }

  /** Lengths onto one strip, the greatest at the top. */
  private record Scale(double low, double high, int top) {
    static Scale over(List<Length> readings, Band inner, Length setUp, int top) {
      List<Long> units =
          Stream.concat(
                  readings.stream(),
                  Stream.of(
                          inner == null ? null : inner.low(),
                          inner == null ? null : inner.high(),
                          setUp)
                      .filter(length -> length != null))
              .map(Length::units)
              .sorted()
              .toList();
      double low = units.get(0);
      double high = units.get(units.size() - 1);
      double margin = Math.max((high - low) / 8, (LEAST_SPAN.units() - (high - low)) / 2);
      return new Scale(low - margin, high + margin, top);
    }

    double y(Length length) {
      return tenth(top + STRIP * (high - length.units()) / (high - low));
    }
  }

  public int width() {
    return WIDTH;
  }

  public int height() {
    return HEIGHT;
  }

  public double left() {
    return LEFT;
  }

  public double right() {
    return RIGHT;
  }

  public List<Strip> strips() {
    return List.of(brace, tiller);
  }
}
