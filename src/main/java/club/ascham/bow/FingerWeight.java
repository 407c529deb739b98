package club.ascham.bow;

import club.ascham.bow.Rise.Factor;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The weight on an archer's fingers, from what is marked on the limbs and what a bow scale showed.
 *
 * <p>Each of these is a force at a draw on a riser. The mechanics brings it to the archer's draw:
 * the force rises as that of a common recurve of this length with elastic limbs ({@link Rise}),
 * whose stiffness is scaled by one factor. Draws are AMO draws in inches, weights are in lbf.
 *
 * <p>Without a reading the range is that of the mark. Readings are weighed with the mark by Bayes'
 * rule for normal spreads: each by the inverse square of a quarter of its range, so that the range
 * told is two standard deviations either way.
 *
 * <p>A reading belongs to the limbs. One at the archer's own draw owes nothing to the model. Where
 * readings contradict the mark the range grows: a child is held to its high end, and what the scale
 * showed is never averaged away.
 */
public final class FingerWeight {
  /** AMO draw is reckoned this far beyond the pivot point (AMO standard FP-3, 2000). */
  public static final double AMO_BEYOND_PIVOT_IN = 1.75;

  /** Limbs are sold in steps of 2 lb and labelled with the nearest (a coach's page). */
  private static final double MARKING_LB = 1;

  /**
   * What the limb bolts of an adjustable bow make of it, either way: common practice, no source.
   */
  private static final double BOLTS = 0.05;

  /** A club's bow scale, held by hand: judged. */
  private static final double SCALE_LB = 1;

  /** A draw told to a quarter of an inch, at 5 % an inch, and as much for holding still: judged. */
  private static final double SCALE_DRAW = 0.025;

  private static final int USUAL_BOW_IN = 66;

  /** 0.126 to 0.135 of the bow's length in the French federation's table of 2008. */
  private static final double BRACE_OF_BOW = 0.13;

  /** A medium limb adds so much to its riser; a bow of 68 in on one of 25 in. */
  private static final int MEDIUM_LIMBS_IN = 43;

  /** Riser of a bow of which only the length is known, and stiff middle of a one-piece bow. */
  private static final double RISER_OF_BOW = 0.37;

  private static final double MIDDLE_OF_BOW = 0.34;

  private FingerWeight() {}

  /** The AMO draw at which the string stands when the bow is braced: its force there is nothing. */
  public static double zeroIn(Length brace) {
    return brace.inches() + AMO_BEYOND_PIVOT_IN;
  }

  /**
   * The weight on the fingers at a draw, for a bow with medium limbs whose limb bolts can be
   * turned.
   *
   * @param markedLb marked weight
   * @param markedAtIn AMO draw it was marked at
   * @param markedRiserIn riser it was marked on; null: unknown, and then the range reckons both
   *     with this riser and with the usual one
   * @param riserIn this bow's riser; null: unknown, no correction
   * @param drawIn the archer's AMO draw
   * @param zeroIn the AMO draw at which the string stands when braced
   * @throws IllegalArgumentException when the weight is not positive or a draw does not lie beyond
   *     the braced string
   */
  public static WeightOnFingers estimate(
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Integer riserIn,
      double drawIn,
      double zeroIn) {
    double braceIn = zeroIn - AMO_BEYOND_PIVOT_IN;
    double bowIn =
        riserIn != null ? riserIn + MEDIUM_LIMBS_IN : 2 * Math.rint(braceIn / BRACE_OF_BOW / 2);
    double riser = riserIn != null ? riserIn : Math.rint(RISER_OF_BOW * bowIn);
    return new Marked(
            markedLb,
            markedAtIn,
            RiserChange.of(markedRiserIn, riserIn, bowIn, braceIn),
            true,
            List.of(),
            Rise.of(bowIn, riser, zeroIn),
            riserIn,
            bowIn)
        .at(drawIn);
  }

  /**
   * The weight of this rig on the fingers of an archer. Without a measured brace the maker's range,
   * else about an eighth of the bow's length, stands in for it.
   *
   * @param setUp null: not set up yet
   * @param drawIn the archer's AMO draw in inches
   * @throws IllegalArgumentException when the draw does not lie beyond the braced string
   */
  public static WeightOnFingers of(RigSpec rig, SetUpFigures setUp, double drawIn) {
    WeightOnFingers weight = marked(rig, setUp).at(drawIn);
    if (setUp != null && setUp.brace() != null) {
      return weight;
    }
    return new WeightOnFingers(
        weight.lb(),
        weight.lowLb(),
        weight.highLb(),
        weight.readings(),
        weight.basis() + " The brace height is not measured yet; a usual one is assumed.");
  }

