package club.ascham.mechanics;

import java.util.Locale;

/**
 * Which limb bolt, which way and how far brings tiller (upper minus lower distance) to its aim. A
 * bolt turned in brings its limb's distance down. Turning one in and the other out by the same
 * keeps the draw weight, so the work is shared where the bolts have room.
 *
 * <p>Advice never turns its sign over: a bow whose bolts seem to work backwards goes to the
 * workshop, and a response near nothing advises no turn.
 *
 * @param upper turns expected in all; positive: tighten, the bolt goes in
 * @param lower likewise
 * @param firstUpper what to turn before measuring again, never more than a quarter either way
 * @param firstLower likewise
 * @param expectedMm tiller after the first step, likeliest
 * @param lowMm with {@code highMm}: where it lies after the first step, 9 times in 10
 * @param outcome whether anything is turned, and why not
 * @param reached whether the bolts have the room for all of it
 * @param restsOn how many of the bow's own adjustments, in a few words
 * @param basis what the numbers rest on, in sentences
 */
public record BoltReckoning(
    double upper,
    double lower,
    double firstUpper,
    double firstLower,
    double expectedMm,
    double lowMm,
    double highMm,
    Outcome outcome,
    boolean reached,
    String restsOn,
    String basis) {

  /** What is done. */
  public enum Outcome {
    /** It is off by less than a reading can tell, or a step would leave it farther off. */
    LEAVE_IT,
    TURN,
    /** No bolt may be turned the way it would have to be. */
    NO_ROOM,
    /** So far off, a limb is sooner out of its seat. */
    LOOK_FIRST,
    /** This bow's tiller hardly follows its bolts, or goes the wrong way. */
    FIND_OUT_WHY
  }

  /** Before measuring again, whatever the estimate. */
  public static final double MOST_AT_ONCE = 0.25;

  /** Nobody turns a bolt by finer parts than this. */
  private static final double STEP = 0.125;

  /**
   * Tiller a turn of one bolt: no published value. Common practice has 3 to 8 mm; elastic limbs of
   * common geometries have 6 to 9 mm, and a rigid limb that draws like them even the other sign. A
   * judgement that leaves 1 bow in 20 below nothing and 1 in 20 above 15 mm.
   */
  static final Posterior MM_PER_TURN = Posterior.prior(7.5, 4.5);

  /**
   * So little a turn, or less, is no bolt's doing: the workshop looks, and no sign is turned over.
   */
  private static final double HARDLY_MM = 1;

  /** Divided by less than this, one odd reading would ask for many turns. */
  private static final double LEAST_MM = 3;

  private static final String NO_ROOM =
      " No bolt has room that way: the maker's turns or the bolt's own are unknown, or used up."
          + " Other limbs may suit this riser better; a coach or a bowyer says what else.";

  private static final String BRACE_STAYS =
      " Brace hardly moves: both bolts half a turn in lower it by 0.5 to 0.8 mm.";

  /**
   * @param upperOut turns that the upper bolt stands out; null: unknown
   * @param lowerOut likewise
   * @param mostOut turns out that the maker allows; null: unknown, and then no bolt goes out
   * @throws OutOfDomain for what is no bow, or a bolt beyond its maker's turns
   */
  public static BoltReckoning of(
      double tillerMm,
      double targetMm,
      Double upperOut,
      Double lowerOut,
      Double mostOut,
      OwnRecord record) {
    Domain.within("tillerMm", tillerMm, -60, 60);
    Domain.within("targetMm", targetMm, -30, 30);
    within("upperTurnsOut", upperOut, mostOut);
    within("lowerTurnsOut", lowerOut, mostOut);
    Response response = response(record);
    double excess = tillerMm - targetMm;
    double mmPerTurn = response.now().mean();
    if (mmPerTurn < HARDLY_MM) {
      return nothing(
          tillerMm,
          Outcome.FIND_OUT_WHY,
          ". It hardly moves, or the wrong way: find out why first.",
          record);
    }
    // A step that would leave it farther from its aim is none.
    double least = STEP * mmPerTurn;
    if (ReadingScatter.isLess(Math.abs(excess), ReadingScatter.EYE_MM)
        || Math.abs(least - Math.abs(excess)) >= Math.abs(excess)) {
      return nothing(
          tillerMm, Outcome.LEAVE_IT, ". It is off by less than a reading can tell.", record);
    }
    boolean upperIn = excess > 0;
    Double goesIn = upperIn ? upperOut : lowerOut;
    Double goesOut = upperIn ? lowerOut : upperOut;
    double roomIn = goesIn == null ? Double.POSITIVE_INFINITY : goesIn;
    double roomOut = goesOut == null || mostOut == null ? 0 : mostOut - goesOut;
    double wanted = Math.abs(excess) / Math.max(mmPerTurn, LEAST_MM);

    // Shared between the bolts; what the one has no room for falls to the other.
    double in = Math.min(wanted / 2, roomIn);
    double out = Math.min(wanted - in, roomOut);
    in = Math.min(wanted - out, roomIn);
    double inNow = step(in, roomIn);
    double outNow = step(out, roomOut);
    if (inNow == 0 && outNow == 0) {
      // A wish smaller than a bolt can be turned by: the least there is, on one bolt only.
      inNow = roomIn >= STEP ? STEP : 0;
      outNow = inNow == 0 && roomOut >= STEP ? STEP : 0;
    }
    if (inNow > 0 && outNow > 0 && wanted < 1.5 * STEP) {
      outNow = 0;
    }
    if (inNow == 0 && outNow == 0) {
      return nothing(tillerMm, Outcome.NO_ROOM, "." + NO_ROOM, record);
    }
    boolean reached = in + out > wanted - STEP / 2;
    Posterior moved = change(response, upperIn ? inNow + outNow : -(inNow + outNow), record);
    return new BoltReckoning(
        upperIn ? in : 0 - out,
        upperIn ? 0 - out : in,
        upperIn ? inNow : 0 - outNow,
        upperIn ? 0 - outNow : inNow,
        tillerMm + moved.mean(),
        tillerMm + moved.low(),
        tillerMm + moved.high(),
        Outcome.TURN,
        reached,
        restsOn(response.now()),
        basis(response.now(), ".")
            + (roomOut == 0
                ? " No bolt is turned out: the maker's turns or the bolt's own are unknown, or used"
                    + " up."
                : "")
            + (reached ? "" : " The bolts can't bring it all the way.")
            + BRACE_STAYS);
  }

  /**
   * Of a tiller that is farther off than bolts bring it: nothing is turned.
   *
   * @param why a sentence
   */
  public static BoltReckoning lookFirst(double tillerMm, String why) {
    return nothing(tillerMm, Outcome.LOOK_FIRST, ". " + why, OwnRecord.NONE);
  }

  /** Tiller for a turn of one bolt in, as far down as it goes; positive: the common way. */
  public static Posterior mmPerTurn(OwnRecord record) {
    return response(record).now();
  }

  private static Response response(OwnRecord record) {
    // The upper bolt in brings tiller down: the runs count turns of tiller up.
    return Response.of(
        MM_PER_TURN, record.bolts().stream().map(run -> run.against(turns -> -turns)).toList());
  }

  /** Of tiller, when the upper bolt goes in by {@code turns} more than the lower. */
  private static Posterior change(Response response, double turns, OwnRecord record) {
    double tried =
        record.bolts().stream().mapToDouble(run -> run.most() - run.least()).max().orElse(0);
    return response.change(-turns, Math.copySign(Math.min(Math.abs(turns), tried), -turns));
  }

  private static BoltReckoning nothing(
      double tillerMm, Outcome outcome, String end, OwnRecord record) {
    Posterior now = mmPerTurn(record);
    return new BoltReckoning(
        0,
        0,
        0,
        0,
        tillerMm,
        tillerMm,
        tillerMm,
        outcome,
        outcome == Outcome.LEAVE_IT,
        restsOn(now),
        basis(now, end));
  }

  private static String restsOn(Posterior now) {
    return now.shown() == 0
        ? RestsOn.NONE_YET + ", and bows differ widely"
        : RestsOn.from(now.shown());
  }

  private static String basis(Posterior posterior, String end) {
    return RestsOn.sentence(restsOn(posterior))
        + (posterior.shown() == 0
            ? " A turn of one bolt moves tiller by about 7.5 mm, anything from 0 to 15; no"
                + " published value, common practice (3 to 8 mm) and models (6 to 9 mm, or even"
                + " the other way) differ"
            : String.format(
                Locale.ROOT,
                " A turn of one bolt moves tiller by about %.1f mm (%.1f to %.1f, 9 times in 10)",
                posterior.mean(),
                posterior.low(),
                posterior.high()))
        + end;
  }

  private static void within(String quantity, Double out, Double most) {
    if (most != null) {
      Domain.within("maxTurnsOut", most, 0, 20);
    }
    if (out != null) {
      Domain.within(quantity, out, 0, 20);
      if (most != null && out > most) {
        throw new OutOfDomain(
            quantity,
            "It stands further out than its maker allows: take the string off, then turn it in before anything.");
      }
    }
  }

  private static double step(double turns, double room) {
    double rounded = Math.rint(turns / STEP) * STEP;
    double inRoom = rounded <= room ? rounded : Math.floor(room / STEP) * STEP;
    return Math.min(inRoom, MOST_AT_ONCE);
  }
}
