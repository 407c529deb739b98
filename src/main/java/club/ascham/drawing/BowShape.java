package club.ascham.drawing;

import club.ascham.drawing.SideView.Point;
import club.ascham.mechanics.CommonRecurve;
import club.ascham.mechanics.ElasticBow;
import club.ascham.mechanics.ElasticLimb;
import club.ascham.mechanics.OutOfDomain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The limbs of one rig as elastic limbs stand: unstrung, braced and drawn. The riser's ends stand
 * where both tiller distances were measured, each limb leaves its end so that the bow's own string
 * reaches it, and the limbs' stiffness is in the ratio that lets one string hold both.
 *
 * @param nock the middle of the drawn string
 */
record BowShape(Half upper, Half lower, Point nock) {
  /**
   * At which a limb leaves the riser's end, toward the string: judged, for a string of its length.
   */
  private static final double LEAVES_AT_RAD = 0.1;

  private static final int KEPT = 256;

  /** Shapes that were asked for lately. */
  private static final Map<Wish, Optional<BowShape>> SHAPES =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wish, Optional<BowShape>> eldest) {
          return size() > KEPT;
        }
      };

  /** A limb in one state, from the riser's end to its tip; the string leaves it before a point. */
  record Limb(List<Point> belly, int leavesAt) {
    Point leaves() {
      return belly.get(Math.min(leavesAt, belly.size() - 1));
    }
  }

  /** One limb in its three states. */
  record Half(Limb unstrung, Limb braced, Limb drawn) {}

  /**
   * What is to be drawn, in inches.
   *
   * @param upperIn from the string to the riser's end, and {@code lowerIn}
   * @param drawIn from the throat of the grip
   */
  record Wish(
      double bowIn,
      double riserIn,
      double braceIn,
      double upperIn,
      double lowerIn,
      double drawIn) {}

  /** Empty where no bow of elastic limbs stands so. */
  static Optional<BowShape> of(Wish wish) {
    synchronized (SHAPES) {
      Optional<BowShape> kept = SHAPES.get(wish);
      if (kept != null) {
        return kept;
      }
    }
    Optional<BowShape> shape;
    try {
      shape = Optional.of(solved(wish));
    } catch (OutOfDomain noSuchBow) {
      shape = Optional.empty();
    }
    synchronized (SHAPES) {
      SHAPES.put(wish, shape);
    }
    return shape;
  }

  private static BowShape solved(Wish wish) {
    ElasticLimb.Line string = new ElasticLimb.Line(wish.braceIn(), 0, 0);
    ElasticLimb upper = limb(wish, wish.upperIn());
    ElasticLimb lower = limb(wish, wish.lowerIn());
    // At one shape the tension grows with the stiffness, and one string has one tension.
    ElasticBow bow =
        new ElasticBow(
            upper,
            lower.stiffer(upper.against(string).tensionLb() / lower.against(string).tensionLb()));
    ElasticBow.Braced braced = bow.bracedAt(wish.braceIn());
    ElasticBow.Drawn drawn = bow.drawn(braced, wish.drawIn());
    return new BowShape(
        new Half(
            limb(wish, true, bow.upper().unstrung()),
            limb(wish, true, braced.upper()),
            limb(wish, true, drawn.upper())),
        new Half(
            limb(wish, false, bow.lower().unstrung()),
            limb(wish, false, braced.lower()),
            limb(wish, false, drawn.lower())),
        new Point(0, wish.braceIn() - wish.drawIn()));
  }

  private static ElasticLimb limb(Wish wish, double outIn) {
    return CommonRecurve.limb(wish.bowIn(), wish.riserIn(), wish.braceIn() - outIn, LEAVES_AT_RAD);
  }

  private static Limb limb(Wish wish, boolean upper, ElasticLimb.Shape shape) {
    double up = upper ? 1 : -1;
    List<Point> belly = new ArrayList<>();
    belly.add(new Point(up * wish.riserIn() / 2, upper ? wish.upperIn() : wish.lowerIn()));
    for (int i = 0; i < shape.xs().length; i++) {
      belly.add(new Point(up * shape.ys()[i], wish.braceIn() - shape.xs()[i]));
    }
    return new Limb(List.copyOf(belly), 1 + shape.leftAt());
  }
}
