package club.ascham.verdict;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.Length;
import club.ascham.verdict.TwistAdvice.Reach;

/**
 * Advice as the trade gives it by word of mouth, until the mechanics of the bow answer: common
 * practice without a published source, with ranges to match.
 */
public final class RulesOfThumb implements Advice {
  /** "A millimetre of brace for every two or three twists": common practice. */
  private static final double TWISTS_PER_MM = 2.5;

  private static final double FEWEST_TWISTS_PER_MM = 2;
  private static final double MOST_TWISTS_PER_MM = 3;

  /** Below it a string does not hold together round: the lowest figure in print. */
  public static final int FEWEST_TWISTS = 10;

  /** Above it a string is overtwisted: the highest figure in print. */
  public static final int MOST_TWISTS = 60;

  /** "An eighth of an inch of tiller for half a turn": common practice, 6.35 mm a turn. */
  private static final double TILLER_MM_PER_TURN = 6.35;

  private static final double LEAST_TILLER_MM_PER_TURN = 3;
  private static final double MOST_TILLER_MM_PER_TURN = 8;

  /** Nobody turns a bolt by finer parts than this. */
  private static final double TURN_STEP = 0.125;

  private static final String TWISTS_IN_PRINT =
      "Published twists of a string range from %d to %d (laflechegasconne.fr; archers-douai.fr;"
              .formatted(FEWEST_TWISTS, MOST_TWISTS)
          + " lancasterarchery.com).";

  /**
   * {@inheritDoc}
   *
   * <p>1 mm of brace per 2 to 3 twists, in raises brace (greygoosearchery.co.uk,
   * world-of-archery.com); the amount is common practice. The advice stays inside the published
   * range of twists; only where the fewest that might do it don't fit in is another string advised.
   */
  @Override
  public TwistAdvice twists(RigSpec rig, Length braceNow, Length aim) {
    double mm = aim.minus(braceNow).mm();
    int direction = mm < 0 ? -1 : 1;
    int low = atLeastOne(Math.abs(mm) * FEWEST_TWISTS_PER_MM);
    int turns = atLeastOne(Math.abs(mm) * TWISTS_PER_MM);
    int high = atLeastOne(Math.ceil(Math.abs(mm) * MOST_TWISTS_PER_MM));
    Integer now = rig.string() == null ? null : rig.string().twists();
    int room = room(now, direction);
    boolean reached = low <= room;
    return new TwistAdvice(
        direction * (reached ? Math.min(turns, room) : turns),
        direction * low,
        direction * (reached ? Math.min(high, room) : high),
        reached ? Reach.THIS_STRING : direction < 0 ? Reach.LONGER_STRING : Reach.SHORTER_STRING,
        "1 mm of brace for 2 to 3 twists: common practice, no published source. "
            + TWISTS_IN_PRINT
            + (now == null ? " The twists in this string were not counted." : ""));
  }

  private static int atLeastOne(double twists) {
    return (int) Math.max(1, Math.round(twists));
  }

  /** How many twists may go that way; for an uncounted string, as if it stood at the other end. */
  private static int room(Integer now, int direction) {
    if (now == null) {
      return MOST_TWISTS - FEWEST_TWISTS;
    }
    return direction < 0 ? now - FEWEST_TWISTS : MOST_TWISTS - now;
  }

  /**
   * {@inheritDoc}
   *
   * <p>1/8 in of tiller for half a turn of one bolt, anything from 3 to 8 mm a turn: common
   * practice. Tightening a bolt makes that limb's distance smaller (handboogverenigingodysseus.nl,
   * and geometry; hullarcheryclub.co.uk says the reverse). One bolt in and the other out by the
   * same keeps the draw weight.
   */
  @Override
  public BoltAdvice bolts(RigSpec rig, SetUpFigures setUp, Length tillerNow, Length aim) {
    if (!rig.tillerAdjusts()) {
      throw new IllegalArgumentException("no bolt sets the tiller of this bow");
    }
    double excess = tillerNow.minus(aim).mm();
    boolean upperIn = excess > 0;
    double wanted = Math.abs(excess) / TILLER_MM_PER_TURN;
    double roomIn = roomIn(upperIn ? setUp.turnsUpper() : setUp.turnsLower());
    double roomOut =
        roomOut(rig.riser().maxTurnsOut(), upperIn ? setUp.turnsLower() : setUp.turnsUpper());

    double in = Math.min(wanted / 2, roomIn);
    double out = Math.min(wanted - in, roomOut);
    in = Math.min(wanted - out, roomIn);
    boolean reached = in + out > wanted - TURN_STEP / 2;

    double inNow = step(in, roomIn);
    double outNow = step(out, roomOut);
    if (inNow == 0 && outNow == 0) {
      // A wish smaller than a bolt can be turned by: the least there is, on one bolt only.
      inNow = roomIn >= TURN_STEP ? TURN_STEP : 0;
      outNow = inNow == 0 && roomOut >= TURN_STEP ? TURN_STEP : 0;
    }
    double now = inNow + outNow;
    double towards = Math.signum(excess);
    return new BoltAdvice(
        turns(upperIn, in, out),
        Math.abs(excess) / MOST_TILLER_MM_PER_TURN,
        Math.abs(excess) / LEAST_TILLER_MM_PER_TURN,
        turns(upperIn, inNow, outNow),
        moved(tillerNow, -towards * now * TILLER_MM_PER_TURN),
        moved(tillerNow, -now * (upperIn ? MOST_TILLER_MM_PER_TURN : -LEAST_TILLER_MM_PER_TURN)),
        moved(tillerNow, -now * (upperIn ? LEAST_TILLER_MM_PER_TURN : -MOST_TILLER_MM_PER_TURN)),
        basis(roomOut, reached));
  }

  private static double roomIn(Double turnsOut) {
    return turnsOut == null ? Double.POSITIVE_INFINITY : Math.max(0, turnsOut);
  }

  private static double roomOut(Double maxTurnsOut, Double turnsOut) {
    return maxTurnsOut == null || turnsOut == null ? 0 : Math.max(0, maxTurnsOut - turnsOut);
  }

  private static double step(double turns, double room) {
    double rounded = Math.rint(turns / TURN_STEP) * TURN_STEP;
    double inRoom = rounded <= room ? rounded : Math.floor(room / TURN_STEP) * TURN_STEP;
    return Math.min(inRoom, BoltAdvice.MOST_AT_ONCE);
  }

  private static Turns turns(boolean upperIn, double in, double out) {
    return upperIn ? new Turns(in, 0 - out) : new Turns(0 - out, in);
  }

  private static Length moved(Length tiller, double mm) {
    return tiller.plus(Length.ofMm(mm));
  }

  private static String basis(double roomOut, boolean reached) {
    StringBuilder words =
        new StringBuilder(
            "1/8 in of tiller for half a turn of one bolt, anything from 3 to 8 mm a turn: common"
                + " practice, no published source.");
    if (roomOut == 0) {
      words.append(
          " No bolt is turned out: the maker's turns or the bolt's own are unknown, or used up.");
    }
    if (!reached) {
      words.append(" The bolts can't bring it all the way.");
    }
    return words.toString();
  }
}
