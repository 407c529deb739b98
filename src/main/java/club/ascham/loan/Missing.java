package club.ascham.loan;

/** What of a loan came back, in the same words wherever it is said. */
public final class Missing {
  private Missing() {}

  /**
   * @param arrows that did not come back with the rest of their set
   */
  public static String allBackBut(int arrows) {
    return arrows == 0
        ? "all back"
        : "back but for " + arrows + (arrows == 1 ? " arrow" : " arrows");
  }
}
