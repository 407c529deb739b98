package club.ascham.verdict;

import java.util.List;

/**
 * Everything that one check of one bow brought in.
 *
 * @param reading null: not measured, or not all of it, which a stop excuses: nobody strings a
 *     cracked bow to measure it
 * @param signs what was seen by part, the deliberate <i>fine</i> included
 * @param missing parts that should be there and are not, or others in their place, one line each
 * @param assured what the person at the bench says of their own look and measuring
 * @param unanswered what was told of it and nobody has answered, this check included
 */
public record Seen(
    Reading reading,
    List<Sign> signs,
    Reported reported,
    List<String> missing,
    Assured assured,
    List<Unanswered> unanswered) {
  public Seen {
    reading = reading == null || !reading.isWhole() ? null : reading;
    signs = List.copyOf(signs);
    missing = List.copyOf(missing);
    unanswered = List.copyOf(unanswered);
  }

  /**
   * @param limbsSeated someone has looked, since the bow came back, that the limbs are the right
   *     way up and seated and the loops in their grooves
   * @param measuredEach each of the three figures was measured by itself, though two are the same
   * @param afterALook it is measured again after a check that asked for a look
   */
  public record Assured(boolean limbsSeated, boolean measuredEach, boolean afterALook) {
    public static final Assured NOTHING = new Assured(false, false, false);
  }

  boolean limbsSeated() {
    return assured.limbsSeated();
  }

  /**
   * Something that was told and stands until a person answers it.
   *
   * @param said one line
   * @param dangerous whether nobody strings or shoots the bow before a permit holder has looked
   */
  public record Unanswered(String said, boolean dangerous) {}
}