  private static Marked marked(RigSpec rig, SetUpFigures setUp) {
    double zeroIn = zeroIn(brace(rig, setUp));
    double braceIn = zeroIn - AMO_BEYOND_PIVOT_IN;
    if (rig.onePiece() != null) {
      OnePieceSpec bow = rig.onePiece();
      return new Marked(
          bow.markedLb(),
          bow.markedAtIn(),
          RiserChange.NONE,
          false,
          bow.weighed(),
          Rise.of(bow.bowLengthIn(), stiffMiddleIn(bow.bowLengthIn()), zeroIn),
          null,
          bow.bowLengthIn());
    }
    LimbsSpec limbs = rig.limbs();
    int riserIn = rig.riser().lengthIn();
    double bowIn = rig.bowLengthIn().orElse(riserIn + MEDIUM_LIMBS_IN);
    boolean bolts = rig.tillerAdjusts();
    return new Marked(
        limbs.markedLb(),
        limbs.markedAtIn(),
        // Screw-in limbs belong to one riser and are marked on it.
        bolts || limbs.markedRiserIn() != null
            ? RiserChange.of(limbs.markedRiserIn(), riserIn, bowIn, braceIn)
            : RiserChange.NONE,
        bolts,
        limbs.weighed(),
        Rise.of(bowIn, riserIn, zeroIn),
        riserIn,
        bowIn);
  }

  /** Length of what does not bend in the middle of a one-piece bow: judged. */
  public static double stiffMiddleIn(int bowLengthIn) {
    return MIDDLE_OF_BOW * bowLengthIn;
  }

  /** As {@link #of}; empty where the figures do not let it reckon. */
  public static Optional<WeightOnFingers> reckoned(RigSpec rig, SetUpFigures setUp, double drawIn) {
    return reckons(rig, setUp, drawIn) ? Optional.of(of(rig, setUp, drawIn)) : Optional.empty();
  }

  /** What its mark means at least at this draw. */
  static double leastByMark(RigSpec rig, SetUpFigures setUp, double drawIn) {
    return marked(rig, setUp).told(drawIn).low();
  }

  /** What a reading means at least at this draw on this riser, taken as it was read. */
  static double leastByReading(
      RigSpec rig, SetUpFigures setUp, ScaleReading reading, double drawIn) {
    Marked known = marked(rig, setUp);
    return reading.drawIn() > known.rise().zeroIn()
        ? reading.forceLb()
            * known.over(reading).low()
            * known.rise().from(reading.drawIn(), drawIn).low()
        : 0;
  }

  /** Whether {@link #of} can reckon this rig's weight at this draw, rather than refuse. */
  static boolean reckons(RigSpec rig, SetUpFigures setUp, double drawIn) {
    double zeroIn = zeroIn(brace(rig, setUp));
    double markedLb = rig.onePiece() != null ? rig.onePiece().markedLb() : rig.limbs().markedLb();
    double markedAtIn =
        rig.onePiece() != null ? rig.onePiece().markedAtIn() : rig.limbs().markedAtIn();
    return markedLb > 0 && markedAtIn > zeroIn && drawIn > zeroIn;
  }

  /** Its brace height, else what stands in for it. */
  public static Length brace(RigSpec rig, SetUpFigures setUp) {
    if (setUp != null && setUp.brace() != null) {
      return setUp.brace();
    }
    if (rig.makerBrace() != null) {
      return rig.makerBrace().middle();
    }
    OptionalInt bowIn = rig.bowLengthIn();
    return Length.ofInches(bowIn.orElse(USUAL_BOW_IN) * BRACE_OF_BOW);
  }

