package club.ascham.drawing;

import club.ascham.bow.Build;
import club.ascham.drawing.SideView.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of a recurve bow seen from the side: braced as it stands, unstrung faintly and drawn
 * thinly. Bow length, riser length, brace and both tiller distances are to scale, and the limbs
 * stand as elastic limbs do; the thickness of the parts and the shape of the grip are drawn to be
 * seen.
 *
 * @param riserIn length of the riser, or of the stiff middle of a one-piece bow
 * @param stringIn from tip to tip of the strung bow, where no limb could be reckoned
 * @param braceIn from the string to the throat of the grip
 * @param upperIn from the string to the upper limb where it leaves the riser; likewise the lower
 * @param shape empty where no elastic limbs stand so: then plain limbs are drawn, braced only
 */
record BowOutline(
    Build build,
    double riserIn,
    double stringIn,
    double braceIn,
    double upperIn,
    double lowerIn,
    Optional<BowShape> shape) {
  /** Where the arrow lies, above the throat of the grip. */
  static final double ARROW_ALONG = 2.6;

  private static final double BUTT_IN = 2.4;
  private static final double LEAVES_AT = 0.16;

  /** Of the solved points, so many are drawn: a smooth curve goes through them. */
  private static final int EVERY = 5;

  /** Thickness of a limb at its root and its tip. */
  private static final double THICK_IN = 0.62;

  private static final double THIN_IN = 0.3;

  /** One line of the drawing: the class it is drawn in, and its path. */
  record Stroke(String kind, String path) {}

  List<Stroke> strokes(SideView view) {
    List<Stroke> strokes = new ArrayList<>();
    shape.ifPresent(
        solved -> {
          for (BowShape.Half half : List.of(solved.upper(), solved.lower())) {
            strokes.add(new Stroke("faint", curve(view, half.unstrung())));
            strokes.add(new Stroke("thin", curve(view, half.drawn())));
          }
          strokes.add(
              new Stroke(
                  "thin",
                  view.move(solved.upper().drawn().leaves())
                      + view.line(solved.nock())
                      + view.line(solved.lower().drawn().leaves())));
        });
    BowShape.Limb upper = shape.map(solved -> solved.upper().braced()).orElse(plain(true));
    BowShape.Limb lower = shape.map(solved -> solved.lower().braced()).orElse(plain(false));
    strokes.add(new Stroke("string", view.move(upper.leaves()) + view.line(lower.leaves())));
    strokes.add(new Stroke("fill", build == Build.ONE_PIECE ? handle(view) : riser(view)));
    strokes.add(new Stroke("fill", limb(view, upper, true)));
    strokes.add(new Stroke("fill", limb(view, lower, false)));
    if (build != Build.ONE_PIECE) {
      strokes.add(new Stroke("fill", bolt(view, true)));
      strokes.add(new Stroke("fill", bolt(view, false)));
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

  private BowShape.Limb plain(boolean upper) {
    Point end = new Point(along(upper, halfRiserIn()), out(upper));
    Point tip = new Point(along(upper, stringIn / 2), 0);
    Point bulge = end.between(tip, 0.5).plus(0, out(upper) * 0.12);
    return new BowShape.Limb(List.of(end, bulge, tip), 2);
  }

  private static List<Point> some(BowShape.Limb limb) {
    List<Point> all = limb.belly();
    List<Point> some = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (i == 0 || i == all.size() - 1 || all.size() <= EVERY || i % EVERY == 1) {
        some.add(all.get(i));
      }
    }
    return some;
  }

  private static String curve(SideView view, BowShape.Limb limb) {
    Point[] points = some(limb).toArray(Point[]::new);
    return view.move(points[0]) + view.through(points);
  }

  /** Belly out to the tip, and the back home again. */
  private String limb(SideView view, BowShape.Limb limb, boolean upper) {
    List<Point> belly = some(limb);
    List<Point> back = new ArrayList<>();
    int last = belly.size() - 1;
    for (int i = last; i >= 0; i--) {
      Point before = belly.get(Math.max(0, i - 1));
      Point after = belly.get(Math.min(last, i + 1));
      double along = after.along() - before.along();
      double out = after.out() - before.out();
      double thick = (THICK_IN - (THICK_IN - THIN_IN) * i / last) / Math.hypot(along, out);
      double side = upper ? 1 : -1;
      back.add(belly.get(i).plus(-side * out * thick, side * along * thick));
    }
    if (build != Build.ONE_PIECE) {
      Point butt = belly.get(0).plus(along(upper, -BUTT_IN), BUTT_IN * LEAVES_AT);
      belly.add(0, butt);
      back.add(butt.plus(0, THICK_IN));
    }
    return closed(view, belly.toArray(Point[]::new), back.toArray(Point[]::new));
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
