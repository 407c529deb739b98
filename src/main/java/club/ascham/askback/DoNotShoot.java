package club.ascham.askback;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;

/**
 * Which of what stands against a thing is a reason to ask for it at once. That the day of an
 * inspection is past, that work was asked for, or that it is not set up, keeps a bow from going out
 * the next time and is no reason to telephone tonight.
 */
public final class DoNotShoot {
  private DoNotShoot() {}

  static boolean says(Concern concern) {
    boolean limbsMayChange = concern.blocks() && concern.matter() == Matter.CHANGING;
    return concern.isDanger() || limbsMayChange;
  }

  /** Whether a thing that is out is to be asked for at once. */
  public static boolean says(Against against) {
    return against.all().stream().anyMatch(DoNotShoot::says);
  }

  /** Of all that stands against it, what says so. */
  static Against of(Against against) {
    return new Against(against.all().stream().filter(DoNotShoot::says).toList());
  }
}
