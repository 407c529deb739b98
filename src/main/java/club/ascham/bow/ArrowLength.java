package club.ascham.bow;

import club.ascham.units.Length;

/**
 * The rule for how short an arrow may be: one drawn past the rest falls behind it and is shot into
 * the hand. The rule is hard; nobody overrides it.
 */
public final class ArrowLength {
  private static final double CLEAR_IN = 1;
  private static final double NOVICE_IN = 2;
  private static final double ESTIMATE_IN = 1;

  private ArrowLength() {}

  /**
   * The shortest arrow for a draw: 1 in more than the AMO draw, which more than keeps the maker's
   * rule that the tip stands at least 1 in in front of the rest; 2 in for beginners and, judged,
   * for juniors, who still grow; and 1 in on top where the draw is an estimate (judged).
   *
   * @param drawIn the archer's AMO draw in inches
   * @throws IllegalArgumentException when the draw is not a positive number
   */
  public static ShortestArrow shortestSafe(
      double drawIn, boolean estimated, boolean beginner, boolean junior) {
    if (!(drawIn > 0) || Double.isInfinite(drawIn)) {
      throw new IllegalArgumentException("a draw is a positive number of inches");
    }
    boolean novice = beginner || junior;
    double marginIn = (novice ? NOVICE_IN : CLEAR_IN) + (estimated ? ESTIMATE_IN : 0);
    String why =
        beginner
            ? "Draw and 2 in for a beginner (" + InPrint.BEGINNERS_ARROWS + ")"
            : junior
                ? "Draw and 2 in for a junior, who still grows, as for a beginner (our judgement)"
                : "Draw and 1 in, so that the tip stays well in front of the rest (the maker's"
                    + " least is 1 in in front of it: "
                    + InPrint.MAKER_MANUAL
                    + ")";
    return new ShortestArrow(
        Length.ofInches(drawIn + marginIn),
        why
            + (estimated
                ? ", and 1 in more since the draw is only estimated (our judgement)."
                : ".")
            + " An arrow that is too short falls behind the rest and is shot into the hand.");
  }
}
