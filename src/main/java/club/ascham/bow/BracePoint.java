package club.ascham.bow;

/** The point a brace height was measured from; a figure without it can't be compared. */
public enum BracePoint {
  GRIP_THROAT,
  BUTTON
}
