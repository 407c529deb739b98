package club.ascham.bow;

/** How old an archer is, as nearly as choosing a bow needs to know. */
public enum AgeBand {
  UP_TO_12(14, 16),
  FROM_13_TO_14(16, 18),
  FROM_15_TO_16(18, 22),
  FROM_17_TO_18(20, 24),
  ADULT(20, 24);

  private final int startLb;
  private final int endLb;

  AgeBand(int startLb, int endLb) {
    this.startLb = startLb;
    this.endLb = endLb;
  }

  public boolean junior() {
    return this != ADULT;
  }

  /** The most weight in lbf at the start of a beginners' course (UK Scouts' figures). */
  int startLb() {
    return startLb;
  }

  /** The most weight in lbf by the end of a beginners' course (UK Scouts' figures). */
  int endLb() {
    return endLb;
  }
}
