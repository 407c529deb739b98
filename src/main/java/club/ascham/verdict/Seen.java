package club.ascham.verdict;

import java.util.List;

/**
 * Everything that one check of one bow brought in.
 *
 * @param reading null: not measured, which a stop excuses: nobody strings a cracked bow to measure
 *     it
 * @param signs what was seen by part, the deliberate <i>fine</i> included
 * @param missing parts that should be there and are not, or others in their place, one line each
 * @param limbsSeated someone has looked, since the bow came back, that the limbs are the right way
 *     up and seated and the loops in their grooves
 */
public record Seen(
    Reading reading,
    List<Sign> signs,
    Reported reported,
    List<String> missing,
    boolean limbsSeated) {
  public Seen {
    signs = List.copyOf(signs);
    missing = List.copyOf(missing);
  }
}
