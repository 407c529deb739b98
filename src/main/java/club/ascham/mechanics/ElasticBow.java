package club.ascham.mechanics;

import club.ascham.mechanics.ElasticLimb.Line;
import club.ascham.mechanics.ElasticLimb.Shape;
import java.util.function.DoubleUnaryOperator;

/**
 * A bow of two elastic limbs, alike or not, and an inextensible string.
 *
 * @param upper with y counted upward from the draw axis
 * @param lower likewise, counted downward
 */
public record ElasticBow(ElasticLimb upper, ElasticLimb lower) {
  private static final double TOLERANCE_IN = 1e-10;
  private static final double MOST_LEAN_RAD = 0.1;

  /** From the lowest brace at which both limbs are bent at all. */
  private static final double LEAST_BENT_IN = 0.05;

  /** Where most bows stand braced, above that. */
  private static final double USUAL_ABOVE_LOWEST_IN = 6;

  /**
   * The strung bow.
   *
   * @param stringIn length of the string from limb end to limb end
   * @param leanRad of the string toward the upper limb's archer's side; 0 where the limbs are alike
   * @param braceIn of the string's line from x = 0, on the draw axis
   */
  public record Braced(double stringIn, double leanRad, double braceIn, Shape upper, Shape lower) {
    /** Distance, square to the string, of a point on the riser line at this height. */
    public double distanceIn(double xIn, double yIn) {
      return new Line(braceIn, 0, leanRad).beyond(xIn, yIn);
    }

    /** Upper minus lower distance, both from points so far from the draw axis. */
    public double tillerIn(double xIn, double awayIn) {
      return distanceIn(xIn, awayIn) - distanceIn(xIn, -awayIn);
    }

    public double tensionLb() {
      return upper.tensionLb();
    }
  }

  /**
   * The bow at a draw.
   *
   * @param forceLb on the fingers, along the draw axis
   * @param energyInLb stored between brace and this draw
   */
  public record Drawn(double drawIn, double forceLb, double energyInLb, Shape upper, Shape lower) {}

  /** Two limbs alike. */
  public static ElasticBow symmetric(ElasticLimb limb) {
    return new ElasticBow(limb, limb);
  }

  /** The bow with both limbs so many times as stiff: every force and energy grows with it. */
  public ElasticBow stiffer(double factor) {
    return upper == lower
        ? symmetric(upper.stiffer(factor))
        : new ElasticBow(upper.stiffer(factor), lower.stiffer(factor));
  }

  /**
   * The string that braces the bow so high, with the line of a string between two unlike limbs
   * leaning so that both pull it alike.
   *
   * @throws OutOfDomain where the limbs would be slack, or can't be bent so far
   */
  public Braced bracedAt(double braceIn) {
    Domain.finite("braceIn", braceIn);
    if (braceIn <= Math.max(lowestBraceIn(upper), lowestBraceIn(lower))) {
      throw new OutOfDomain("braceIn", "The string would lie against the limbs: too low a brace.");
    }
    double tension = tension(upper, braceIn);
    if (upper == lower) {
      return braced(braceIn, 0, tension, "braceIn");
    }
    Bend above = new Bend(upper);
    Bend below = new Bend(lower);
    double[] unknowns = {tension, 0};
    boolean solved =
        new Newton(TOLERANCE_IN, 30, 0.03)
            .solve(
                (u, out) -> {
                  above.under(braceIn, 0, u[1], u[0]);
                  below.under(braceIn, 0, -u[1], u[0]);
                  out[0] = above.gap;
                  out[1] = below.gap;
                },
                unknowns);
    if (!solved || !possible(unknowns[0], unknowns[1])) {
      throw new OutOfDomain("braceIn", "The two limbs are too unlike for one string.");
    }
    return braced(braceIn, unknowns[1], unknowns[0], "braceIn");
  }

  private static boolean possible(double tensionLb, double leanRad) {
    return tensionLb > 0
        && tensionLb < ElasticLimb.MOST_TENSION_LB
        && Math.abs(leanRad) < MOST_LEAN_RAD;
  }

  private static double tension(ElasticLimb limb, double braceIn) {
    try {
      return limb.tensionAgainst(new Line(braceIn, 0, 0));
    } catch (OutOfDomain outside) {
      throw new OutOfDomain("braceIn", outside.getMessage());
    }
  }

  /** Past a right angle to its string a limb's end comes back, and with it the string. */
  private static boolean curled(ElasticLimb limb, Shape shape, double lean) {
    return shape.liftOffIn() >= limb.profile().lengthIn && shape.tipAngleRad() - lean > Math.PI / 2;
  }

  private Braced braced(double braceIn, double lean, double tensionLb, String quantity) {
    Shape above = new Bend(upper).shape(braceIn, 0, lean, tensionLb);
    Shape below = upper == lower ? above : new Bend(lower).shape(braceIn, 0, -lean, tensionLb);
    if (curled(upper, above, lean) || curled(lower, below, -lean)) {
      throw new OutOfDomain(quantity, "The limbs would curl round: no bow is braced so high.");
    }
    return new Braced(above.alongIn() + below.alongIn(), lean, braceIn, above, below);
  }

