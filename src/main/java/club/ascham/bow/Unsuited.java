package club.ascham.bow;

import java.util.List;

/**
 * A rig that does not suit an archer.
 *
 * @param why every reason, in words
 * @param adviceOnly whether a person may give it all the same and say why: length and weight are
 *     advice, hand and fitting parts are not
 */
public record Unsuited<T>(T rig, List<String> why, boolean adviceOnly) {
  public Unsuited {
    why = List.copyOf(why);
  }
}
