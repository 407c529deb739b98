package club.ascham.rig;

import club.ascham.bow.Build;
import club.ascham.rig.SideView.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a strung recurve bow seen from the side. Bow length, riser length, brace and both
 * tiller distances are to scale; the thickness of the parts and the shape of the grip are drawn to
 * be seen.
 *
 * @param riserIn length of the riser, or of the stiff middle of a one-piece bow
 * @param stringIn from tip to tip of the strung bow
 * @param braceIn from the string to the throat of the grip
 * @param upperIn from the string to the upper limb where it leaves the riser; likewise the lower
 */
record BowOutline(
    Build build, double riserIn, double stringIn, double braceIn, double upperIn, double lowerIn) {
  /** Where the arrow lies, above the throat of the grip. */
  static final double ARROW_ALONG = 2.6;

  private static final double BUTT_IN = 2.4;
  private static final double LEAVES_AT = 0.16;
  private static final double RECURVE_IN = 4.2;
  private static final double TIP_OUT = 1.1;

  /** One line of the drawing: the class it is drawn in, and its path. */
  record Stroke(String kind, String path) {}

  List<Stroke> strokes(SideView view) {
    List<Stroke> strokes = new ArrayList<>();
    strokes.add(new Stroke("string", string(view)));
    strokes.add(new Stroke("fill", build == Build.ONE_PIECE ? handle(view) : riser(view)));
    for (boolean upper : new boolean[] {true, false}) {
      strokes.add(new Stroke("fill", limb(view, upper)));
      if (build != Build.ONE_PIECE) {
        strokes.add(new Stroke("fill", bolt(view, upper)));
      }
    }
    return List.copyOf(strokes);
  }

  /** Half of the stiff middle: where the limbs begin. */
  double halfRiserIn() {
    return riserIn / 2;
  }

  private double out(boolean upper) {
    return upper ? upperIn : lowerIn;
  }

  /** Mirrors a length along the bow for the lower half. */
  private static double along(boolean upper, double in) {
    return upper ? in : -in;
  }

  private Point touches(boolean upper) {
    return new Point(along(upper, stringIn / 2 - RECURVE_IN), 0);
  }

  private Point tip(boolean upper) {
    return new Point(along(upper, stringIn / 2), TIP_OUT);
  }

  private String string(SideView view) {
    Point top = tip(true).plus(-0.4, -0.26);
    Point bottom = tip(false).plus(0.4, -0.26);
    return view.move(top)
        + view.curve(top.plus(-1, -0.5), touches(true).plus(1.6, -0.06), touches(true))
        + view.line(touches(false))
        + view.curve(touches(false).plus(-1.6, -0.06), bottom.plus(1, -0.5), bottom);
  }

  /** Belly out to the tip, and the back home again. */
  private String limb(SideView view, boolean upper) {
    double end = halfRiserIn();
    double length = stringIn / 2 - RECURVE_IN - end;
    double butt = build == Build.ONE_PIECE ? 0 : BUTT_IN;
    double up = upper ? 1 : -1;
    Point leaves = new Point(along(upper, end), out(upper));
    Point buttEnd = leaves.plus(-up * butt, butt * LEAVES_AT);
    Point handle = leaves.plus(up * 0.52 * length, -0.52 * length * LEAVES_AT);
    Point touch = touches(upper);
    Point nearTouch = touch.plus(-up * 0.36 * length, 0.06 * out(upper));
    Point tip = tip(upper);
    double thick = build == Build.ONE_PIECE ? 0.72 : 0.62;
    double thin = 0.34;
    return view.move(buttEnd)
        + view.line(leaves)
        + view.curve(handle, nearTouch, touch)
        + view.curve(touch.plus(up * 1.6, -0.05), tip.plus(-up, -0.55), tip)
        + view.line(tip.plus(-up * 0.14, 0.3))
        + view.curve(
            tip.plus(-up * 1.2, -0.26), touch.plus(up * 1.5, thin - 0.05), touch.plus(0, thin))
        + view.curve(
            nearTouch.plus(0, thin + 0.1), handle.plus(up * 0.1, thick), leaves.plus(0, thick))
        + view.line(buttEnd.plus(0, thick))
        + "Z";
  }

  /** A bolt through the butt of a limb, its head towards the target. */
  private String bolt(SideView view, boolean upper) {
    double up = upper ? 1 : -1;
    Point foot = new Point(along(upper, halfRiserIn() - 1.5), out(upper) + 1.5 * LEAVES_AT + 0.62);
    double head = build == Build.SCREW_IN ? 0.5 : 0.34;
    return view.move(foot.plus(-up * head, 0))
        + view.line(foot.plus(-up * head, 0.45))
        + view.line(foot.plus(up * head, 0.45))
        + view.line(foot.plus(up * head, 0))
        + "Z";
  }

  private String riser(SideView view) {
    double h = halfRiserIn();
    Point upperEnd = new Point(h, upperIn);
    Point lowerEnd = new Point(-h, lowerIn);
    Point[] belly = {
      upperEnd.plus(0, -0.2),
      upperEnd.plus(-1.1, -0.95),
      upperEnd.plus(-1.1, -0.95).between(new Point(2.4, braceIn + 0.35), 0.55),
      new Point(2.3, braceIn + 0.3),
      new Point(1.25, braceIn - 0.3),
      new Point(0, braceIn),
      new Point(-1.5, braceIn - 0.3),
      new Point(-2.9, braceIn - 0.8),
      new Point(-3.9, braceIn - 0.1),
      lowerEnd.plus(1.1, -0.95).between(new Point(-3.9, braceIn + 0.35), 0.55),
      lowerEnd.plus(1.1, -0.95),
      lowerEnd.plus(0, -0.2)
    };
    Point[] back = {
      lowerEnd,
      lowerEnd.plus(BUTT_IN, BUTT_IN * LEAVES_AT),
      lowerEnd.plus(BUTT_IN + 0.5, 0.9).between(new Point(-2.4, braceIn + 1.7), 0.5),
      new Point(-2.4, braceIn + 1.75),
      new Point(0, braceIn + 1.6),
      new Point(2.4, braceIn + 1.75),
      upperEnd.plus(-BUTT_IN - 0.5, 0.9).between(new Point(2.4, braceIn + 1.7), 0.5),
      upperEnd.plus(-BUTT_IN, BUTT_IN * LEAVES_AT),
      upperEnd
    };
    return closed(view, belly, back);
  }

  private String handle(SideView view) {
    double h = halfRiserIn();
    Point upperEnd = new Point(h, upperIn);
    Point lowerEnd = new Point(-h, lowerIn);
    Point[] belly = {
      upperEnd,
      upperEnd.between(new Point(2.3, braceIn + 0.15), 0.6),
      new Point(2.2, braceIn + 0.15),
      new Point(1.2, braceIn - 0.25),
      new Point(0, braceIn),
      new Point(-1.4, braceIn - 0.25),
      new Point(-2.5, braceIn - 0.5),
      new Point(-3.3, braceIn - 0.1),
      lowerEnd.between(new Point(-3.3, braceIn), 0.5),
      lowerEnd
    };
    Point[] back = {
      lowerEnd.plus(0, 0.72),
      lowerEnd.plus(0, 0.72).between(new Point(-2, braceIn + 1.2), 0.55),
      new Point(-2, braceIn + 1.25),
      new Point(0, braceIn + 1.2),
      new Point(2, braceIn + 1.25),
      upperEnd.plus(0, 0.72).between(new Point(2, braceIn + 1.2), 0.55),
      upperEnd.plus(0, 0.72)
    };
    return closed(view, belly, back);
  }

  private static String closed(SideView view, Point[] there, Point[] andBack) {
    return view.move(there[0])
        + view.through(there)
        + view.line(andBack[0])
        + view.through(andBack)
        + "Z";
  }
}
