package club.ascham.loan;

import club.ascham.bow.AgeBand;

/** How an age band is said. */
public final class AgeWords {
  private AgeWords() {}

  public static String said(AgeBand age) {
    return switch (age) {
      case UP_TO_12 -> "up to 12";
      case FROM_13_TO_14 -> "13 or 14";
      case FROM_15_TO_16 -> "15 or 16";
      case FROM_17_TO_18 -> "17 or 18";
      case ADULT -> "adult";
    };
  }
}
