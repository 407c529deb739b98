package club.ascham.bow;

import club.ascham.units.Length;
import club.ascham.units.LengthText;

/**
 * A reading drawn against its bands: every position in percent of the gauge's width, every figure
 * in words.
 *
 * @param outerFrom null: no outer band (likewise for the other positions and texts)
 * @param sign how the reading lies: {@code fine}, {@code note} or {@code stop}; null where there is
 *     no reading or nothing speaks
 */
public record Gauge(
    String label,
    Double outerFrom,
    Double outerTo,
    Double innerFrom,
    Double innerTo,
    Double setUp,
    Double reading,
    String sign,
    String outerText,
    String innerText,
    String setUpText,
    String readingText) {
  /** A gauge without any band is drawn this far to both sides of its figure. */
  private static final Length ALONE = Length.ofMm(15);

  /** Readings beyond the drawing stand at its edge. */
  private static final double EDGE_PERCENT = 3;

  /**
   * @param signed whether the quantity may be negative, as tiller: then its figures carry a sign
   * @param setUp null: none recorded
   * @param reading null: none yet
   */
  public static Gauge of(
      String label, Target target, Length setUp, Length reading, boolean signed) {
    Band outer = target.outer();
    Band inner = target.inner();
    Band shown = shown(outer != null ? outer : inner, setUp != null ? setUp : reading);
    return new Gauge(
        label,
        outer == null ? null : percent(shown, outer.low()),
        outer == null ? null : percent(shown, outer.high()),
        inner == null ? null : percent(shown, inner.low()),
        inner == null ? null : percent(shown, inner.high()),
        setUp == null ? null : percent(shown, setUp),
        reading == null ? null : percent(shown, reading),
        reading == null ? null : sign(target, reading),
        words(outer, signed),
        words(inner, signed),
        setUp == null ? null : words(setUp, signed),
        reading == null ? null : words(reading, signed));
  }

  /**
   * How a reading lies: {@code fine} where it should be, {@code note} within the outer band alone,
   * {@code stop} beyond it. Null where nothing speaks.
   */
  public static String sign(Target target, Length reading) {
    return target
        .zone(reading)
        .map(
            zone ->
                switch (zone) {
                  case IN_INNER -> "fine";
                  case IN_OUTER -> target.inner() == null ? "fine" : "note";
                  case BEYOND -> "stop";
                })
        .orElse(null);
  }

  private static Band shown(Band band, Length otherwise) {
    if (band == null) {
      return Band.around(otherwise == null ? Length.ZERO : otherwise, ALONE);
    }
    long quarter = Math.max(1, (band.high().units() - band.low().units()) / 4);
    return band.widenedBy(new Length(quarter));
  }

  private static double percent(Band shown, Length figure) {
    double span = shown.high().units() - shown.low().units();
    double at = 100 * (figure.units() - shown.low().units()) / span;
    return Math.round(10 * Math.max(EDGE_PERCENT, Math.min(100 - EDGE_PERCENT, at))) / 10.0;
  }

  private static String words(Band band, boolean signed) {
    return band == null ? null : words(band.low(), signed) + " to " + words(band.high(), signed);
  }

  private static String words(Length length, boolean signed) {
    return signed ? signed(length) : LengthText.both(length);
  }

  /**
   * A signed quantity, such as tiller, in both units: {@code +3/16 in · +4 mm}; what rounds to
   * nothing in a unit has no sign there.
   */
  public static String signed(Length length) {
    return plus(length, LengthText.inches(length)) + " · " + plus(length, mm(length));
  }

  private static String plus(Length length, String shown) {
    return length.units() > 0 && !shown.startsWith("0 ") ? "+" + shown : shown;
  }

  private static String mm(Length length) {
    String both = LengthText.both(length);
    return both.substring(both.indexOf("· ") + 2);
  }
}
