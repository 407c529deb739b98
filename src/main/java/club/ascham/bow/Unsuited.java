package club.ascham.bow;

import java.util.List;

/**
 * A rig that does not suit an archer.
 *
 * @param why every reason, in words
 * @param adviceOnly whether a person may give it all the same and say why: length and weight are
 *     advice, hand and fitting parts are not
 * @param asksCoach whether that takes a coach who agreed to the weight, beside the reason
 */
public record Unsuited<T>(T rig, List<String> why, boolean adviceOnly, boolean asksCoach) {
  public Unsuited {
    why = List.copyOf(why);
  }
}
