package club.ascham.verdict;

import club.ascham.bow.Band;

/** What a bow should measure once an advice was followed. */
final class Expectation {
  /** Of a turn; nobody speaks of finer parts in all. */
  private static final double QUARTERS = 4;

  private Expectation() {}

  static Remark of(TwistAdvice advice) {
    return Remark.of(
        Saying.BRACE_EXPECTED,
        advice.expected(),
        new Band(advice.expectedLow(), advice.expectedHigh()),
        advice.restsOn());
  }

  static Remark of(BoltAdvice advice) {
    Band range = new Band(advice.expectedLow(), advice.expectedHigh());
    double inAll = turns(advice.total());
    return inAll > turns(advice.first()) + 0.5 / QUARTERS
        ? Remark.of(
            Saying.TILLER_EXPECTED_IN_ALL,
            advice.expected(),
            range,
            advice.restsOn(),
            (int) Math.round(inAll * QUARTERS))
        : Remark.of(Saying.TILLER_EXPECTED, advice.expected(), range, advice.restsOn());
  }

  private static double turns(Turns both) {
    return Math.abs(both.upper()) + Math.abs(both.lower());
  }
}
