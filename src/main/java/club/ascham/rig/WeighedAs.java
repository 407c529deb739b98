package club.ascham.rig;

import club.ascham.form.Typed;
import java.util.Locale;

/** A reading of the bow scale as someone typed it: AMO draw in inches, and pounds. */
public record WeighedAs(double drawIn, double forceLb) {
  private static final double LEAST_DRAW_IN = 14;
  private static final double MOST_DRAW_IN = 36;
  private static final double LEAST_LB = 2;
  private static final double MOST_LB = 100;

  /** Ask {@code typed.sound()} before using it. */
  public static WeighedAs parse(Typed typed) {
    Double draw = typed.decimal("drawIn", LEAST_DRAW_IN, MOST_DRAW_IN);
    Double force = typed.decimal("forceLb", LEAST_LB, MOST_LB);
    if (draw == null) {
      typed.fault("drawIn", "How far it was drawn, please.");
    }
    if (force == null) {
      typed.fault("forceLb", "What the scale showed, please.");
    }
    return new WeighedAs(draw == null ? 0 : draw, force == null ? 0 : force);
  }

  public String said() {
    return "Weighed: " + onTheScale() + " on the bow scale.";
  }

  /** {@code 26.5 lb at 28 in}. */
  String onTheScale() {
    return plain(forceLb) + " lb at " + plain(drawIn) + " in";
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? Long.toString((long) number)
        : String.format(Locale.ROOT, "%.2f", number).replaceAll("0$", "");
  }
}
