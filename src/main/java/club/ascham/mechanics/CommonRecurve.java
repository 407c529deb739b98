package club.ascham.mechanics;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The recurve bow of the trade by its bow length and riser length, two limbs alike: an assumed
 * geometry, one for all bows. Beyond the riser's end and a stiff butt the limb stands along the
 * riser line, is straight and then evenly recurved, and is stiffer at its root than at its tip.
 *
 * <p>Its figures were found by a search and rounded. What was sought for a bow of 68 in on 65 in of
 * string: a brace of 8 11/16 in and such a tension, slopes and tiller as limbs of other makes would
 * have; and the stored energies of the three bows that Tuyn and Kooi measured. So its agreement
 * with those three is no independent proof; a search without them came within 1.1 % of each. No bow
 * has figures of its own but one factor: so many times as strong is so many times as stiff.
 *
 * <p>At one shape tension grows with stiffness: so a mark scales forces, and nothing is solved
 * anew.
 */
public final class CommonRecurve {
  private static final double LEAST_BOW_IN = 44;
  private static final double MOST_BOW_IN = 76;
  private static final double LEAST_LIMB_IN = 9;
  private static final double MOST_LIMB_IN = 26;

  /** Of the riser's end before the throat of the grip, in a bow of 68 in. */
  private static final double FORWARD_IN = 2.75;

  private static final double FORWARD_OF_BOW_IN = 68;

  /** Of the limb that lies on the riser or is too thick to bend. */
  private static final double BUTT_IN = 2;

  private static final double ROOT_STIFFNESS_LB_IN2 = 5_000;
  private static final double TIP_PART = 0.55;
  private static final double RECURVE_FROM_PART = 0.68;
  private static final double RECURVE_PER_IN = -0.225;
  private static final int MESH = 50;

  private static final double BRACE_STEPS_PER_IN = 8;
  private static final int KEPT = 512;

  /** Curves that were asked for lately: a fleet has few kinds of bow and many readers. */
  private static final Map<Kind, DrawCurve> CURVES =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Kind, DrawCurve> eldest) {
          return size() > KEPT;
        }
      };

  private record Kind(double bowIn, double riserIn, double braceIn) {}

  private CommonRecurve() {}

  /**
   * @param bowIn bow length
   * @param riserIn of the riser, or of the stiff middle of a one-piece bow
   * @throws OutOfDomain for a bow that is not of this kind
   */
  public static ElasticBow of(double bowIn, double riserIn) {
    Domain.within("bowLengthIn", bowIn, LEAST_BOW_IN, MOST_BOW_IN);
    return ElasticBow.symmetric(limb(bowIn, riserIn, FORWARD_IN * bowIn / FORWARD_OF_BOW_IN, 0));
  }

  /**
   * One limb of it, wherever the riser's end stands.
   *
   * @param endForwardIn of the riser's end toward the string, from the point that brace is measured
   *     at
   * @param angleRad at which the limb leaves it, positive toward the string
   */
  public static ElasticLimb limb(
      double bowIn, double riserIn, double endForwardIn, double angleRad) {
    double limb = Domain.finite("riserIn", (bowIn - riserIn) / 2);
    if (limb < LEAST_LIMB_IN || limb > MOST_LIMB_IN) {
      throw new OutOfDomain("riserIn", "No limb makes a bow of that length on such a riser.");
    }
    double bending = limb - BUTT_IN;
    double recurve = RECURVE_FROM_PART * bending;
    LimbProfile profile =
        LimbProfile.of(
            bending,
            ElasticBow.linearTaper(ROOT_STIFFNESS_LB_IN2, bending, TIP_PART),
            s -> s < recurve ? 0 : RECURVE_PER_IN,
            MESH,
            RECURVE_FROM_PART);
    return new ElasticLimb(
        profile,
        endForwardIn + BUTT_IN * Math.sin(angleRad),
        riserIn / 2 + BUTT_IN * Math.cos(angleRad),
        angleRad);
  }

  /**
   * How its force rises with the draw, for the brace nearest to this one by eighths of an inch. A
   * sixteenth of brace bears on the curve by a thousandth.
   *
   * @throws OutOfDomain for a bow that is not of this kind, or can't be braced so
   */
  public static DrawCurve curve(double bowIn, double riserIn, double braceIn) {
    Domain.finite("braceIn", braceIn);
    Kind kind =
        new Kind(bowIn, riserIn, Math.rint(braceIn * BRACE_STEPS_PER_IN) / BRACE_STEPS_PER_IN);
    DrawCurve kept;
    synchronized (CURVES) {
      kept = CURVES.get(kind);
    }
    if (kept != null) {
      return kept;
    }
    DrawCurve curve = DrawCurve.of(of(bowIn, riserIn), kind.braceIn());
    synchronized (CURVES) {
      CURVES.put(kind, curve);
    }
    return curve;
  }
}
