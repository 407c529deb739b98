package club.ascham.verdict;

/**
 * Turns of the two limb bolts; positive tightens: the bolt goes in and that limb's distance from
 * the string falls.
 */
public record Turns(double upper, double lower) {
  public static final Turns NONE = new Turns(0, 0);

  public boolean none() {
    return upper == 0 && lower == 0;
  }

  /** The same turns the other way. */
  public Turns undone() {
    return new Turns(0 - upper, 0 - lower);
  }

  /**
   * The sign of the change of tiller to expect: −1, 0 or +1. The upper bolt in makes tiller fall,
   * the lower one in makes it rise.
   */
  int tillerSign() {
    return (int) Math.signum(lower - upper);
  }
}
