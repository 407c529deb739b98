package club.ascham.fleet;

import club.ascham.form.Words;

/** The weight marked on the limbs, in the steps in which clubs buy beginners' limbs. */
enum WeightBand {
  UP_TO_16(16, "up to 16 lb"),
  UP_TO_22(22, "over 16 to 22 lb"),
  UP_TO_28(28, "over 22 to 28 lb"),
  OVER_28(Double.POSITIVE_INFINITY, "over 28 lb");

  private final double mostLb;
  private final String said;

  WeightBand(double mostLb, String said) {
    this.mostLb = mostLb;
    this.said = said;
  }

  static WeightBand of(double markedLb) {
    for (WeightBand band : values()) {
      if (markedLb <= band.mostLb) {
        return band;
      }
    }
    throw new IllegalArgumentException("not a weight: " + markedLb);
  }

  String word() {
    return Words.of(this);
  }

  String said() {
    return said;
  }
}
