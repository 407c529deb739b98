package club.ascham.bow;

import java.util.List;

/**
 * A rig that suits an archer.
 *
 * @param weight on this archer's fingers
 * @param why it stands where it stands, in words
 * @param misfitScore points for what is not ideal; 0 is the best
 */
public record Suited<T>(T rig, WeightOnFingers weight, List<String> why, int misfitScore) {
  public Suited {
    why = List.copyOf(why);
  }
}
