package club.ascham.bench;

import club.ascham.mechanics.CommonRecurve;
import club.ascham.mechanics.ElasticBow;
import club.ascham.mechanics.ElasticLimb.Shape;
import java.util.Locale;

/**
 * The upper half of a 68 in bow as it was solved, for the page that tells how the bench reckons:
 * unstrung, braced with its 65 in string, and drawn to 28 in. Paths in pixels, the archer at the
 * right.
 */
record HalfBow(
    String unstrung,
    String braced,
    String drawn,
    String bracedString,
    String drawnString,
    String riser,
    String brace) {
  private static final double PIXELS_PER_INCH = 5;
  private static final double THROAT_X = 60;
  private static final double AXIS_Y = 182;
  private static final int EVERY = 2;

  static HalfBow solved() {
    ElasticBow bow = CommonRecurve.of(68, 25);
    ElasticBow.Braced braced = bow.strung(65);
    ElasticBow.Drawn drawn = bow.drawn(braced, 26.25);
    double rootX = bow.upper().rootXIn();
    double rootY = bow.upper().rootYIn();
    return new HalfBow(
        limb(bow.upper().unstrung()),
        limb(braced.upper()),
        limb(drawn.upper()),
        "M" + at(braced.braceIn(), 0) + "L" + leaves(braced.upper()),
        "M" + at(drawn.drawIn(), 0) + "L" + leaves(drawn.upper()),
        "M" + at(0, 0) + "L" + at(0, 4) + "L" + at(rootX, 12.5) + "L" + at(rootX, rootY),
        "M" + at(0, 0) + "L" + at(braced.braceIn(), 0));
  }

  private static String limb(Shape shape) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < shape.xs().length; i += EVERY) {
      path.append(i == 0 ? 'M' : 'L').append(at(shape.xs()[i], shape.ys()[i]));
    }
    return path.toString();
  }

  private static String leaves(Shape shape) {
    return at(shape.xs()[shape.leftAt()], shape.ys()[shape.leftAt()]);
  }

  private static String at(double xIn, double yIn) {
    return String.format(
        Locale.ROOT, "%.1f %.1f", THROAT_X + xIn * PIXELS_PER_INCH, AXIS_Y - yIn * PIXELS_PER_INCH);
  }
}
