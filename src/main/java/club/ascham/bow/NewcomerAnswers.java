package club.ascham.bow;

import java.util.Objects;

/**
 * What is asked of an archer before a bow is chosen.
 *
 * @param dominantEye the side of the stronger eye; null: not tested
 * @param drawIn AMO draw length in inches
 * @param drawEstimated reckoned from the arm span rather than measured
 * @throws IllegalArgumentException when no bow of a club's lengths is drawn to such a draw
 */
public record NewcomerAnswers(
    Hand hand,
    Hand dominantEye,
    double drawIn,
    boolean drawEstimated,
    AgeBand age,
    Experience experience) {
  public NewcomerAnswers {
    Objects.requireNonNull(hand, "hand");
    Objects.requireNonNull(age, "age");
    Objects.requireNonNull(experience, "experience");
    if (!(DrawLength.SHORTEST_IN <= drawIn && drawIn <= DrawLength.LONGEST_IN)) {
      throw new IllegalArgumentException("a draw length lies between 14 and 36 in");
    }
  }

  /** Whether the draw is likely still to grow. */
  boolean growing() {
    return age.junior() || experience == Experience.BEGINNER;
  }
}
