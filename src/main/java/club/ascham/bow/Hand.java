package club.ascham.bow;

/** The hand that draws the string. */
public enum Hand {
  RIGHT,
  LEFT
}