  /**
   * The bow strung with a string of this length: brace, lean and tension at once.
   *
   * @throws OutOfDomain where the string is so long that the limbs stay slack, or too short to be
   *     put on
   */
  public Braced strung(double stringIn) {
    Domain.positive("stringIn", stringIn);
    boolean alike = upper == lower;
    Bend above = new Bend(upper);
    Bend below = alike ? above : new Bend(lower);
    Newton.Equations equations =
        (u, out) -> {
          double lean = alike ? 0 : u[2];
          above.under(u[0], 0, lean, u[1]);
          out[0] = above.gap;
          double along = above.alongIn;
          if (!alike) {
            below.under(u[0], 0, -lean, u[1]);
            out[2] = below.gap;
          }
          out[1] = along + below.alongIn - stringIn;
        };
    double[] unknowns = alike ? new double[2] : new double[3];
    Newton newton = alike ? new Newton(TOLERANCE_IN, 2, 30) : new Newton(TOLERANCE_IN, 2, 30, 0.03);
    double low = Math.max(lowestBraceIn(upper), lowestBraceIn(lower)) + LEAST_BENT_IN;
    if (!from(low + USUAL_ABOVE_LOWEST_IN, low, newton, equations, unknowns)
        && !from(near(stringIn, low), low, newton, equations, unknowns)) {
      throw new OutOfDomain("stringIn", "No state of the bow was found with such a string.");
    }
    return braced(unknowns[0], alike ? 0 : unknowns[2], unknowns[1], "stringIn");
  }

  private boolean from(
      double braceIn,
      double lowestIn,
      Newton newton,
      Newton.Equations equations,
      double[] unknowns) {
    try {
      Braced start = bracedAt(braceIn);
      unknowns[0] = braceIn;
      unknowns[1] = start.tensionLb();
      if (unknowns.length > 2) {
        unknowns[2] = start.leanRad();
      }
    } catch (OutOfDomain unbendable) {
      return false;
    }
    // With the string on the wrong side of the unstrung limbs the equations have solutions too.
    return newton.solve(equations, unknowns)
        && unknowns[0] > lowestIn
        && possible(unknowns[1], unknowns.length > 2 ? unknowns[2] : 0);
  }

  /** A brace near that of this string, from the lowest upwards: a shorter string braces higher. */
  private double near(double stringIn, double low) {
    if (halfAt(upper, low) + halfAt(lower, low) <= stringIn) {
      throw new OutOfDomain(
          "stringIn", "Such a string is too long for this bow: the limbs would stay slack.");
    }
    double brace = low;
    while (halfAt(upper, brace + 1) + halfAt(lower, brace + 1) > stringIn) {
      brace += 1;
    }
    return brace + 0.5;
  }

  private static double halfAt(ElasticLimb limb, double braceIn) {
    try {
      Bend bend = new Bend(limb);
      bend.under(braceIn, 0, 0, limb.tensionAgainst(new Line(braceIn, 0, 0)));
      return bend.alongIn;
    } catch (OutOfDomain outside) {
      throw new OutOfDomain("stringIn", "Such a string is too short for this bow.");
    }
  }

  /** Where a string that is parallel to the riser line just touches the unstrung limb. */
  private static double lowestBraceIn(ElasticLimb limb) {
    double farthest = limb.rootXIn();
    for (double x : limb.unstrung().xs()) {
      farthest = Math.max(farthest, x);
    }
    return farthest;
  }

  /**
   * The bow drawn with the nock on the draw axis, where the braced string crosses it: each half of
   * the string keeps its length, and the archer's hands take up what two unlike limbs pull across
   * the axis.
   *
   * @param drawIn of the nock from x = 0
   * @throws OutOfDomain where string and limbs don't reach so far
   */
  public Drawn drawn(Braced braced, double drawIn) {
    return drawing(braced).to(drawIn);
  }

  /** The bow about to be drawn, for several draws in rising order, each found from the last. */
  public Drawing drawing(Braced braced) {
    return new Drawing(braced);
  }

  /** A bow on its way from brace to full draw. */
  public final class Drawing {
    private final Braced braced;
    private final LimbDraw above;
    private final LimbDraw below;
    private double lastIn;

    private Drawing(Braced braced) {
      this.braced = braced;
      this.above = new LimbDraw(upper, braced.braceIn(), braced.leanRad(), braced.upper());
      this.below =
          upper == lower
              ? above
              : new LimbDraw(lower, braced.braceIn(), -braced.leanRad(), braced.lower());
      this.lastIn = braced.braceIn() - 1e-9;
    }

    /**
     * @throws OutOfDomain where string and limbs don't reach so far, or the bow was drawn farther
     *     before
     */
    public Drawn to(double drawIn) {
      if (!(drawIn >= lastIn)) {
        throw new OutOfDomain("drawsIn", "A draw lies beyond the braced string.");
      }
      lastIn = drawIn;
      above.to(drawIn);
      if (below != above) {
        below.to(drawIn);
      }
      Shape up = above.shape();
      Shape down = below == above ? up : below.shape();
      return new Drawn(
          drawIn,
          above.forceLb() + below.forceLb(),
          up.energyInLb()
              - braced.upper().energyInLb()
              + down.energyInLb()
              - braced.lower().energyInLb(),
          up,
          down);
    }
  }

  /** W(s) that falls evenly from W at the root to this part of it at the tip. */
  public static DoubleUnaryOperator linearTaper(double rootLbIn2, double lengthIn, double tipPart) {
    return s -> rootLbIn2 * (1 - (1 - tipPart) * s / lengthIn);
  }
}
