package club.ascham.mechanics;

/**
 * Which limb bolt, which way and how far brings tiller (upper minus lower distance) to its aim. A
 * bolt turned in brings its limb's distance down. Turning one in and the other out by the same
 * keeps the draw weight, so the work is shared where the bolts have room.
 *
 * @param upper turns expected in all; positive: tighten, the bolt goes in
 * @param lower likewise
 * @param firstUpper what to turn before measuring again, never more than a quarter either way
 * @param firstLower likewise
 * @param expectedMm tiller after the first step, likeliest
 * @param lowMm and {@code highMm}: where it may well lie after the first step
 * @param reached whether the bolts have the room for all of it
 */
public record BoltReckoning(
    double upper,
    double lower,
    double firstUpper,
    double firstLower,
    double expectedMm,
    double lowMm,
    double highMm,
    boolean reached,
    String basis) {

  /** Before measuring again, whatever the estimate. */
  public static final double MOST_AT_ONCE = 0.25;

  /** Nobody turns a bolt by finer parts than this. */
  private static final double STEP = 0.125;

  /**
   * Tiller a turn of one bolt: no published value. Common practice has 3 to 8 mm; models of common
   * geometries have 7 to 22 mm, and past a limit of stability even the other sign, so that none can
   * be promised. A judgement wide enough for most of both.
   */
  private static final double MM_PER_TURN = 7.5;

  private static final double LEAST_MM_PER_TURN = 3;
  private static final double MOST_MM_PER_TURN = 16;

  private static final String BASIS =
      "3 to 16 mm of tiller for a turn of one bolt: no published value; common practice and models"
          + " differ, and each bow has its own. Measure again after each step.";

  /**
   * @param upperOut turns that the upper bolt stands out; null: unknown
   * @param lowerOut likewise
   * @param mostOut turns out that the maker allows; null: unknown, and then no bolt goes out
   * @throws OutOfDomain for what is no bow, or a bolt beyond its maker's turns
   */
  public static BoltReckoning of(
      double tillerMm, double targetMm, Double upperOut, Double lowerOut, Double mostOut) {
    Domain.within("tillerMm", tillerMm, -60, 60);
    Domain.within("targetMm", targetMm, -30, 30);
    within("upperTurnsOut", upperOut, mostOut);
    within("lowerTurnsOut", lowerOut, mostOut);
    double excess = tillerMm - targetMm;
    boolean upperIn = excess > 0;
    double wanted = Math.abs(excess) / MM_PER_TURN;
    Double goesIn = upperIn ? upperOut : lowerOut;
    Double goesOut = upperIn ? lowerOut : upperOut;
    double roomIn = goesIn == null ? Double.POSITIVE_INFINITY : goesIn;
    double roomOut = goesOut == null || mostOut == null ? 0 : mostOut - goesOut;

    double in = Math.min(wanted / 2, roomIn);
    double out = Math.min(wanted - in, roomOut);
    in = Math.min(wanted - out, roomIn);
    double inNow = step(in, roomIn);
    double outNow = step(out, roomOut);
    double moved = -Math.signum(excess) * (inNow + outNow);
    double one = tillerMm + moved * LEAST_MM_PER_TURN;
    double other = tillerMm + moved * MOST_MM_PER_TURN;
    return new BoltReckoning(
        upperIn ? in : 0 - out,
        upperIn ? 0 - out : in,
        upperIn ? inNow : 0 - outNow,
        upperIn ? 0 - outNow : inNow,
        tillerMm + moved * MM_PER_TURN,
        Math.min(one, other),
        Math.max(one, other),
        in + out > wanted - STEP / 2,
        roomOut == 0 && excess != 0
            ? BASIS
                + " No bolt is turned out: the maker's turns or the bolt's own are unknown, or used"
                + " up."
            : BASIS);
  }

  private static void within(String quantity, Double out, Double most) {
    if (most != null) {
      Domain.within("maxTurnsOut", most, 0, 20);
    }
    if (out != null) {
      Domain.within(quantity, out, 0, 20);
      if (most != null && out > most) {
        throw new OutOfDomain(
            quantity, "It stands further out than its maker allows: turn it in before anything.");
      }
    }
  }

  private static double step(double turns, double room) {
    double rounded = Math.rint(turns / STEP) * STEP;
    double inRoom = rounded <= room ? rounded : Math.floor(room / STEP) * STEP;
    return Math.min(inRoom, MOST_AT_ONCE);
  }
}
