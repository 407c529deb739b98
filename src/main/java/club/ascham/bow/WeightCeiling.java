package club.ascham.bow;

import java.util.Locale;

/**
 * How heavy a bow may be on the fingers of one archer, in lbf. The published figures by age are
 * maxima: of a beginners' course at its start and by its end.
 *
 * <p>For a beginner the start figure is the ceiling without a reason, and the end figure the most
 * that a reason is meant for; a junior beginner gets nothing over the end figure and {@link
 * #BEYOND_LB}. Improvers and experienced archers are advised one and two steps above the end
 * figure, and are refused nothing. A junior is held to the high end of the estimate, a grown-up to
 * the likeliest value.
 *
 * <p>For a beginner {@link #UNDER_LB} under the start figure is looked for.
 *
 * @param freeLb up to it nothing is asked
 * @param mostLb the most that is meant to go out with a reason
 * @param refusedAboveLb above it nothing goes out; null: a coach decides
 * @param junior whether the high end of the estimate counts
 */
public record WeightCeiling(double freeLb, double mostLb, Double refusedAboveLb, boolean junior) {
  /** The figures by age, as they are shown. */
  public static final String BASIS =
      "Most weight at the start and by the end of a beginners' course, by age: " + InPrint.COURSE;

  /** A bow this much under the ceiling is looked for first, since marks err: judged. */
  static final int UNDER_LB = 2;

  /** So much above the end of a course no junior beginner is given a bow: judged. */
  static final int BEYOND_LB = 4;

  /** The step by which limbs are changed for heavier ones: 2 to 4 lb on several coaches' pages. */
  static final int STEP_LB = 4;

  private static final double ROUNDING_LB = 1e-9;

  /**
   * @param experience null: not known, and then a beginner's
   */
  public static WeightCeiling of(AgeBand age, Experience experience) {
    if (experience == null || experience == Experience.BEGINNER) {
      return new WeightCeiling(
          age.startLb(),
          age.endLb(),
          age.junior() ? (double) (age.endLb() + BEYOND_LB) : null,
          age.junior());
    }
    double advised = age.endLb() + STEP_LB * experience.ordinal();
    return new WeightCeiling(advised, advised, null, age.junior());
  }

  /** The value that this archer is held to. */
  double heldTo(WeightOnFingers weight) {
    return junior ? weight.highLb() : weight.lb();
  }

  public Heaviness of(WeightOnFingers weight) {
    double lb = heldTo(weight) - ROUNDING_LB;
    if (refusedAboveLb != null && lb > refusedAboveLb) {
      return Heaviness.REFUSED;
    }
    return lb > freeLb ? Heaviness.WITH_A_COACH : Heaviness.LIGHT_ENOUGH;
  }

  /** What speaks against this weight, in a sentence or two; empty: nothing. */
  public String against(WeightOnFingers weight) {
    return switch (of(weight)) {
      case LIGHT_ENOUGH -> "";
      case WITH_A_COACH -> "Too heavy: " + told(weight) + ", where " + free() + beyond(weight);
      case REFUSED ->
          "Too heavy: "
              + told(weight)
              + ", and a junior beginner of this age gets nothing over "
              + pounds(refusedAboveLb)
              + ". No reason changes that: choose lighter limbs, or weigh it on a bow scale if the"
              + " estimate seems wrong.";
    };
  }

  private String told(WeightOnFingers weight) {
    return junior
        ? String.format(
            Locale.ROOT,
            "it may weigh %.1f lb on these fingers (about %.1f; a junior is held to the high end)",
            weight.highLb(),
            weight.lb())
        : String.format(Locale.ROOT, "about %.1f lb on these fingers", weight.lb());
  }

  private String free() {
    return mostLb > freeLb
        ? pounds(freeLb) + " is the most at the start of a course."
        : pounds(freeLb) + " is the most advised.";
  }

  private String beyond(WeightOnFingers weight) {
    if (mostLb <= freeLb) {
      return "";
    }
    return heldTo(weight) - ROUNDING_LB > mostLb
        ? " It is more than the " + pounds(mostLb) + " that a course ends with, too."
        : " By its end it is " + pounds(mostLb) + ".";
  }

  private static String pounds(double lb) {
    return String.format(Locale.ROOT, "%.0f lb", lb);
  }
}
