package club.ascham.verdict;

import club.ascham.units.Length;
import club.ascham.units.LengthText;

/** What a bow should measure once an advice was followed, in a line for the person at the bench. */
final class Expectation {
  /** Of a turn; nobody speaks of finer parts in all. */
  private static final double QUARTERS = 4;

  private Expectation() {}

  static String of(TwistAdvice advice) {
    return of(
        "Brace", advice.expected(), advice.expectedLow(), advice.expectedHigh(), advice.restsOn());
  }

  static String of(BoltAdvice advice) {
    Turns total = advice.total();
    Turns first = advice.first();
    double inAll = Math.abs(total.upper()) + Math.abs(total.lower());
    boolean more = inAll > Math.abs(first.upper()) + Math.abs(first.lower()) + 0.5 / QUARTERS;
    return of(
            "Tiller",
            advice.expected(),
            advice.expectedLow(),
            advice.expectedHigh(),
            advice.restsOn())
        + (more
            ? " In all about %s, both bolts together; measure after each step."
                .formatted(quarters(inAll))
            : "");
  }

  private static String of(String what, Length likely, Length low, Length high, String restsOn) {
    return "%s about %s (%s to %s · %s to %s, 9 times in 10). %s."
        .formatted(
            what,
            LengthText.both(likely),
            LengthText.inches(low).replace(" in", ""),
            LengthText.inches(high),
            LengthText.wholeMm(low).replace(" mm", ""),
            LengthText.wholeMm(high),
            Character.toUpperCase(restsOn.charAt(0)) + restsOn.substring(1));
  }

  /** {@code 3/4 of a turn}, {@code 1 1/2 turns}. */
  private static String quarters(double turns) {
    long quarters = Math.round(turns * QUARTERS);
    String rest =
        switch ((int) (quarters % 4)) {
          case 1 -> " 1/4";
          case 2 -> " 1/2";
          case 3 -> " 3/4";
          default -> "";
        };
    if (quarters < 4) {
      return rest.strip() + " of a turn";
    }
    return quarters / 4 + rest + (quarters == 4 ? " turn" : " turns");
  }
}
