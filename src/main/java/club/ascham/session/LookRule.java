package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.Matter;

/**
 * When a look without measuring is enough to put a rig back: nothing was seen or told, nothing
 * stands against it that a look can't answer, and the last full check (or set-up) is younger than
 * so many looks. How many is the club's rule; six sessions is common practice.
 */
final class LookRule {
  private LookRule() {}

  static boolean suffices(
      boolean somethingSeen, Against against, long looksSinceFullCheck, int fullCheckEveryLooks) {
    return !somethingSeen && !isBeyondALook(against) && looksSinceFullCheck < fullCheckEveryLooks;
  }

  /** Whether something keeps it in, was reported and not answered, or its readings change. */
  static boolean isBeyondALook(Against against) {
    return against.blocks() || against.has(Matter.REPORTED) || against.has(Matter.CHANGING);
  }
}
