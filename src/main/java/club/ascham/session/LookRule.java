package club.ascham.session;

/**
 * When a look without measuring is enough to put a rig back: nothing was seen or told, and the last
 * full check (or set-up) is younger than so many looks. How many is the club's rule; six sessions
 * is common practice.
 */
final class LookRule {
  private LookRule() {}

  static boolean suffices(
      boolean somethingSeen, long looksSinceFullCheck, int fullCheckEveryLooks) {
    return !somethingSeen && looksSinceFullCheck < fullCheckEveryLooks;
  }
}
