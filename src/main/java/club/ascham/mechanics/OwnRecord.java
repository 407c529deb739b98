package club.ascham.mechanics;

import java.util.List;

/**
 * What was tried on one bow and measured before and after.
 *
 * <p>One number serves both bolts: the limbs are a matched pair, and three adjustments could not
 * tell two numbers apart.
 *
 * @param twists runs of brace against the twists in the string, where they were counted
 * @param twistsAdded runs of brace against the twists put in since the run began; each run of
 *     {@code twists} is among them
 * @param bolts runs of tiller against turns in of the upper bolt less those of the lower
 */
public record OwnRecord(List<Run> twists, List<Run> twistsAdded, List<Run> bolts) {
  public static final OwnRecord NONE = new OwnRecord(List.of(), List.of(), List.of());

  public OwnRecord {
    twists = List.copyOf(twists);
    twistsAdded = List.copyOf(twistsAdded);
    bolts = List.copyOf(bolts);
  }
}
