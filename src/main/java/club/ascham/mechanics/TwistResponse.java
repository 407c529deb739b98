package club.ascham.mechanics;

import java.util.List;
import java.util.Locale;

/**
 * What twists do to the brace of one bow, learnt from its own adjustments. Where bundle and count
 * are known, brace rises with the square of the twists, B(n) = B0 + k (pi R)^2 / L0 n^2: k lies
 * between the mean strand (1) and the outermost helix (2), times how far brace follows the string.
 * Else by the trade's so many twists a millimetre, whatever the count.
 */
public sealed interface TwistResponse {
  /**
   * How far brace follows the string, in millimetres a millimetre: 1.02 to 1.06 by the elastica of
   * a common 68 in, 30 lb recurve, 0.9 by rigid limbs. The middle is a judgement, its spread too.
   */
  double BRACE_PER_STRING = 1.02;

  double BRACE_PER_STRING_SD = 0.07;

  /** The middle of mean strand and outermost helix; these are taken for 5 and 95 in a hundred. */
  double FACTOR = 1.5;

  double FACTOR_SD = 0.5 / 1.6448536269514722;

  /** The change of brace in mm, when so many twists more are put in (negative: taken out). */
  Posterior change(int added);

  /** What one twist more does to brace now, in mm; where only a twist less was tried, by that. */
  default Posterior oneTwist() {
    if (tried(1) || !tried(-1)) {
      return change(1);
    }
    Posterior less = change(-1);
    return new Posterior(-less.mean(), less.sd(), less.shown());
  }

  /** Whether so many twists stay where this bow was tried. */
  boolean tried(int added);

  /**
   * How much longer (untwisted) another string of this make has to be, for this change of brace at
   * the twists that a new string is best set up with; where twists are not counted, at as many as
   * are in this one.
   */
  double otherStringMm(double braceChangeMm, TwistLimits limits);

  /** Twists in the string; null: not counted. */
  Integer count();

  /** Adjustments it rests on. */
  int shown();

  /** How many of the bow's own adjustments it rests on, in a few words. */
  String restsOn();

  /** What it rests on besides, in sentences. */
  String basis();

  /** The product of two independent factors; its own small skew is left out. */
  static Posterior priorOfBundle() {
    double relative = Math.hypot(FACTOR_SD / FACTOR, BRACE_PER_STRING_SD / BRACE_PER_STRING);
    return Posterior.prior(FACTOR * BRACE_PER_STRING, FACTOR * BRACE_PER_STRING * relative);
  }

  /** The trade's 2 to 3 twists a millimetre, taken for the middle half of all strings. */
  static Posterior priorOfTrade() {
    double one = 1 / 3.0;
    double other = 1 / 2.0;
    return Posterior.prior((one + other) / 2, (other - one) / 2 / 0.6744897501960817);
  }

  /**
   * By the bundle's geometry.
   *
   * @param count twists in it now
   */
  static TwistResponse of(TwistedString string, int count, OwnRecord record) {
    List<Run> runs =
        record.twists().stream().map(run -> run.against(string::leastShorteningMm)).toList();
    return new OfBundle(
        string,
        count,
        Response.rising(priorOfBundle(), runs),
        record.twists().stream().mapToDouble(Run::least).min().orElse(count),
        record.twists().stream().mapToDouble(Run::most).max().orElse(count));
  }

  /**
   * By the trade's rule of thumb, learnt from changes of which nobody needs to know the start.
   *
   * @param count null: not counted
   * @param why the geometry does not answer, a sentence
   */
  static TwistResponse byTheTrade(Integer count, String why, OwnRecord record) {
    return new ByTheTrade(
        count,
        Response.rising(priorOfTrade(), record.twistsAdded()),
        record.twistsAdded().stream().mapToDouble(run -> run.most() - run.least()).max().orElse(0),
        why);
  }

  /** By the bundle's geometry, tried between two counts. */
  record OfBundle(
      TwistedString string, Integer count, Response factor, double triedFrom, double triedTo)
      implements TwistResponse {
    @Override
    public Posterior change(int added) {
      double after = Math.max(0, count + added);
      return factor.change(
          shortening(after) - shortening(count), shortening(held(after)) - shortening(held(count)));
    }

    private double shortening(double twists) {
      return string.leastShorteningMm(twists);
    }

    private double held(double twists) {
      return Math.max(triedFrom, Math.min(triedTo, twists));
    }

    @Override
    public boolean tried(int added) {
      return held(count + added) == count + added;
    }

    @Override
    public double otherStringMm(double braceChangeMm, TwistLimits limits) {
      double more = shortening(limits.forNewString()) - shortening(count);
      return (factor.now().mean() * more - braceChangeMm) / BRACE_PER_STRING;
    }

    @Override
    public int shown() {
      return factor.now().shown();
    }

    @Override
    public String restsOn() {
      return shown() == 0
          ? RestsOn.NONE_YET + ": from the string's geometry"
          : RestsOn.from(shown());
    }

    @Override
    public String basis() {
      return "By the twisted bundle, between its mean strand and its outermost helix, brace"
          + " following the string about 1 to 1"
          + (shown() == 0
              ? "."
              : String.format(
                  Locale.ROOT, "; tried from %.0f to %.0f twists.", triedFrom, triedTo));
    }
  }

  /** By so many twists a millimetre. */
  record ByTheTrade(Integer count, Response mmPerTwist, double triedAtOnce, String why)
      implements TwistResponse {
    @Override
    public Posterior change(int added) {
      return mmPerTwist.change(added, Math.copySign(Math.min(Math.abs(added), triedAtOnce), added));
    }

    @Override
    public boolean tried(int added) {
      return Math.abs(added) <= triedAtOnce;
    }

    @Override
    public double otherStringMm(double braceChangeMm, TwistLimits limits) {
      return -braceChangeMm / BRACE_PER_STRING;
    }

    @Override
    public int shown() {
      return mmPerTwist.now().shown();
    }

    @Override
    public String restsOn() {
      return shown() == 0 ? RestsOn.NONE_YET + ": a rule of thumb" : RestsOn.from(shown());
    }

    @Override
    public String basis() {
      return (shown() == 0 ? "" : "They correct the rule of thumb: ")
          + "1 mm of brace for 2 to 3 twists, common practice without a published source. "
          + why;
    }
  }
}
