package club.ascham.bow;

import java.util.ArrayList;
import java.util.List;

/** The fitting of an archer: from what is asked to what suits. */
public final class Newcomer {
  /** One row of the published table: draws up to so many inches. */
  private record Row(double upToIn, boolean sharedEdge, int fromIn, int toIn) {}

  /**
   * Bow length by draw length, a dealer's page on bow sizing. Draws of 20, 22, 24, 26 and 28 in
   * stand in two rows each; between 16 and 17 and between 30 and 31 in the table is silent and the
   * longer row is taken.
   */
  private static final List<Row> ROWS =
      List.of(
          new Row(16, false, 48, 48),
          new Row(20, true, 54, 54),
          new Row(22, true, 58, 58),
          new Row(24, true, 62, 62),
          new Row(26, true, 64, 66),
          new Row(28, true, 66, 68),
          new Row(30, false, 68, 70),
          new Row(Double.POSITIVE_INFINITY, false, 70, 72));

  private Newcomer() {}

  /**
   * What suits this archer. Where the published table names a draw in two rows, the longer bow
   * counts for beginners and juniors, whose draw still grows an inch or two and for whom a longer
   * bow is the lighter one; the shorter bow counts for everyone else. How heavy it may be says
   * {@link WeightCeiling}.
   */
  public static NewcomerFit fit(NewcomerAnswers answers) {
    Row row = row(answers);
    boolean beginner = answers.experience() == Experience.BEGINNER;
    return new NewcomerFit(
        row.fromIn(),
        row.toIn(),
        preferred(answers, row),
        "Bow length by draw length: a dealer's page on bow sizing, undated. A draw that stands"
            + " in two rows counts as the longer bow for beginners and juniors, as the shorter one"
            + " for others.",
        leastLb(answers),
        aimLb(answers),
        WeightCeiling.of(answers.age(), answers.experience()),
        weightBasis(answers),
        ArrowLength.shortestSafe(
            answers.drawIn(), answers.drawEstimated(), beginner, answers.age().junior()),
        remarks(answers));
  }

  private static Row row(NewcomerAnswers answers) {
    for (Row row : ROWS) {
      boolean passesOn = row.sharedEdge() && answers.growing();
      if (passesOn ? answers.drawIn() < row.upToIn() : answers.drawIn() <= row.upToIn()) {
        return row;
      }
    }
    throw new IllegalStateException("the last row is open");
  }

  /** Of two lengths the longer for whoever still grows, else by which half of the row it is. */
  private static int preferred(NewcomerAnswers answers, Row row) {
    boolean upperHalf = answers.drawIn() > row.upToIn() - 1;
    return answers.growing() || upperHalf ? row.toIn() : row.fromIn();
  }

  private static double leastLb(NewcomerAnswers answers) {
    if (answers.experience() != Experience.BEGINNER) {
      return answers.age().startLb();
    }
    return switch (answers.age()) {
      case UP_TO_12 -> 10;
      case FROM_13_TO_14 -> 14;
      case FROM_15_TO_16 -> 15;
      case FROM_17_TO_18, ADULT -> 18;
    };
  }

  /** A beginner starts under the ceiling; who is past the course, at what it ended with. */
  private static double aimLb(NewcomerAnswers answers) {
    return switch (answers.experience()) {
      case BEGINNER -> answers.age().startLb() - WeightCeiling.UNDER_LB;
      case IMPROVER -> answers.age().endLb();
      case EXPERIENCED -> answers.age().endLb() + WeightCeiling.STEP_LB;
    };
  }

  private static String weightBasis(NewcomerAnswers answers) {
    String held =
        answers.age().junior() ? " A junior is held to the high end of the estimate." : "";
    return WeightCeiling.BASIS
        + switch (answers.experience()) {
          case BEGINNER ->
              ". These are maxima: "
                  + WeightCeiling.UNDER_LB
                  + " lb under the first is looked for (judged). The low end from others (10 lb for"
                  + " children up to 12: common practice; 14: a French club's page, undated; 15:"
                  + " Archer's Reference Guide (Recurve), M. Elliot, 1999; 18: “Revisiting Draw"
                  + " Weights”, Glasgow Archers, 2024). Over the start figure a coach agrees and"
                  + " says why"
                  + (answers.age().junior()
                      ? "; more than "
                          + WeightCeiling.BEYOND_LB
                          + " lb over the end figure is refused (judged)."
                      : ".");
          case IMPROVER ->
              ", and one step of 4 lb above its end (the upper end of the published 2 to 4 lb)."
                  + " Advice: above it a coach agrees and says why.";
          case EXPERIENCED ->
              ", and two steps of 4 lb above its end (judged; published first bows of one's own are"
                  + " 24 to 32 lb). Advice: above it a coach agrees and says why.";
        }
        + held;
  }

  private static List<String> remarks(NewcomerAnswers answers) {
    List<String> remarks = new ArrayList<>();
    if (answers.dominantEye() == null) {
      remarks.add("Which eye is the stronger was not tested: test it before the hand is settled.");
    } else if (answers.dominantEye() != answers.hand()) {
      remarks.add(
          "The "
              + side(answers.dominantEye())
              + " eye is the stronger and the "
              + side(answers.hand())
              + " hand is to draw: the coach decides which hand it shall be.");
    }
    if (answers.drawEstimated()) {
      remarks.add(
          "The draw length is an estimate: measure it with a long arrow in a light bow before"
              + " arrows are settled.");
    }
    if (answers.growing()) {
      remarks.add("The draw may grow by an inch or two: measure it again, and the arrows with it.");
    }
    if (answers.age().junior()) {
      remarks.add("Age alone is a poor guide to weight: size and strength count, and the coach.");
    }
    remarks.add(
        "Whoever can't hold the bow steady at full draw for ten seconds has too heavy a bow"
            + " (published tests ask for 10 to 30 s).");
    return remarks;
  }

  private static String side(Hand hand) {
    return switch (hand) {
      case RIGHT -> "right";
      case LEFT -> "left";
    };
  }
}
