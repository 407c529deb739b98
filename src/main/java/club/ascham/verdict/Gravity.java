package club.ascham.verdict;

/** How much a sign weighs, the graver the later. */
public enum Gravity {
  /** As it should be. */
  FINE,
  /** To be kept an eye on; the bow may go out. */
  NOTE,
  /** The bow does not go out. */
  STOP
}