  /** What is known of one bow. The range of each is where it may well lie. */
  private record Marked(
      double markedLb,
      double markedAtIn,
      RiserChange change,
      boolean bolts,
      List<ScaleReading> weighed,
      Rise rise,
      Integer riserIn,
      double bowIn) {

    WeightOnFingers at(double drawIn) {
      if (!(markedLb > 0)) {
        throw new IllegalArgumentException("a marked weight is more than nothing");
      }
      if (!(markedAtIn > rise.zeroIn())) {
        throw new IllegalArgumentException("the marked draw lies before the braced string");
      }
      if (!(drawIn > rise.zeroIn())) {
        throw new IllegalArgumentException("the draw lies before the braced string");
      }
      Factor told = told(drawIn);
      List<ScaleReading> heeded =
          weighed.stream().filter(reading -> reading.drawIn() > rise.zeroIn()).toList();
      Factor all = heeded.isEmpty() ? told : together(told, heeded, drawIn);
      return new WeightOnFingers(
          all.likely(), all.low(), all.high(), heeded.size(), basis(drawIn, heeded.size()));
    }

    /** What the mark says at this draw. */
    Factor told(double drawIn) {
      Factor part = rise.from(markedAtIn, drawIn);
      double setting = bolts ? BOLTS : 0;
      return new Factor(
          markedLb * change.factor().likely() * part.likely(),
          Math.max(0, markedLb - MARKING_LB) * change.factor().low() * part.low() * (1 - setting),
          (markedLb + MARKING_LB) * change.factor().high() * part.high() * (1 + setting));
    }

    /**
     * Each by its spread. Where they contradict each other the spread grows by Birge's ratio (R. T.
     * Birge, The calculation of errors by the method of least squares, Physical Review 40, 1932,
     * pp. 207 to 227; from memory): a mark and a scale that are far apart are not both right, and
     * what lies between them is no better known than either.
     */
    private Factor together(Factor told, List<ScaleReading> heeded, double drawIn) {
      List<Factor> all = new ArrayList<>();
      all.add(told);
      heeded.forEach(reading -> all.add(brought(reading, drawIn)));
      double precision = 0;
      double sum = 0;
      for (Factor one : all) {
        precision += 1 / square(sd(one));
        sum += one.likely() / square(sd(one));
      }
      double likely = sum / precision;
      double apart = 0;
      for (Factor one : all) {
        apart += square((one.likely() - likely) / sd(one));
      }
      double birge = Math.max(1, Math.sqrt(apart / (all.size() - 1)));
      double spread = 2 * birge / Math.sqrt(precision);
      return new Factor(likely, Math.max(0, likely - spread), likely + spread);
    }

    private static double sd(Factor one) {
      return (one.high() - one.low()) / 4;
    }

    private static double square(double number) {
      return number * number;
    }

    /** A reading as the force that it means at this draw on this riser. */
    private Factor brought(ScaleReading reading, double drawIn) {
      boolean moved = riserIn != null && !riserIn.equals(reading.riserIn());
      Factor over = over(reading);
      Factor part = rise.from(reading.drawIn(), drawIn);
      double setting = SCALE_DRAW + (moved && bolts ? BOLTS : 0);
      return new Factor(
          reading.forceLb() * over.likely() * part.likely(),
          Math.max(0, reading.forceLb() - SCALE_LB) * over.low() * part.low() * (1 - setting),
          (reading.forceLb() + SCALE_LB) * over.high() * part.high() * (1 + setting));
    }

    /** From the riser of a reading to this one. */
    Factor over(ScaleReading reading) {
      boolean moved =
          riserIn != null && reading.riserIn() != null && !riserIn.equals(reading.riserIn());
      return moved
          ? RiserChange.of(reading.riserIn(), riserIn, bowIn, rise.zeroIn() - AMO_BEYOND_PIVOT_IN)
              .factor()
          : Factor.NONE;
    }

    private String basis(double drawIn, int readings) {
      return String.format(
          Locale.ROOT,
          "%s lb marked at %s in, rising to a draw of %s in %s.%s %s",
          short1(markedLb),
          short1(markedAtIn),
          short1(drawIn),
          rise.isElastic()
              ? "as a common recurve of its length with elastic limbs does"
              : "evenly from the braced string, the old rule: no model of a recurve reaches this"
                  + " bow",
          change.basis(),
          readings == 0
              ? String.format(
                  Locale.ROOT,
                  "The range allows 1 lb for the marking%s%s; only a bow scale tells exactly.",
                  rise.isElastic() ? ", an even rise" : "",
                  bolts ? " and 5 % either way for the limb bolts" : "")
              : String.format(
                  Locale.ROOT,
                  "%s on the bow scale count%s beside the mark, each by its spread (a scale: 1 lb,"
                      + " and 2.5 %% for the draw).",
                  readings == 1 ? "One reading" : readings + " readings",
                  readings == 1 ? "s" : ""));
    }
  }

  private static String short1(double number) {
    return String.format(Locale.ROOT, "%.1f", number).replace(".0", "");
  }
}
